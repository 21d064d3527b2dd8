import { describe, expect, it } from 'vitest';
import type { Look } from '../../src/domain/experiment/experiment-status.ts';
import type { Because, Wording } from '../../src/domain/findings/answers/wording.ts';
import type { TwoByTwo } from '../../src/domain/findings/statistics/counts.ts';
import { resultWords } from '../../src/ui/findings/experiment-result-words.ts';
import { becauseWords, linkSentence, linkWord, linkWords } from '../../src/ui/findings/link-words.ts';
import { findingsWords } from '../../src/ui/findings/words.ts';

const table = (a: number, b: number, c: number, d: number): TwoByTwo => ({ a, b, c, d });
const nameOf = (step: string) => `the ${step}`;
const why = (wording: Wording, counts = table(3, 10, 20, 80)) =>
  becauseWords(wording, { table: counts, sameBoxesAs: ['cone'] }, nameOf);

describe('the sentence of a link', () => {
  it('speaks of boxes in 100, of few as they are, and of never', () => {
    expect(linkSentence({ table: table(8, 11, 12, 88) })).toBe(
      'Where it was missed, 42 boxes in 100 did not fit at first in a way it can explain; where it was done, 12 boxes in 100.',
    );
    expect(linkSentence({ table: table(1, 2, 0, 20) })).toMatch(
      /missed, 1 of 3 did .* done, 0 boxes in 100\.$/,
    );
    expect(linkSentence({ table: table(0, 0, 1, 2) })).toBe('Never missed in your log.');
    expect(linkSentence({ table: table(1, 2, 0, 0) })).toBe('Never done in your log.');
    expect(linkSentence({ table: table(0, 0, 0, 0) })).toBe('No box says anything of it yet.');
  });
});

describe('why a word is no stronger', () => {
  it('names what the gate still wants', () => {
    expect(why({ word: 'too-few', because: 'gate' }, table(1, 2, 6, 40))).toBe(
      'So far 3 boxes where it was missed; a word needs five.',
    );
    expect(why({ word: 'too-few', because: 'gate' }, table(1, 0, 2, 40))).toBe(
      'So far 1 box where it was missed and 3 boxes with such a fault; a word needs five.',
    );
  });

  it('names the step beside which little of a link is left, and the one always missed with it', () => {
    expect(why({ word: 'possible', because: 'several-steps', beside: 'gap' })).toMatch(
      /beside “the gap” little/,
    );
    expect(why({ word: 'possible', because: 'several-steps' })).toMatch(/by luck now and then/);
    expect(why({ word: 'possible', because: 'same-boxes' })).toMatch(/together with “the cone”/);
  });

  it('is worded for every reason, and silent only where there is none', () => {
    const reasons: readonly Because[] = [
      'gate',
      'wide',
      'disagree',
      'several-steps',
      'no-mechanism',
      'other-faults-too',
      'same-boxes',
    ];
    for (const because of reasons) expect(why({ word: 'possible', because })?.length).toBeGreaterThan(20);
    expect(why({ word: 'strong', because: null })).toBeNull();
  });
});

describe('how many more', () => {
  it('says what is missing, that there is enough, or that a log will not settle it', () => {
    const said = (fifty: number | 'past', eighty: number | 'past') =>
      linkWords.howMany({ fifty, eighty }, 120);
    expect(said(14, 40)).toBe('About 14 to 40 more boxes would settle it, if it is as it looks.');
    expect(said(0, 40)).toBe('About 40 more boxes would settle it, if it is as it looks.');
    expect(said(0, 0)).toBe('There are boxes enough to settle it; its word is weighed again at 120.');
    expect(said(90, 'past')).toMatch(/^About 90 more boxes would give an even chance/);
    expect(said('past', 'past')).toMatch(/test the step/);
    expect(said(0, 'past')).toMatch(/test the step/);
  });
});

const UNCLEAR = { look: 'end', measured: { clear: false } } as Look;

describe('no word is leave to skip a step, and none says what made what', () => {
  const said = [
    linkWords.noSignAbout,
    linkWords.noSign,
    linkWords.otherWay,
    linkWords.tooFewAbout,
    findingsWords.nothingAbout,
    resultWords.meaning(UNCLEAR, { kind: 'fit' }),
  ];
  it.each(said)('%s', (sentence) => {
    expect(sentence).toMatch(
      /not a reason to skip|none of this is a reason to skip|do them|no leave to skip/i,
    );
    expect(sentence).not.toMatch(/\bcaused\b|significant/i);
  });
  it('no word of a link is a verdict on the step', () => {
    for (const word of Object.values(linkWord)) expect(word).not.toMatch(/safe|fine|needless|skip/i);
  });
});
