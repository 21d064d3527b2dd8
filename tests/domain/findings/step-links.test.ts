import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stepLinks } from '../../../src/domain/findings/answers/step-links.ts';
import type {
  JointRow,
  JointTable,
  StepMeaning,
  StepOutcome,
} from '../../../src/domain/findings/rows/joint-row.ts';
import { seededRandom } from '../../../src/domain/random.ts';
import { inventedLog } from '../../simulation/findings/invented-log.ts';
import { rowOf } from './row-of.ts';

const GAP: StepMeaning = { key: 'gap', sentence: 'Still no card?', guards: ['lean', 'tilt', 'creep'] };
const BOARD: StepMeaning = { key: 'board', sentence: 'Board flat.', guards: ['lean', 'tilt'] };
const tableOf = (rows: readonly JointRow[], steps = [GAP, BOARD]): JointTable => ({
  rows,
  steps,
  leftOut: {},
});

/** Nothing that can be shown may be NaN. */
const expectNoNaN = (value: unknown): void => {
  if (typeof value === 'number') expect(Number.isNaN(value)).toBe(false);
  else if (Array.isArray(value)) value.forEach(expectNoNaN);
  else if (value && typeof value === 'object') Object.values(value).forEach(expectNoNaN);
};

const failed = (number: number, gap: StepOutcome, symptoms: JointRow['symptoms'] = ['stiff-all-the-way']) =>
  rowOf(number, { gap, board: 'done' }, { firstTry: 'failed', symptoms });
const right = (number: number, gap: StepOutcome) => rowOf(number, { gap, board: 'done' });
const firstLink = (rows: readonly JointRow[]) => {
  const [link] = stepLinks(tableOf(rows)).links;
  if (!link) throw new Error('no link');
  return link;
};

describe('what counts', () => {
  it('missed is skipped or left failing in at least one part; a missing record silences only a done', () => {
    const parts = (recess: StepOutcome, tenon: StepOutcome) => {
      const [a, b] = [rowOf(1, { gap: recess }), rowOf(1, { gap: tenon })];
      return { ...a, steps: { recess: a.steps.recess, tenon: b.steps.recess } };
    };
    const table = (recess: StepOutcome, tenon: StepOutcome) => firstLink([parts(recess, tenon)]);
    expect(table('done', 'skipped').table).toEqual({ a: 0, b: 1, c: 0, d: 0 });
    expect(table('left-failing', 'not-recorded').table.b).toBe(1);
    expect(table('done', 'not-needed').table.d).toBe(1);
    expect(table('done', 'not-recorded').silent['not-recorded']).toBe(1);
    expect(table('not-needed', 'not-needed').silent['not-needed']).toBe(1);
  });

  it('a fault the step cannot explain is no event of its own, but one of its control', () => {
    const link = firstLink([failed(1, 'skipped', ['chipped']), failed(2, 'skipped'), right(3, 'done')]);
    expect(link.table).toEqual({ a: 1, b: 1, c: 0, d: 1 });
    expect(link.control.table).toEqual({ a: 1, b: 1, c: 0, d: 1 });
  });

  it('eased once to right is no failure; scrapped for the thread is one; never tried is left out and counted', () => {
    const rows = [
      rowOf(1, { gap: 'skipped' }, { firstTry: 'eased', symptoms: ['stiff-all-the-way'] }),
      rowOf(2, { gap: 'skipped' }, { firstTry: 'scrapped' }),
      rowOf(3, { gap: 'skipped' }, { firstTry: 'unknown' }),
    ];
    const link = firstLink(rows);
    expect(link.table).toEqual({ a: 1, b: 1, c: 0, d: 0 });
    expect(link.silent['never-tried']).toBe(1);
  });

  it('two steps missed in the same boxes say so of each other', () => {
    const rows = [1, 2, 3]
      .map((n) => rowOf(n, { gap: 'skipped', board: 'skipped' }))
      .concat(right(4, 'done'));
    expect(stepLinks(tableOf(rows)).links.map((link) => link.sameBoxesAs)).toEqual([['board'], ['gap']]);
  });
});

describe('words', () => {
  const clear = (boxes: number) =>
    Array.from({ length: boxes }, (_, i) => {
      const missed = i % 4 === 0;
      return i % 20 === 3 || (missed && i % 20 !== 0)
        ? failed(i + 1, missed ? 'skipped' : 'done')
        : right(i + 1, missed ? 'skipped' : 'done');
    });

  it('a plain strong link is called strong, the untouched step never', () => {
    const { links, wordsAt } = stepLinks(tableOf(clear(120)));
    expect(wordsAt).toBe(120);
    expect(links.map((link) => link.wording.word)).toEqual(['strong', 'too-few']);
    expect(links[0]?.shareBeyond).toBeGreaterThan(0.5);
  });

  it('words speak of the log as it stood at the last checkpoint; numbers of all of it', () => {
    const rows = clear(120);
    const later = Array.from({ length: 40 }, (_, i) => failed(200 + i, 'done'));
    const [before, after] = [stepLinks(tableOf(rows)), stepLinks(tableOf([...rows, ...later]))];
    expect(after.wordsAt).toBe(120);
    expect(after.wordsNext).toBe(180);
    expect(after.links[0]?.wording).toEqual(before.links[0]?.wording);
    expect(after.links[0]?.table.c).toBe((before.links[0]?.table.c ?? 0) + 40);
  });

  it('faults it cannot cause, commoner when missed, hold the word at possible', () => {
    const rows = clear(120).map((row, i) =>
      i % 4 === 0
        ? { ...row, firstTry: 'failed' as const, symptoms: [...row.symptoms, 'gritty' as const] }
        : row,
    );
    expect(firstLink(rows).wording).toEqual({ word: 'possible', because: 'other-faults-too' });
  });

  it('missing that goes with fewer faults is the other way round', () => {
    const turned = clear(120).map((row, i) => {
      const missed = i % 4 === 0;
      return {
        ...row,
        ...(missed ? right(i + 1, 'skipped') : i % 2 ? failed(i + 1, 'done') : right(i + 1, 'done')),
      };
    });
    expect(firstLink(turned).wording.word).toBe('the-other-way');
  });

  it('no difference in plenty of boxes is no sign of one', () => {
    const even = Array.from({ length: 350 }, (_, i) =>
      i % 10 < 2 ? failed(i + 1, i % 3 ? 'done' : 'skipped') : right(i + 1, i % 3 ? 'done' : 'skipped'),
    );
    expect(firstLink(even).wording.word).toBe('no-sign');
  });
});

describe('borrowed links', () => {
  it('soft wood that fails and is skipped oftener lends its faults to the plain figures, not to the model', () => {
    const random = seededRandom(3);
    const rows = Array.from({ length: 300 }, (_, i) => {
      const hardness = random.pick([2000, 2800, 4000, 6000, 9000]);
      const soft = hardness < 4000;
      const gap = random.chance(soft ? 0.6 : 0.15) ? 'skipped' : 'done';
      const fails = random.chance(soft ? 0.6 : 0.1);
      return rowOf(
        i + 1,
        { gap, board: 'done' },
        { hardness, ...(fails ? { firstTry: 'failed', symptoms: ['will-not-start'] } : {}) },
      );
    });
    const link = firstLink(rows);
    expect(link.exact.midP).toBeLessThan(0.001);
    expect(link.model?.covariates).toContain('hardness');
    expect(link.model?.difference.value ?? 1).toBeLessThan((link.difference?.value ?? 0) / 2);
  });

  it('a step often missed with the one that matters stays possible, and names it', () => {
    const random = seededRandom(1);
    const kind = (gap: StepOutcome, board: StepOutcome, fails: boolean) => ({ gap, board, fails });
    const kinds = [
      ...Array.from({ length: 20 }, (_, i) => kind('skipped', 'skipped', i < 14)),
      ...Array.from({ length: 8 }, (_, i) => kind('skipped', 'done', i < 5)),
      ...Array.from({ length: 8 }, (_, i) => kind('done', 'skipped', i < 1)),
      ...Array.from({ length: 84 }, (_, i) => kind('done', 'done', i < 7)),
    ];
    const rows = kinds
      .map((made) => ({ made, at: random.unit() }))
      .sort((a, b) => a.at - b.at)
      .map(({ made: { gap, board, fails } }, i) => {
        // Other steps skipped now and then, so that their number is no stand-in for this one.
        const skippedIf = (isSkipped: boolean) => (isSkipped ? ('skipped' as const) : ('done' as const));
        const others = { cone: skippedIf(i % 3 === 0), square: skippedIf(i % 2 === 0) };
        return rowOf(
          i + 1,
          { gap, board, ...others },
          fails ? { firstTry: 'failed', symptoms: ['stiff-all-the-way'] } : {},
        );
      });
    const [gap, board] = stepLinks(tableOf(rows)).links.map(({ wording }) => wording);
    expect(gap).toEqual({ word: 'strong', because: null });
    expect(board).toEqual({ word: 'possible', because: 'several-steps', beside: 'gap' });
  });

  it('the same luck counted three times over within a day is no more than once', () => {
    const once = Array.from({ length: 40 }, (_, i) => {
      const missed = i % 4 === 0;
      return (missed ? i % 8 === 0 : i % 5 === 1)
        ? failed(i + 1, missed ? 'skipped' : 'done')
        : right(i + 1, missed ? 'skipped' : 'done');
    });
    const thrice = once.flatMap((row) => [1, 2, 3].map((copy) => ({ ...row, id: `${row.id}-${copy}` })));
    const [single, copied] = [firstLink(once), firstLink(thrice)];
    expect(single.clusterP).toBeNull();
    expect(copied.exact.midP).toBeLessThan(0.02);
    expect(copied.clusterP).toBeGreaterThan(0.05);
    expect(copied.p).toBe(copied.clusterP);
  });
});

describe('any log at all', () => {
  const outcome = fc.constantFrom<StepOutcome>(
    'done',
    'skipped',
    'left-failing',
    'not-needed',
    'not-recorded',
  );
  const anyRow = fc.record({
    gap: outcome,
    board: outcome,
    firstTry: fc.constantFrom<JointRow['firstTry']>('right', 'eased', 'failed', 'scrapped', 'unknown'),
    symptoms: fc.subarray<JointRow['symptoms'][number]>(['stiff-all-the-way', 'chipped', 'end-play']),
    hardness: fc.option(fc.integer({ min: 1000, max: 9000 })),
    cluster: fc.constantFrom('a', 'b', 'c', 'd', 'e'),
  });
  const anyLog = fc
    .array(anyRow, { maxLength: 50 })
    .map((rows) => rows.map(({ gap, board, ...rest }, i) => rowOf(i + 1, { gap, board }, rest)));

  it('has a stated answer, no NaN, p in [0, 1], and the order of rows does not matter', () => {
    fc.assert(
      fc.property(anyLog, (rows) => {
        const found = stepLinks(tableOf(rows));
        expectNoNaN(found);
        for (const link of found.links) expect(link.p >= 0 && link.p <= 1).toBe(true);
        expect(stepLinks(tableOf([...rows].reverse()))).toEqual(found);
      }),
      { numRuns: 25 },
    );
  });

  it('every joint is in the table or counted among the silent', () => {
    fc.assert(
      fc.property(anyLog, (rows) => {
        for (const { table, silent } of stepLinks(tableOf(rows)).links) {
          const said = table.a + table.b + table.c + table.d;
          const unsaid = silent['not-needed'] + silent['not-recorded'] + silent['never-tried'];
          expect(said + unsaid).toBe(rows.length);
        }
      }),
      { numRuns: 25 },
    );
  });

  it('empty, one row, all right, all wrong, one step always missed, two the same, perfect separation', () => {
    const many = (of: (i: number) => JointRow) => Array.from({ length: 60 }, (_, i) => of(i));
    const logs: Record<string, readonly JointRow[]> = {
      empty: [],
      one: [right(1, 'done')],
      allRight: many((i) => right(i + 1, i % 3 ? 'done' : 'skipped')),
      allWrong: many((i) => failed(i + 1, i % 3 ? 'done' : 'skipped')),
      alwaysMissed: many((i) => (i % 4 ? right(i + 1, 'skipped') : failed(i + 1, 'skipped'))),
      separated: many((i) => (i % 3 ? right(i + 1, 'done') : failed(i + 1, 'skipped'))),
    };
    const words = Object.fromEntries(
      Object.entries(logs).map(([name, rows]) => {
        const found = stepLinks(tableOf(rows));
        expectNoNaN(found);
        return [name, found.links[0]?.wording.word];
      }),
    );
    expect(words).toEqual({
      empty: 'too-few',
      one: 'too-few',
      allRight: 'too-few',
      allWrong: 'too-few',
      alwaysMissed: 'too-few',
      separated: 'strong',
    });
  });

  it('10,000 boxes and ten steps are quick: 4 s of processor time at most, also on a busy machine', () => {
    const log = inventedLog({ boxes: 10_000, fails: 0.2, failsOtherwise: 0.12, sharedSetUps: 0.5 }, 1, 1);
    const before = process.cpuUsage();
    expect(stepLinks(log).boxes).toBe(10_000);
    expect(process.cpuUsage(before).user / 1e6).toBeLessThan(4);
  }, 60_000);
});
