import type { Stage, StageState } from '../../domain/box/stages.ts';

export const stageName: Readonly<Record<Stage, string>> = {
  plan: 'Plan',
  bore: 'Measure the bore',
  'set-up-recess': 'Set up for the recess',
  'cut-recess': 'Cut the recess thread',
  tenon: 'Measure the tenon',
  'set-up-tenon': 'Set up for the tenon',
  'cut-tenon': 'Cut the tenon thread',
  trial: 'Trial fit',
  seat: 'Seat and grain',
  close: 'Close the box',
};

export const stageStateWord: Readonly<Record<StageState, string>> = {
  done: 'done',
  now: 'next',
  'passed-over': 'passed over',
  'to-come': 'to come',
};

export const benchWords = {
  boxTitle: (number: number, name: string) => (name ? `Box ${number}: ${name}` : `Box ${number}`),
  another: 'Another box',
  nothingOnTheLathe: 'Nothing on the lathe.',
  newBox: 'New box',
  demoOffer: 'Or look round first, in an invented workshop’s log of 120 boxes.',
  openDemo: 'Open the demo',
  stageOf: (at: number, of: number) => `Stage ${at} of ${of}`,
  setUpFirst: {
    recess: 'The piece with the recess in its chuck, the jig ready to go in the banjo.',
    tenon: 'The piece with the tenon in its chuck. Only what lost its setting is asked.',
  },
  setUpUnderWay: 'This set-up is under way.',
  setUpDone: 'This piece was set up and cut. A new set-up picks the groove up again.',
  goOnWithSetUp: 'Go on with it',
  startSetUp: 'Start the set-up',
  startAnew: 'Start it anew',
} as const;
