import type { Diagnosed } from '../../../app/diagnosis.ts';
import { settings } from '../../../app/session.ts';
import type { AdvisedMove } from '../../../domain/diagnosis/diagnosis.ts';
import { dialTarget } from '../../../domain/joint/dial.ts';
import { mm } from '../../../domain/units/brands.ts';
import { DialFace } from '../../drawings/dial-face.tsx';
import { dialTargetWords } from '../../words/dial.ts';
import { causeWord, chanceWord, evidenceWord, adviceWords as words } from './advice-words.ts';
import { amountWords, depthWords, moveWord, whatWords } from './move-words.ts';

/** One move: its amount large, the dial as it will stand, why, and what it feels like if it worked. */
export const MoveBlock = ({ move, found }: { move: AdvisedMove; found: Diagnosed }) => {
  const { unit } = settings.value;
  const amount = amountWords(move, unit);
  const { feels, caution } = moveWord[move.kind];
  const evidence = move.because.slice(0, 2).map((each) => evidenceWord(each, found.sentenceOf));
  return (
    <>
      <h2>
        {whatWords(move)} <small>({chanceWord[move.chanceWord]})</small>
      </h2>
      {amount && (
        <div class="amount">
          <p class="figure">{amount}</p>
          <MoveDial move={move} found={found} />
        </div>
      )}
      {move.kind === 'new-tenon' && move.depth !== null && <p>{depthWords(move.depth, unit)}</p>}
      {move.reset && <p>{words.setUpFirst}.</p>}
      {caution && <p class="caution">{caution}</p>}
      <p class="soft">{words.why(causeWord[move.against], evidence)}</p>
      <p class="soft">{feels}</p>
    </>
  );
};

/** The dial where the cut stops: from touch-off, what was cut and the move together. No rig says which way its dial turns to go deeper, so none is drawn. */
const MoveDial = ({ move, found: { view } }: { move: AdvisedMove; found: Diagnosed }) => {
  const { dial } = view.bench;
  const part = move.part ?? 'tenon';
  if (!dial || move.kind !== 'deepen') return null;
  const { travelPerTurn, marksPerTurn } = dial;
  const target = dialTarget(mm(view.joint.depth[part] + (move.by ?? 0)), {
    travelPerTurn,
    ...(marksPerTurn === null ? {} : { marksPerTurn }),
  });
  if (!target.ok) return null;
  return (
    <>
      <DialFace marks={marksPerTurn} at={target.value.marks ?? 0} way={null} />
      <p class="dial-to">
        {words.dialTo} <b>{dialTargetWords(target.value)}</b>
      </p>
    </>
  );
};
