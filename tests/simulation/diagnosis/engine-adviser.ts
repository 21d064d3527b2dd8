import { diagnose } from '../../../src/domain/diagnosis/diagnose.ts';
import type { Field } from '../../../src/domain/diagnosis/view.ts';
import type { Part } from '../../../src/domain/setup/events.ts';
import type { AdvisedMove, AdviserFor } from './adviser.ts';
import type { Question } from './telling.ts';
import type { TrueCause } from './truth.ts';

type Diagnosed = Extract<ReturnType<typeof diagnose>, { ok: true }>['value'];

const meanings: Readonly<Record<string, readonly TrueCause[]>> = {
  'nothing-wrong': [],
  tight: ['too-tight'],
  loose: ['too-loose'],
  spring: ['gave-under-load'],
  crests: ['crests-rub'],
  'tapered-bore': ['tapered-bore'],
  'tapered-tenon': ['tapered-tenon'],
  lean: ['lean'],
  creep: ['creep'],
  slip: ['slipped'],
  tilt: ['tilted'],
  eccentric: ['off-centre'],
  float: ['spindle-float'],
  oval: ['oval'],
  squeezed: ['pinched'],
  bottoming: ['bottoms'],
  relief: ['relief-short'],
  'last-thread': ['last-thread'],
  shoulder: ['shoulder-hump'],
  struck: ['shoulder-struck'],
  fuzz: ['fuzz-or-chips'],
  dent: ['dent'],
  film: ['film'],
  'no-lead-in': ['no-lead-in'],
  'cross-start': ['cross-started'],
  'weak-wood': ['weak-wood'],
  'hot-cutter': ['hot-cutter'],
  'low-engagement': ['low-engagement'],
};

const fields: Readonly<Record<Question, Field>> = {
  seated: 'seated',
  threads: 'threads',
  marks: 'marks',
  'end-play': 'endPlay',
  'turns-on': 'turnsOn',
  'bottom-gap': 'bottomGap',
  'crest-flat-recess': 'crestFlat',
  'crest-flat-tenon': 'crestFlat',
  'bore-taper': 'boreTaper',
  'tenon-taper': 'tenonTaper',
  'out-of-round': 'outOfRound',
};

const questionOf = ({ field, part }: { field: string; part: Part | null }): Question => {
  const found = (Object.keys(fields) as Question[]).find(
    (each) => fields[each] === field && (field !== 'crestFlat' || each.endsWith(part ?? 'tenon')),
  );
  if (!found) throw new Error(`nobody here can answer "${field}"`);
  return found;
};

const moveOf = (move: Diagnosed['move']): AdvisedMove | null =>
  move && {
    kind: move.kind,
    part: move.part,
    by: move.by,
    size: move.size,
    depth: move.depth,
    reset: move.reset,
    chance: move.chance,
  };

/** The diagnosis as an adviser. It is given the record alone. */
export const engine: AdviserFor = () => ({
  name: 'diagnosis',
  advise: (view, asked) => {
    const said = diagnose({ ...view, asked: asked.map((each) => fields[each]) });
    if (!said.ok) throw new Error(`the diagnosis refused a box: ${JSON.stringify(said.error)}`);
    const { causes, confidence, move, next, ask } = said.value;
    return {
      causes: causes.map(({ cause, share }) => {
        const means = meanings[cause];
        if (!means) throw new Error(`the workshop knows no cause "${cause}"`);
        return { means, share };
      }),
      likely: confidence === 'likely',
      move: moveOf(move),
      next: moveOf(next),
      ask: ask && questionOf(ask),
    };
  },
});
