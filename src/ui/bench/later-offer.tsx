import { useRef } from 'preact/hooks';
import { boxToLookBackOn } from '../../app/after-fit.ts';
import { boxById } from '../../app/boxes.ts';
import { useLive } from '../parts/use-live.ts';
import { ageWords } from '../words/age.ts';
import { laterWords as words } from './close/words.ts';
import { LaterCheck } from './later-check.tsx';
import { benchWords } from './words.ts';

/** On the empty bench: the newest box that has lain for weeks and was not looked at since. Shows nothing when there is none. */
const LaterOffer = () => {
  const found = useLive(boxToLookBackOn, ['box']).value;
  /** Stays with the box once it was asked about, so that the answer can be taken back. */
  const asked = useRef<string | undefined>(undefined);
  asked.current ??= found?.id;
  return asked.current === undefined ? null : <AskAbout id={asked.current} />;
};
export default LaterOffer;

const AskAbout = ({ id }: { id: string }) => {
  const onHand = useLive(boxById, ['box'], id).value;
  if (!onHand?.box.closing) return null;
  const { box } = onHand;
  const title = benchWords.boxTitle(box.number, box.name);
  const age = ageWords(onHand.box.closing.at, Date.now());
  return <LaterCheck key={onHand.id} onHand={onHand} question={words.askAbout(title, age)} />;
};
