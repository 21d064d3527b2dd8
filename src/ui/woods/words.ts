export const woodsWords = {
  title: 'Woods',
  find: 'Find a wood',
  yours: 'In your log',
  rest: 'From the handbook',
  count: (found: number) => `${found} woods`,
  more: 'Show all',
  back: 'All woods',
  noSuch: 'There is no such wood here.',
  hardness: (newton: number, lbf: number) =>
    `${newton.toLocaleString('en')} N (${lbf.toLocaleString('en')} lbf)`,
  hardnessNone: 'not in the handbook',
  hardnessIs: 'Side hardness',
  notHandbook: 'A figure of the trade, not the handbook’s',
  densityIs: 'Density',
  density: (kg: number) => `${kg} kg/m³`,
  movesIs: 'Out of round by the seasons',
  moves: (length: string) => `${length} on a 50 mm joint, end grain, in a heated house`,
  movesHow:
    'What opens or pinches a lid is the difference between the two ways across the grain, not how much it moves in all. Handbook averages; one board may differ by a quarter.',
  strain: (radial: string, tangential: string) =>
    `Across the rings ${radial} %, along them ${tangential} %, for each point of moisture`,
  strainIs: 'Movement',
  fromShrinkage: 'CalculatedBox from its total shrinkage, not tabled.',
  recalled: 'Recalled rather than read in the table: check it.',
  ownNote: 'A wood of your own; no table has it. It is treated as its group’s mean.',
  record: 'Your record',
  recordNone: 'No joint of yours in this wood has been tried yet.',
  all: '100 in 100',
  handbookHardness: (newton: number, lbf: number) =>
    `Side hardness ${newton.toLocaleString('en')} N (${lbf.toLocaleString('en')} lbf).`,
  handbookMoves: (length: string) => `A 50 mm joint goes ${length} out of round in a heated house.`,
  moreOf: (name: string) => `More of ${name}`,
  byHardness: 'By its hardness',
  expected: (pitch: string, value: number, low: number, high: number) =>
    `${pitch}: about ${value} threads in 100 hold; between ${low} and ${high}, 9 times in 10`,
  expectedAbout: (joints: number, woods: number) =>
    `What woods as hard as this one did in your log, from ${joints} joints in ${woods} woods; without hardener.`,
  recordWait: 'Reading your log…',
  recordNot: 'Your log was not read to its end; open Findings to read it.',
  pitch: (pitch: string, hardened: boolean) => (hardened ? `${pitch}, with hardener` : pitch),
  held: (held: number, of: number) => `crests held in ${held} of ${of}`,
  right: (right: number, of: number) => `${right} of ${of} right at the first trial or after one easing`,
  interval: (low: number, high: number) => `between ${low} and ${high} in 100, 9 times in 10`,
  finest: (pitch: string, chance: number) =>
    `Finest pitch that holds, so far: ${pitch} (${chance} in 100 sure).`,
  finestUnknown: 'Finest pitch that holds: not known yet.',
  little: 'Little tried: under five boxes. Hardness is the better guide.',
  boxes: (count: number) => (count === 1 ? '1 box' : `${count} boxes`),
  cautions:
    'Dust of any wood harms lungs in time, and some woods sensitise skin and lungs, tropical ones above all. Extraction, a mask that fits; stop at the first sign.',
} as const;
