import type { HowManyMore } from '../../domain/findings/answers/how-many-more.ts';
import type { StepLink } from '../../domain/findings/answers/step-links.ts';
import { GATE, type Word, type Wording } from '../../domain/findings/answers/wording.ts';
import type { Symptom } from '../../domain/findings/rows/joint-row.ts';
import type { TwoByTwo } from '../../domain/findings/statistics/counts.ts';
import { goingOnWord, seatedWord, threadWord } from '../bench/trial/words.ts';

export const linkWord: Readonly<Record<Word, string>> = {
  strong: 'Strong link',
  possible: 'Possible link',
  'the-other-way': 'The other way round',
  'no-sign': 'No sign of one',
  'too-few': 'Too few boxes to tell',
};

export const inHundred = (share: number): number => Math.round(100 * share);

/** "42 boxes in 100", or "1 of 3" when a share would promise too much. */
const shareOf = (events: number, total: number): string =>
  total < 10 ? `${events} of ${total}` : `${inHundred(events / total)} boxes in 100`;

/** The plain sentence of a link; never says that one thing made the other. */
export const linkSentence = ({ table: { a, b, c, d } }: Pick<StepLink, 'table'>): string => {
  if (a + b + c + d === 0) return 'No box says anything of it yet.';
  if (a + b === 0) return 'Never missed in your log.';
  if (c + d === 0) return 'Never done in your log.';
  return `Where it was missed, ${shareOf(a, a + b)} did not fit at first in a way it can explain; where it was done, ${shareOf(c, c + d)}.`;
};

const inWords = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;

export const boxes = (count: number): string =>
  count === 1 ? '1 box' : `${count.toLocaleString('en')} boxes`;

/** Which kinds of box the gate still wants. */
const gateSentence = ({ a, b, c, d }: TwoByTwo): string => {
  const kinds = [
    [a + b, 'where it was missed'],
    [c + d, 'where it was done'],
    [a + c, 'with such a fault'],
    [b + d, 'without one'],
  ] as const;
  const short = kinds.filter(([count]) => count < GATE).map(([count, kind]) => `${boxes(count)} ${kind}`);
  return `So far ${inWords(short)}; a word needs five.`;
};

/** Why the word is no stronger; `nameOf` gives the sentence of a step. */
export const becauseWords = (
  { because, beside }: Wording,
  { table, sameBoxesAs }: Pick<StepLink, 'table' | 'sameBoxesAs'>,
  nameOf: (step: string) => string,
): string | null => {
  switch (because) {
    case null:
      return null;
    case 'gate':
      return gateSentence(table);
    case 'wide':
      return 'The figures still leave room for a large difference.';
    case 'disagree':
      return 'The plain figures and the model do not point one way.';
    case 'several-steps':
      return beside === undefined
        ? 'Of several steps asked about at once, one shows such a link by luck now and then.'
        : `The two are often missed in the same boxes: beside “${nameOf(beside)}” little of this link is left.`;
    case 'no-mechanism':
      return 'No way is known by which this step could do it.';
    case 'other-faults-too':
      return 'Boxes where it was missed also had faults it cannot cause: perhaps rushed days.';
    case 'same-boxes':
      return `Always missed together with ${inWords(sameBoxesAs.map((step) => `“${nameOf(step)}”`))}: the log cannot tell them apart.`;
  }
};

const symptomWord = (symptom: Symptom): string =>
  ({ ...goingOnWord, ...seatedWord, ...threadWord })[symptom].toLowerCase();

const symptoms = (list: readonly Symptom[]): string => list.map(symptomWord).join(', ');

export const linkWords = {
  together: 'They go together; the log cannot say why.',
  noSign: 'If there is one, it is under 20 in 100. Not a reason to skip.',
  noSignAbout:
    'Missed or done, about as many lids fitted. A link may still be there, but under 20 in 100. None of this is a reason to skip a step.',
  otherWay: 'Missed, it went better; that may be luck or the easier boxes. Not a reason to skip.',
  tooFewAbout: 'Most steps stand here for a long while. It says nothing for or against them: do them.',
  missedIn: (missed: number, of: number) =>
    of === 0
      ? 'No box says anything of it yet.'
      : missed === 0
        ? `Never missed in ${boxes(of)}.`
        : `Missed in ${missed.toLocaleString('en')} of ${boxes(of)}.`,
  explains: (list: readonly Symptom[]) =>
    list.length === 0
      ? 'No fault of a first fit is known to come from it.'
      : `Missed, it can show as: ${symptoms(list)}.`,
  cannot: (list: readonly Symptom[]) => (list.length === 0 ? '' : `It cannot make a lid: ${symptoms(list)}.`),
  howMany: ({ fifty, eighty }: HowManyMore, next: number) => {
    if (fifty === 'past')
      return 'To settle it would take more boxes than a log will give. Below you can test the step.';
    if (eighty === 'past')
      return fifty === 0
        ? 'An even chance of settling it by now; for a better one, test the step below.'
        : `About ${fifty} more boxes would give an even chance of settling it.`;
    if (eighty === 0) return `There are boxes enough to settle it; its word is weighed again at ${next}.`;
    return fifty === 0
      ? `About ${eighty} more boxes would settle it, if it is as it looks.`
      : `About ${fifty} to ${eighty} more boxes would settle it, if it is as it looks.`;
  },
  numbers: 'Numbers',
  difference: (value: number, low: number, high: number) =>
    `${Math.abs(inHundred(value))} ${value < 0 ? 'fewer' : 'more'} boxes in 100 did not fit where it was missed; 95 % interval from ${signed(low)} to ${signed(high)}`,
  fewer: '50 fewer',
  more: '100 more fail',
} as const;

export const signed = (share: number): string => `${share < 0 ? '-' : '+'}${Math.abs(inHundred(share))}`;
