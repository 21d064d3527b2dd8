import { describe, expect, it } from 'vitest';
import { DEFAULT_PROCEDURES } from '../../../src/domain/setup/default-procedures.ts';
import {
  addStep,
  changeStep,
  moveStep,
  readSentence,
  retireStep,
} from '../../../src/domain/setup/edit-procedure.ts';
import { LONGEST_SENTENCE, type Procedure } from '../../../src/domain/setup/procedure.ts';

const ours: Procedure = DEFAULT_PROCEDURES['board-and-cone'];
const keys = (procedure: Procedure) => procedure.steps.map((step) => step.key);
const holds = (procedure: Procedure) => procedure.steps.filter((step) => step.hold).map((step) => step.key);

describe('a procedure of one’s own', () => {
  it('keeps every hold point, whatever is taken out', () => {
    const bare = keys(ours).reduce(retireStep, ours);
    expect(keys(bare)).toEqual(holds(ours));
  });

  it('lets go of what rested on a step that was taken out', () => {
    const without = retireStep(ours, 'board');
    expect(without.steps.flatMap((step) => step.restsOn)).not.toContain('board');
    expect(keys(without)).not.toContain('board');
  });

  it('moves a step by one place, and back', () => {
    const moved = moveStep(ours, 'square-banjo', -1);
    expect(keys(moved).indexOf('square-banjo')).toBe(keys(ours).indexOf('square-banjo') - 1);
    expect(moveStep(moved, 'square-banjo', 1)).toEqual(ours);
  });

  it('never moves a step before one it rests on, nor past an end', () => {
    expect(moveStep(ours, 'cone', -1)).toEqual(ours);
    expect(moveStep(ours, 'board', 1)).toEqual(ours);
    expect(moveStep(ours, 'isolate', -1)).toEqual(ours);
    expect(moveStep(ours, 'clear', 1)).toEqual(ours);
    expect(moveStep(ours, 'nothing', 1)).toEqual(ours);
  });

  it('adds a step before the last look, asked again only when all is lost', () => {
    const more = addStep(ours, 'mine', 'Shavings off the bed.');
    expect(keys(more).slice(-2)).toEqual(['mine', 'clear']);
    expect(more.steps.at(-2)).toMatchObject({
      hold: false,
      reopenedBy: ['headstock-swung', 'it-grabbed', 'dont-know'],
    });
  });

  it('changes words and what asks a step again, never its key', () => {
    const changed = changeStep(ours, 'touch-off', { sentence: 'Touch the work. Zero.', reopenedBy: [] });
    expect(changed.steps.find((step) => step.key === 'touch-off')).toMatchObject({
      sentence: 'Touch the work. Zero.',
      reopenedBy: [],
    });
  });

  it('leaves a hold point its words and what asks it again, and lets more ask it', () => {
    const changed = changeStep(ours, 'lock-post', {
      sentence: 'Never mind.',
      why: 'It crept once.',
      reopenedBy: ['dial-knocked'],
    });
    const [was, is] = [ours, changed].map(({ steps }) => steps.find(({ key }) => key === 'lock-post'));
    expect(is?.sentence).toBe(was?.sentence);
    expect(is?.why).toBe('It crept once.');
    expect([...(is?.reopenedBy ?? [])].sort()).toEqual([...(was?.reopenedBy ?? []), 'dial-knocked'].sort());
  });

  it.each(Object.values(DEFAULT_PROCEDURES))('$name: a change of nothing changes nothing', (procedure) => {
    for (const { key } of procedure.steps) expect(changeStep(procedure, key, {})).toEqual(procedure);
  });

  it('lets nothing come before the plug or after the last look, however often it is asked', () => {
    const far = (key: string, by: -1 | 1) =>
      ours.steps.reduce((procedure) => moveStep(procedure, key, by), ours);
    for (const key of keys(ours))
      for (const by of [-1, 1] as const) {
        const moved = keys(far(key, by));
        expect([moved[0], moved.at(-1)]).toEqual(['isolate', 'clear']);
      }
  });

  it('takes a sentence that can be read at arm’s length, tidied', () => {
    expect(readSentence('sentence', '  Lock   the post. ')).toEqual({ ok: true, value: 'Lock the post.' });
    expect(readSentence('sentence', '   ')).toMatchObject({ ok: false, error: { problem: 'empty' } });
    expect(readSentence('sentence', 'x'.repeat(LONGEST_SENTENCE))).toMatchObject({ ok: true });
    expect(readSentence('sentence', 'x'.repeat(LONGEST_SENTENCE + 1))).toMatchObject({
      ok: false,
      error: { problem: 'too-long', most: LONGEST_SENTENCE },
    });
  });
});

describe('the procedures every log starts with', () => {
  const all = Object.values(DEFAULT_PROCEDURES);

  it.each(all)('$name: every sentence can be read at arm’s length', ({ steps }) => {
    for (const { sentence } of steps) {
      expect(readSentence('sentence', sentence)).toEqual({ ok: true, value: sentence });
      for (const word of sentence.split(/[\s.,:]+/)) expect(word.length, word).toBeLessThanOrEqual(11);
    }
  });

  it.each(all)('$name: begins with the plug and ends with the last look, both hold points', ({ steps }) => {
    expect(steps.at(0)).toMatchObject({ key: 'isolate', hold: true, everyTime: true });
    expect(steps.at(-1)).toMatchObject({ key: 'clear', hold: true, everyTime: true });
  });

  it.each(all)('$name: a step rests only on earlier steps that may be skipped', ({ steps }) => {
    steps.forEach((step, at) => {
      for (const key of step.restsOn) {
        const below = steps.findIndex((other) => other.key === key);
        expect(below).toBeGreaterThanOrEqual(0);
        expect(below).toBeLessThan(at);
        expect(steps[below]?.hold).toBe(false);
      }
    });
  });
});
