import type { Grade } from '../../../domain/alignment/grade.ts';
import type { SettingJudgement } from '../../../domain/alignment/judge-setting.ts';
import type { SlipAllowance } from '../../../domain/box/slip-allowance.ts';
import type { Reading } from '../../../domain/setup/reading.ts';
import { type Millimetres, MM_PER_INCH, mm } from '../../../domain/units/brands.ts';
import { writeLength } from '../../../domain/units/write-quantity.ts';

type Unit = 'in' | 'mm';

export const verdictWords = {
  title: 'What the reading means',
  none: 'No joint to judge it by: the plan does not hold together.',
  tightest: (of: number, reading: string) =>
    of === 1 ? `Read: ${reading}.` : `Tightest of ${of}: ${reading}.`,
  all: (readings: readonly string[]) => `All: ${readings.join('; ')}.`,
  another: 'Again',
  back: 'Back',
} as const;

export const gradeWord: Readonly<Record<Grade, string>> = {
  'well-inside': 'Well inside',
  inside: 'Inside',
  'at-the-edge': 'At the edge',
  outside: 'Outside',
};

export const readingWord = (reading: Reading): string => {
  switch (reading.kind) {
    case 'gap':
      return reading.gap.mm === 0
        ? `nothing goes in over ${reading.over.text}`
        : `${reading.gap.text} over ${reading.over.text}`;
    case 'turns':
      return `${reading.turns} turns`;
    case 'sweep':
      return `${reading.difference.text} on an arm of ${reading.radius.text}`;
  }
};

/** A small amount in the step a hand thinks in: whole thou, or hundredths of a millimetre. */
const amount = (length: Millimetres, unit: Unit): string =>
  writeLength(length, unit === 'in' ? 'thou' : 'mm');

/** What the joint can take in this respect, as a gap over the length that angles are told by. */
export const limitWords = ({ limitGap, together }: SettingJudgement, unit: Unit): string => {
  const room = `${writeLength(limitGap, unit)} over ${unit === 'in' ? '3 1/8 in' : '80 mm'}`;
  return together === 'alone' ? `This joint takes ${room}.` : `Both pieces together, it takes ${room}.`;
};

/** What it will do to the joint if it is left, in what a hand can feel. */
export const ifLeftWords = ({ aspect, grade, ifLeft }: SettingJudgement, unit: Unit): string => {
  if (aspect === 'lean') {
    if (ifLeft.binds) return 'Left so, the lid will not go on.';
    if (ifLeft.playLost <= 0) return 'Left so, no hand will feel it.';
    const lost = `Left so, it takes ${amount(ifLeft.playLost, unit)} of the end play`;
    return `${lost} and leaves ${amount(ifLeft.playLeft, unit)}.`;
  }
  if (aspect === 'tilt')
    return ifLeft.ridgeThinner <= 0
      ? 'Left so, no hand will feel it.'
      : `Left so, the ridges come out ${amount(ifLeft.ridgeThinner, unit)} thinner.`;
  if (ifLeft.shoulderGap <= 0) return 'Left so, the rim shuts.';
  const open = `Left so, the rim can stand open by ${amount(ifLeft.shoulderGap, unit)}`;
  return grade === 'outside' ? `${open}: one side shows.` : `${open}.`;
};

/** What is forgiven when the groove is picked up again, rounded down so that no more is promised than is cut away. */
export const slipWords = ({ passesLeft, absorbed }: SlipAllowance, unit: Unit): string => {
  if (passesLeft === 0) return 'Full depth is cut: any error here thins the thread.';
  const step = unit === 'in' ? MM_PER_INCH / 1000 : 0.01;
  const most = amount(mm(Math.floor(absorbed / step + 1e-6) * step), unit);
  return passesLeft === 1
    ? `The next pass cuts away up to ${most} of error along the thread.`
    : `The next ${passesLeft} passes cut away up to ${most} of error along the thread.`;
};
