import { describe, expect, it } from 'vitest';
import { movedSince } from '../../../src/domain/box/moved-since.ts';
import { onJig, settingHolds } from '../../../src/domain/box/on-jig.ts';
import type { Box } from '../../../src/domain/box/records.ts';
import type { RunState } from '../../../src/domain/setup/fold.ts';
import { sampleClosing } from '../../storage/sample-log.ts';
import { bored, boxOf, cut, setUp, tried, turned } from './any-box.ts';
import { runOf, runsOf } from './runs.ts';

const CLOSED = { kind: 'closed', how: 'cut' };
const RECESS = [bored(50), setUp('r', 'recess'), cut('recess', 1.6)];
const BOTH = [...RECESS, turned(52.4), setUp('t', 'tenon'), cut('tenon', 1.6), tried()];
const [recess, tenon] = [runOf('r', 'recess'), runOf('t', 'tenon')];
const stands = (box: Box, ...runs: readonly RunState[]) => {
  const all = runsOf(...runs);
  return [onJig(box, all), settingHolds(box, all)];
};

describe('what is on the jig, and whether its setting holds', () => {
  it('nothing before the first cut', () => {
    expect(stands(boxOf([bored(50), setUp('r', 'recess')]), recess)).toEqual([null, false]);
  });

  it('the piece cut last, at its setting', () => {
    expect(stands(boxOf(RECESS), recess)).toEqual(['recess', true]);
    expect(stands(boxOf(BOTH), recess, tenon)).toEqual(['tenon', true]);
  });

  it('a pass cut without any set-up on record has no setting that could hold', () => {
    expect(stands(boxOf([bored(50), cut('recess', 1.6)]))).toEqual(['recess', false]);
  });

  it('not once something moved after the close, unless that was undone', () => {
    const moved = { kind: 'moved', what: 'banjo-moved' };
    const box = boxOf(BOTH);
    const after = runOf('t', 'tenon', [CLOSED, moved]);
    expect(stands(box, recess, after)).toEqual(['tenon', false]);
    const target = { n: after.nextN - 1, writer: 'a' };
    expect(stands(box, recess, runOf('t', 'tenon', [CLOSED, moved, { kind: 'undone', target }]))).toEqual([
      'tenon',
      true,
    ]);
  });

  it('not while what moved between passes is asked again; off the jig, the piece is not there to cut', () => {
    const box = boxOf(BOTH);
    expect(stands(box, recess, runOf('t', 'tenon', [{ kind: 'moved', what: 'dial-knocked' }]))).toEqual([
      'tenon',
      false,
    ]);
    expect(stands(box, recess, runOf('t', 'tenon', [{ kind: 'moved', what: 'chuck-off' }]))).toEqual([
      null,
      false,
    ]);
  });

  it('set up again and ready it holds; set up again and given up it does not', () => {
    const box = boxOf([...BOTH, setUp('again', 'tenon')]);
    expect(stands(box, recess, tenon, runOf('again', 'tenon', []))).toEqual(['tenon', true]);
    expect(stands(box, recess, tenon, runOf('again', 'tenon', [], { done: ['isolate'] }))).toEqual([
      'tenon',
      false,
    ]);
    const givenUp = runOf('again', 'tenon', [{ kind: 'closed', how: 'abandoned' }], { done: ['isolate'] });
    expect(stands(box, recess, tenon, givenUp)).toEqual(['tenon', false]);
  });

  it('the other piece once its set-up is ready, and till then nobody can tell', () => {
    const box = boxOf([...BOTH, setUp('again', 'recess')]);
    expect(stands(box, recess, tenon, runOf('again', 'recess', []))).toEqual(['recess', true]);
    expect(stands(box, recess, tenon, runOf('again', 'recess', [], { done: ['isolate'] }))).toEqual([
      null,
      false,
    ]);
    const givenUp = runOf('again', 'recess', [{ kind: 'closed', how: 'abandoned' }]);
    expect(stands(box, tenon, givenUp)).toEqual([null, false]);
  });

  it('not where two phones wrote without seeing each other, and not with a hold point skipped', () => {
    const box = boxOf(BOTH);
    expect(stands(box, { ...tenon, contested: true })).toEqual(['tenon', false]);
    expect(stands(box, { ...tenon, readOnly: true })).toEqual(['tenon', false]);
    expect(stands(box, runOf('t', 'tenon', [], { skip: ['clear'] }))).toEqual(['tenon', false]);
  });

  it('neither once it was turned again, or the box is closed', () => {
    expect(stands(boxOf([...BOTH, turned(52.2)]), recess, tenon)).toEqual([null, false]);
    expect(stands({ ...boxOf(BOTH), closing: sampleClosing }, recess, tenon)).toEqual([null, false]);
  });
});

describe('what the job moved before the next set-up', () => {
  const ONE_BANJO = { banjos: 1 } as const;

  it('the chuck alone for the same piece; by route for the other', () => {
    const box = boxOf(BOTH);
    expect(movedSince(tenon, box, 'tenon', ONE_BANJO)).toEqual(['chuck-off']);
    expect(movedSince(recess, boxOf(RECESS), 'tenon', ONE_BANJO)).toEqual([
      'chuck-off',
      'cutter-changed',
      'post-loosened',
    ]);
  });

  it('a tenon turned again had the jig off the bed, whatever the route', () => {
    const again = boxOf([...BOTH, turned(52.2)]);
    const bothTurned = { ...again, plan: { ...again.plan, route: 'both-turned' as const } };
    for (const box of [again, bothTurned]) {
      expect(movedSince(tenon, box, 'tenon', ONE_BANJO)).toContain('post-loosened');
      expect(movedSince(tenon, box, 'tenon', { banjos: 2 })).toContain('banjo-moved');
    }
  });
});
