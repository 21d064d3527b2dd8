import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutsOf, depthCut, depthReached, isThreaded } from '../../../src/domain/box/cuts.ts';
import { pieceAt } from '../../../src/domain/box/piece.ts';
import type { Box } from '../../../src/domain/box/records.ts';
import { nextSeq } from '../../../src/domain/box/sequence.ts';
import { isDone, latestRun, nextThing } from '../../../src/domain/box/stages.ts';
import { newestTrial } from '../../../src/domain/box/this-pair.ts';
import type { RunState } from '../../../src/domain/setup/fold.ts';
import { anyTriedBox, bored, boxOf, corrected, cut, takenBack, tried, turned } from './any-box.ts';

const tenonOf = (box: Box, until?: number) => {
  const { readings, cuts } = pieceAt(box, 'tenon', until);
  return { read: readings.map(({ diameter }) => diameter.mm), cut: cuts.map(({ depth }) => depth.mm) };
};
const OVER = { overCrests: true };
const FIRST = [bored(50), turned(52.9), cut('recess', 1.6), cut('tenon', 1.1), cut('tenon', 1.6), tried()];

describe('a tenon turned again', () => {
  it('turned down before its first pass it is the same tenon', () => {
    expect(tenonOf(boxOf([turned(52.9), turned(52.4), cut('tenon', 1)]))).toEqual({
      read: [52.9, 52.4],
      cut: [1],
    });
  });

  it('read plain after a pass it is another one, without passes', () => {
    const box = boxOf([...FIRST, turned(52.4)]);
    expect(tenonOf(box)).toEqual({ read: [52.4], cut: [] });
    expect(depthReached(box, 'tenon')).toBeNull();
    expect(depthReached(box, 'recess')?.mm).toBe(1.6);
    expect(tenonOf(boxOf([...FIRST, turned(52.4), cut('tenon', 0.9)])).cut).toEqual([0.9]);
  });

  it('at the time of the trial before, the old one is still there', () => {
    const box = boxOf([...FIRST, turned(52.4), cut('tenon', 0.9)]);
    expect(tenonOf(box, box.trials[0]?.seq)).toEqual({ read: [52.9], cut: [1.1, 1.6] });
  });

  it('read over its crests it stays the one it is', () => {
    expect(tenonOf(boxOf([...FIRST, turned(52.7, OVER)]))).toEqual({ read: [52.9, 52.7], cut: [1.1, 1.6] });
  });

  it('a first plain reading that comes late is of the one that was cut, until a lid was tried on it', () => {
    expect(tenonOf(boxOf([cut('tenon', 1.6), turned(52.4)]))).toEqual({ read: [52.4], cut: [1.6] });
    expect(tenonOf(boxOf([cut('tenon', 1.6), tried(), turned(52.4)]))).toEqual({ read: [52.4], cut: [] });
  });

  it('takes its trial and its set-up with it', () => {
    const before = boxOf([...FIRST.slice(0, -1), tried({ right: true })]);
    const run = (part: 'recess' | 'tenon') =>
      ({
        runId: part,
        part,
        closed: 'cut',
        contested: false,
        now: null,
        withheldBy: [],
      }) as unknown as RunState;
    const runs = new Map([
      ['recess', run('recess')],
      ['tenon', run('tenon')],
    ]);
    const setUps = [
      { runId: 'recess', part: 'recess', seq: 3 },
      { runId: 'tenon', part: 'tenon', seq: 4 },
    ] as const;
    const box = { ...before, setUps };
    expect(newestTrial(box)?.right).toBe(true);
    expect(nextThing(box, runs)).toBe('seat');
    const again = { ...boxOf([...FIRST.slice(0, -1), tried({ right: true }), turned(52.4)]), setUps };
    expect(newestTrial(again)).toBeNull();
    expect(latestRun(again, 'tenon', runs)).toBeNull();
    expect(isDone('cut-recess', again, runs)).toBe(true);
    expect(nextThing(again, runs)).toBe('set-up-tenon');
  });
});

it('a plain reading makes another piece just where that is said beforehand', () => {
  const said = new Set<boolean>();
  fc.assert(
    fc.property(anyTriedBox, fc.constantFrom('recess', 'tenon'), (box, part) => {
      const seq = nextSeq(box);
      const more = (part === 'recess' ? bored(50) : turned(52.4))(box, 0);
      said.add(isThreaded(box, part));
      expect(pieceAt(more, part).since).toBe(isThreaded(box, part) ? seq : pieceAt(box, part).since);
    }),
  );
  expect(said.size).toBe(2);
});

describe('how deep it was cut', () => {
  it('is as deep as the deepest pass, put right where it was put right', () => {
    expect(depthReached(boxOf([cut('recess', 1.6), cut('recess', 1.1)]), 'recess')?.mm).toBe(1.6);
    expect(depthReached(boxOf([cut('recess', 1.6), corrected(-0.1)]), 'recess')?.mm).toBeCloseTo(1.5, 9);
  });

  it('forgets a pass taken back', () => {
    const box = boxOf([cut('recess', 1.1), cut('recess', 1.6), takenBack]);
    expect(cutsOf(box, 'recess')).toHaveLength(1);
    expect(depthReached(box, 'recess')?.mm).toBe(1.1);
  });

  it('is not known between passes, and is once all are cut or a lid was tried', () => {
    expect(depthCut(boxOf([cut('recess', 1.1)]), 'recess', 2)).toBeNull();
    expect(depthCut(boxOf([cut('recess', 1.1), cut('recess', 1.6)]), 'recess', 2)).toBe(1.6);
    expect(depthCut(boxOf([cut('recess', 1.1), tried()]), 'recess', 2)).toBe(1.1);
    expect(depthCut(boxOf([tried()]), 'recess', 2)).toBeNull();
  });
});

describe('entries of equal places, as two devices may write them', () => {
  it('are read before they are cut, cut before they are tried, then by id', () => {
    const box = boxOf([turned(52.4), turned(52.6, { id: 'a' }), cut('tenon', 1.6), tried()]);
    const same: Box = {
      ...box,
      tenon: box.tenon.map((each) => ({ ...each, seq: 5 })),
      cuts: box.cuts.map((each) => ({ ...each, seq: 5 })),
      trials: box.trials.map((each) => ({ ...each, seq: 5 })),
    };
    expect(tenonOf(same, 5)).toEqual({ read: [52.6, 52.4], cut: [1.6] });
    const turnedRound = { ...same, tenon: same.tenon.toReversed() };
    expect(tenonOf(turnedRound, 5)).toEqual(tenonOf(same, 5));
  });
});
