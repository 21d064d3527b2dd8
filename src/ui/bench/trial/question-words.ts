import type { Answer, Question } from '../../../domain/diagnosis/diagnosis.ts';
import type { Field } from '../../../domain/diagnosis/view.ts';
import type { Word } from '../../../domain/diagnosis/words-chance.ts';
import { mm, turns } from '../../../domain/units/brands.ts';
import { writeLength, writeTurns } from '../../../domain/units/write-quantity.ts';
import { moveWord } from './move-words.ts';
import { goingOnWord, marksAtWord, marksOnWord, seatedWord, threadWord } from './words.ts';

type Unit = 'in' | 'mm';

export const fieldWord: Readonly<Record<Field, string>> = {
  seated: 'Seat',
  threads: 'Threads',
  marks: 'Marks',
  endPlay: 'End play',
  turnsOn: 'Turns before it stopped',
  crestFlat: 'Crest flat',
  bottomGap: 'Room at the floor',
  boreTaper: 'Taper of the bore',
  tenonTaper: 'Taper of the tenon',
  outOfRound: 'Out of round',
};

/** What to look at or to measure. */
export const askWords = (field: Field, part: string): string => {
  switch (field) {
    case 'seated':
      return 'How the lid sits when it is home.';
    case 'threads':
      return 'How the threads look.';
    case 'marks':
      return 'Pencil the crests, twist on and off: where does it rub?';
    case 'endPlay':
      return 'End play, half a turn off the seat.';
    case 'turnsOn':
      return 'How many turns it goes on before it stops.';
    case 'crestFlat':
      return `How wide the flat on the crests of the ${part} is.`;
    case 'bottomGap':
      return 'Recess depth less tenon length.';
    case 'boreTaper':
      return 'The bore over its crests: at the mouth and at the floor.';
    case 'tenonTaper':
      return 'The tenon over its crests: by the shoulder and at the end.';
    case 'outOfRound':
      return 'The bore over its crests, in two directions.';
  }
};

/** The two readings that a difference is taken from. */
export const twoReadings = {
  boreTaper: ['At the mouth', 'At the floor'],
  tenonTaper: ['By the shoulder', 'At the end'],
  outOfRound: ['Where it is largest', 'At a right angle to that'],
} as const;

const wordOf = { ...goingOnWord, ...seatedWord, ...threadWord } satisfies Record<Word, string>;

const numberWords = (field: Field, value: number, unit: Unit): string =>
  field === 'turnsOn' ? writeTurns(turns(value)) : writeLength(mm(value), unit === 'in' ? 'thou' : 'mm');

const answerWords = (field: Field, answers: readonly Answer[], unit: Unit): string => {
  const numbers = answers
    .flatMap((answer) => (answer.kind === 'number' ? [answer.value] : []))
    .sort((a, b) => a - b);
  const [low, high] = [numbers[0], numbers.at(-1)];
  if (low !== undefined && high !== undefined) {
    const [from, to] = [numberWords(field, low, unit), numberWords(field, high, unit)];
    return from === to ? `About ${from}` : `${from} to ${to}`;
  }
  const said = answers.map((answer) =>
    answer.kind === 'words'
      ? answer.words.map((word) => wordOf[word]).join(', ')
      : answer.kind === 'marks'
        ? `${marksOnWord[answer.on]}, ${marksAtWord[answer.at].toLowerCase()}`
        : '',
  );
  return [...new Set(said)].join(' or ');
};

/** What each answer would lead to, one line a move. */
export const meaningWords = ({ field, answers }: Question, unit: Unit): readonly string[] =>
  [...new Set(answers.map(({ move }) => move))].map((move) => {
    const leading = answers.filter((each) => each.move === move).map(({ answer }) => answer);
    const then = move === null ? 'nothing more to be done' : moveWord[move].what('tenon').toLowerCase();
    return `${answerWords(field, leading, unit)}: ${then.replace(' of the tenon', '').replace('the tenon', 'it')}.`;
  });

export const questionWords = {
  check: (field: Field) => `Check: ${fieldWord[field].toLowerCase()}`,
  save: 'Save',
  cannotTell: 'Can’t tell',
  back: 'Back',
  width: 'Width of the flat',
  scaleHint: 'Hold the crest beside the scale, or type it.',
  scaleAssumed: 'Drawn for an average phone. Check it with a bank card in Shop, Display.',
  marksOn: 'Where it rubs',
  marksAt: 'Along the thread',
  play: 'End play',
  playHint: 'Half a turn off the seat, push and pull along the axis.',
  turns: 'Turns',
  gap: 'Recess depth less tenon length',
  gapHint: 'Below zero where the tenon is longer.',
} as const;
