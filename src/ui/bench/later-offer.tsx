import { useSignal } from '@preact/signals';
import { boxToLookBackOn } from '../../app/after-fit.ts';
import { boxById } from '../../app/boxes.ts';
import { logId } from '../../app/session.ts';
import { useLive } from '../parts/use-live.ts';
import { ageWords } from '../words/age.ts';
import { laterWords as words } from './close/words.ts';
import { LaterCheck } from './later-check.tsx';
import { benchWords } from './words.ts';

/** On the empty bench: the newest box that has lain for weeks and was not looked at since. Shows nothing when there is none. */
const LaterOffer = () => {
  /** Stays with the box once it was asked about, so that the answer can be taken back. */
  const asked = useSignal<string | null>(null);
  const onHand = useLive(
    async () => {
      const found = asked.value ? await boxById(asked.value) : await boxToLookBackOn();
      if (found && !asked.value) asked.value = found.id;
      return found;
    },
    ['box', 'log'],
    logId.value,
  ).value;
  if (!onHand?.box.closing) return null;
  const { box } = onHand;
  const title = benchWords.boxTitle(box.number, box.name);
  const age = ageWords(onHand.box.closing.at, Date.now());
  return <LaterCheck key={onHand.id} onHand={onHand} question={words.askAbout(title, age)} />;
};
export default LaterOffer;
