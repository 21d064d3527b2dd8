import type { Cause } from '../../domain/findings/answers/suspect-table.ts';
import type { Clue, Suspect } from '../../domain/findings/answers/suspects.ts';
import { symptomWord } from '../findings/link-words.ts';
import { movementWord } from '../set-up/words.ts';

const suspectWord: Readonly<Record<Suspect['cause'], string>> = {
  'too-tight': 'Too little clearance',
  'too-loose': 'Too much clearance',
  leaning: 'The two parts cut at different leans',
  creep: 'Jig or post crept in the cut',
  slipped: 'It slipped between passes',
  'chuck-not-home': 'The chuck not home',
  'off-centre': 'The work off centre',
  'gone-oval': 'The wood gone oval',
  squeezed: 'The jaws squeezed a thin wall',
  bottoming: 'The tenon met the floor, or the relief was shallow',
  'crests-rub': 'The crests rub',
  'turned-tapered': 'Bore or tenon turned tapered',
  'wood-crumbles': 'The wood does not hold this pitch',
  'chips-in-thread': 'Chips or fuzz in the thread',
  'none-of-these': 'None of these',
} satisfies Record<Cause | 'none-of-these', string>;

const MEASURED = {
  clearance: 'the clearance as measured',
  suits: 'the clearance that suits',
  crestGap: 'the crest gap as measured',
  taper: 'the taper as measured',
  oval: 'the bore out of round',
} as const;

const clueWord = (clue: Clue, sentenceOf: (key: string) => string): string => {
  switch (clue.kind) {
    case 'symptom':
      return symptomWord(clue.symptom);
    case 'missed':
      return `missed: “${sentenceOf(clue.step)}”`;
    case 'done':
      return `done: “${sentenceOf(clue.step)}”`;
    case 'moved':
      return `moved: ${movementWord[clue.what].toLowerCase()}`;
    case 'measured':
      return MEASURED[clue.what];
    case 'marks':
      return 'where the marks are';
  }
};

export const suspectWords = {
  title: 'Suspects',
  about:
    'What may be behind the first trial, weighed from its symptoms, your set-up and your readings. A judgement, not a proof.',
  chance: (chance: number) => (chance < 10 ? 'under 10 in 100' : `about ${chance} in 100`),
  name: (suspect: Suspect) => suspectWord[suspect.cause],
  clues: (suspect: Suspect, sentenceOf: (key: string) => string) =>
    suspect.clues.map((clue) => clueWord(clue, sentenceOf)).join('; '),
} as const;
