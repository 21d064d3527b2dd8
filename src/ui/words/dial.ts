import type { DialTarget } from '../../domain/joint/dial.ts';
import { turns as asTurns, type Millimetres } from '../../domain/units/brands.ts';
import { writeLength, writeTurns } from '../../domain/units/write-quantity.ts';

/** A number, its fraction and its word stay on one line. */
const whole = (written: string): string => written.replaceAll(' ', '\u00a0');

/** What a crank or an unmarked dial can be set to by eye. */
const EYE = 0.01;

/** "1 1/2 turns", "1/2 turn"; a decimal where the nearest eighth would say something else: "0.9 turn". */
export const turnsWords = (count: number): string => {
  const isEighth = Math.abs(count - Math.round(count * 8) / 8) <= EYE && count >= 1 / 8;
  const written = writeTurns(asTurns(count), isEighth ? undefined : { places: 2 });
  return whole(`${written} ${count > 1 ? 'turns' : 'turn'}`);
};

const marksWords = (marks: number): string => {
  if (marks === 0.5) return whole('half a mark');
  return whole(`${writeTurns(asTurns(marks), { smallest: 1 / 2 })} ${marks > 1 ? 'marks' : 'mark'}`);
};

/** A place on the dial, or a step of it: "1 turn, 13 1/2 marks", "half a mark". */
export const dialTargetWords = ({ turns, wholeTurns, marks }: DialTarget): string => {
  if (marks === null) return turnsWords(turns);
  if (wholeTurns === 0) return marksWords(marks);
  return marks === 0 ? turnsWords(wholeTurns) : `${turnsWords(wholeTurns)}, ${marksWords(marks)}`;
};

/** A small step as the bench speaks of it: "2 thou", "0.05 mm". */
export const stepWords = (by: Millimetres, unit: 'in' | 'mm'): string =>
  writeLength(by, unit === 'in' ? 'thou' : 'mm');
