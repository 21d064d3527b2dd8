import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calculate } from '../../../src/domain/box/calculate.ts';
import type { Given } from '../../../src/domain/box/given.ts';
import { pairAsCut } from '../../../src/domain/box/pair.ts';
import type { Box } from '../../../src/domain/box/records.ts';
import { type AskedOf, diagnosisView } from '../../../src/domain/diagnosis/diagnosis-view.ts';
import { MEASURED_LIMITS } from '../../../src/domain/diagnosis/measured-limits.ts';
import type { DiagnosisView } from '../../../src/domain/diagnosis/view.ts';
import { fitOf } from '../../../src/domain/joint/fit.ts';
import {
  anyGiven,
  anyTriedBox,
  bored,
  boxOf,
  cut,
  givenWith,
  RIG,
  setUp,
  tried,
  turned,
} from '../box/any-box.ts';
import { length } from '../box/planned-box.ts';
import { runOf, runsOf } from '../box/runs.ts';
import { gotten } from '../joint/results.ts';

const viewOf = (box: Box, change: Partial<AskedOf> = {}, given: Given = givenWith(null)): DiagnosisView => {
  const asked = { boxId: 'box', unit: 'mm', learned: null, runs: new Map() } as const;
  const trialId = box.trials.at(-1)?.id ?? '';
  const view = diagnosisView({
    ...asked,
    box,
    trialId,
    calculated: gotten(calculate(box, given)),
    ...change,
  });
  if (!view) throw new Error('no such trial');
  return view;
};
const BOTH = [bored(50), turned(52.4), cut('recess', 1.6), cut('tenon', 1.6)];

describe('the joint', () => {
  it('is the pair as measured and cut, to the last digit', () => {
    let known = 0;
    fc.assert(
      fc.property(anyTriedBox, anyGiven, (box, given) => {
        const pair = pairAsCut(box, given, box.trials.at(-1)?.seq);
        if (!pair || !calculate(box, given).ok) return;
        known++;
        const { joint } = viewOf(box, {}, given);
        const piece = (part: 'recess' | 'tenon') => ({
          diameter: part === 'recess' ? joint.bore : joint.tenon,
          depth: joint.depth[part],
          tipFlat: joint.tipFlat,
          flankShift: joint.flankShift[part],
        });
        const fit = fitOf({ pitch: joint.pitch, recess: piece('recess'), tenon: piece('tenon') });
        expect(gotten(fit).clearance).toBe(gotten(fitOf(pair)).clearance);
      }),
      { numRuns: 200 },
    );
    expect(known).toBeGreaterThan(100);
  }, 30_000);

  it('is planned where nothing was measured, and then known less well', () => {
    const [planned, measured] = [viewOf(boxOf([tried()])).joint, viewOf(boxOf([...BOTH, tried()])).joint];
    expect(planned).toMatchObject({ bore: 50, boreTaper: null, tenonTaper: null, outOfRound: null });
    expect(planned.depth).toEqual({ recess: planned.plannedDepth, tenon: planned.plannedDepth });
    expect(planned.boreUncertainty).toBeGreaterThan(measured.boreUncertainty);
    expect(planned.tenonUncertainty).toBeGreaterThan(measured.tenonUncertainty);
  });

  it('has taper and roundness from two readings, the tip as sure as it is known, the woods as told', () => {
    const box = boxOf([
      ...[bored(50, { across: length(50.1) }), bored(49.9, { where: 'relief' })],
      ...[turned(52.4), turned(52.5, { where: 'shoulder' }), tried()],
    ]);
    const { joint } = viewOf(box);
    expect(joint.boreTaper).toBeCloseTo(0.15, 9);
    expect(joint.outOfRound).toBeCloseTo(0.1, 9);
    expect(joint.tenonTaper).toBeCloseTo(0.1, 9);
    const tip = (tipFlatFrom: 'told' | 'scrap-pair', tipFlat = RIG.tipFlat) =>
      viewOf(box, {}, givenWith(null, { ...RIG, tipFlat, tipFlatFrom })).joint.tipFlatUncertainty;
    expect([tip('scrap-pair'), tip('told'), tip('told', null)]).toEqual([0.03, 0.05, 0.08]);
    expect(joint.wood.recess).toMatchObject({ crumbles: 0.3, furs: 0.3 });
    const fragilityOf = (wood: string) => ({ crumbles: wood.length / 100, furs: 1 });
    expect(viewOf(box, { fragilityOf }).joint.wood.tenon).toMatchObject({ crumbles: 0.13, furs: 1 });
    const learned = { clearance: length(0.3).mm, uncertainty: length(0.02).mm };
    expect(viewOf(box, { learned }).joint.learned).toBe(learned);
  });
});

describe('the bench', () => {
  const box = boxOf([...BOTH.slice(0, 3), setUp('t', 'tenon'), ...BOTH.slice(3), tried()]);
  const runs = runsOf(runOf('t', 'tenon'));

  it('has the piece on the jig and its setting only for the trial whose advice is open', () => {
    expect(viewOf(box, { runs }).bench).toMatchObject({ onJig: 'tenon', holds: true, finished: false });
    const later = { ...box, trials: [...box.trials, { ...box.trials[0], id: 'later', seq: 99 }] } as Box;
    const before = { runs, trialId: box.trials[0]?.id ?? '' };
    expect(viewOf(later, before).bench).toMatchObject({ onJig: null, holds: false });
    expect(viewOf(later, { runs }).bench.holds).toBe(true);
  });

  it('knows of a finish, speaks in the unit asked for, and of the dial as it is', () => {
    expect(viewOf(boxOf([...BOTH, tried({ afterFinish: true })])).bench.finished).toBe(true);
    expect(viewOf(box, { unit: 'in' }).bench).toMatchObject({ unit: 'inch', dial: null });
    const rig = { ...RIG, travelPerTurn: length(1.27), marksPerTurn: 50 };
    expect(viewOf(box, {}, givenWith(null, rig)).bench.dial).toEqual({
      travelPerTurn: 1.27,
      marksPerTurn: 50,
    });
  });

  it('has of all set-ups what was missed, done and moved', () => {
    const second = runOf('t', 'tenon', [{ kind: 'moved', what: 'dial-knocked' }], { skip: ['gap'] });
    const { log } = viewOf(box, { runs: runsOf(runOf('r', 'recess'), second) });
    expect(log.missed).toContain('gap');
    expect(log.done).not.toContain('gap');
    expect(log.moved).toEqual(['dial-knocked']);
  });
});

describe('the trials', () => {
  it('are those up to the one asked about, with what was cut between them', () => {
    const box = boxOf([
      ...[...BOTH, tried(), cut('tenon', 1.65), tried()],
      ...[cut('tenon', 1.65), tried(), cut('recess', 1.7), tried()],
    ]);
    const moves = viewOf(box).trials.map((trial) => trial.moves);
    expect(moves).toEqual([
      [expect.objectContaining({ kind: 'deepen', part: 'tenon', by: expect.closeTo(0.05, 9) })],
      [expect.objectContaining({ kind: 'same-setting-again', part: 'tenon', by: null })],
      [expect.objectContaining({ kind: 'deepen', part: 'recess', by: expect.closeTo(0.1, 9) })],
      [],
    ]);
    const second = viewOf(box, { trialId: box.trials[1]?.id ?? '' });
    expect(second.trials).toHaveLength(2);
    expect(second.trials[1]?.moves).toEqual([]);
    expect(second.joint.depth).toEqual({ recess: 1.6, tenon: 1.65 });
  });

  it('a tenon made between two of them is a move with its size and depth', () => {
    const box = boxOf([...BOTH, tried(), turned(52.2), cut('tenon', 1), cut('tenon', 1.5), tried()]);
    expect(viewOf(box).trials[0]?.moves).toEqual([
      { kind: 'new-tenon', part: 'tenon', by: null, size: 52.2, depth: 1.5 },
    ]);
    expect(viewOf(box).joint).toMatchObject({ tenon: 52.2, depth: { tenon: 1.5 } });
  });

  it('trials of a recess since bored again are of another joint', () => {
    const box = boxOf([...BOTH, tried(), bored(50.4), cut('recess', 1.6), tried()]);
    expect(viewOf(box).trials).toHaveLength(1);
    expect(viewOf(box, { trialId: box.trials[0]?.id ?? '' }).joint.bore).toBe(50);
  });

  it('what was measured beyond what can be is not said; at the limit it is', () => {
    const said = (value: number, gap: number) => {
      const more = { endPlay: length(value), bottomGap: length(gap), turnsOn: value * 10 };
      const [trial] = viewOf(boxOf([...BOTH, tried(more)])).trials;
      return [trial?.endPlay, trial?.bottomGap, trial?.turnsOn];
    };
    expect(said(0.2, -0.3)).toEqual([0.2, -0.3, 2]);
    expect(said(MEASURED_LIMITS.endPlay.max + 0.1, MEASURED_LIMITS.bottomGap.min - 0.1)).toEqual([
      null,
      null,
      null,
    ]);
    expect(said(Number.NaN, Number.NaN)).toEqual([null, null, null]);
    expect(said(MEASURED_LIMITS.endPlay.max, MEASURED_LIMITS.bottomGap.max).slice(0, 2)).toEqual([
      MEASURED_LIMITS.endPlay.max,
      MEASURED_LIMITS.bottomGap.max,
    ]);
  });

  it('have one seed each, the same every time', () => {
    const box = boxOf([...BOTH, tried(), tried()]);
    const { seed } = viewOf(box);
    expect(viewOf(box).seed).toBe(seed);
    expect(viewOf(box, { trialId: box.trials[0]?.id ?? '' }).seed).not.toBe(seed);
    expect(viewOf(box, { boxId: 'another' }).seed).not.toBe(seed);
    expect(Number.isInteger(seed) && seed >= 0 && seed < 2 ** 32).toBe(true);
  });

  it('a trial that the box does not have is none', () => {
    const box = boxOf([...BOTH, tried()]);
    const calculated = gotten(calculate(box, givenWith(null)));
    const asked = {
      boxId: 'box',
      box,
      calculated,
      runs: new Map(),
      trialId: 'x',
      unit: 'mm',
      learned: null,
    } as const;
    expect(diagnosisView(asked)).toBeNull();
  });
});
