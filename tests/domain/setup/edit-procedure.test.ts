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

  it('changes words and what asks a step again, never its key or its being a hold point', () => {
    const changed = changeStep(ours, 'lock-post', { sentence: 'Post locked.', reopenedBy: [] });
    expect(changed.steps.find((step) => step.key === 'lock-post')).toMatchObject({
      sentence: 'Post locked.',
      hold: true,
      reopenedBy: [],
    });
  });

  it('takes a sentence that can be read at arm’s length, tidied', () => {
    expect(readSentence('sentence', '  Lock   the post. ')).toEqual({ ok: true, value: 'Lock the post.' });
    expect(readSentence('sentence', '   ')).toMatchObject({ ok: false, error: { problem: 'empty' } });
    expect(readSentence('sentence', 'x'.repeat(LONGEST_SENTENCE))).toMatchObject({ ok: true });
    expect(readSentence('sentence', 'x'.repeat(LONGEST_SENTENCE + 1))).toMatchObject({
      ok: false,
      error: { problem: 'out-of-range', max: LONGEST_SENTENCE },
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
