import fc from 'fast-check';
import { expect, test } from 'vitest';
import { adviceFor } from '../../../src/domain/joint/advice.ts';
import { mm } from '../../../src/domain/units/brands.ts';
import { gotten } from './results.ts';

const cut = { depth: mm(1.633), tipFlat: mm(0.2) };

/** A pair of 10 to the inch that lacks or has too much clearance by so much. */
const pairOff = (by: number) => ({
  pitch: mm(2.54),
  recess: { ...cut, diameter: mm(40) },
  tenon: { ...cut, diameter: mm(42.4747 + by) },
});

test('whatever is to be cut or eased is a whole number of steps that a dial and a hand can do', () => {
  let told = 0;
  fc.assert(
    fc.property(
      fc.double({ min: -0.3, max: 0.8, noNaN: true }),
      fc.constantFrom('crest' as const, 'flank' as const),
      fc.option(fc.double({ min: 0, max: 0.1, noNaN: true })),
      fc.constantFrom(['metric', 0.05] as const, ['inch', 0.0508] as const),
      (off, on, play, [unit, step]) => {
        const advice = gotten(
          adviceFor(
            {
              goingOn: ['stiff-all-the-way'],
              seated: null,
              threads: [],
              marks: { on, at: 'all-along' },
              endPlay: play === null ? null : mm(play),
              turnsOn: null,
              afterFinish: false,
            },
            {
              pair: pairOff(off),
              wantedClearance: mm(0.3),
              threads: 3,
              boreTaper: null,
              outOfRound: null,
              tenonTaper: null,
              bottomGap: null,
              wall: null,
              tries: null,
              onJig: 'tenon',
              dial: null,
              unit,
            },
          ),
        );
        for (const { remedy, amounts } of advice.remedies) {
          if (remedy !== 'deepen' && remedy !== 'ease-crests') continue;
          for (const { by } of amounts) {
            told++;
            const count = by / step;
            expect(count).toBeGreaterThanOrEqual(1);
            expect(Math.abs(count - Math.round(count)), `${remedy} ${by}`).toBeLessThan(1e-4);
          }
        }
      },
    ),
  );
  expect(told).toBeGreaterThan(50);
});
