import { describe, expect, test } from 'vitest';
import { diagnose } from '../../../src/domain/diagnosis/diagnose.ts';
import type { AdvisedMove, Diagnosis } from '../../../src/domain/diagnosis/diagnosis.ts';
import type { DiagnosisView } from '../../../src/domain/diagnosis/view.ts';
import { benchStep } from '../../../src/domain/joint/dial.ts';
import { mm } from '../../../src/domain/units/brands.ts';
import { caseView, type GivenCase, givenCases } from './given-cases.ts';

const SLOPE = Math.tan(Math.PI / 6);

const answered = (view: DiagnosisView): Diagnosis => {
  const found = diagnose(view);
  if (!found.ok) throw new Error(JSON.stringify(found.error));
  return found.value;
};

/** An amount counts by the nearest amount of the case that is not smaller: those are whole steps. */
const isListed = (amounts: readonly number[] | undefined, by: number | null, step: number): boolean => {
  if (!amounts?.length) return true;
  const counted = Math.ceil((by ?? 0) / step - 1e-6) * step;
  return amounts.some((amount) => Math.abs(amount - counted) < 2e-3);
};

/** Why a move is forbidden in a case, or nothing. */
const forbidden = ({ forbidden: list, known, truth }: GivenCase, move: AdvisedMove): string | undefined => {
  const step = benchStep[known.box.unit];
  const found = list.find(
    ({ kind, part, by }) =>
      kind === move.kind && (!part || !move.part || part === move.part) && isListed(by, move.by, step),
  )?.why;
  // A case lists bare cuts. A thread set up and picked up again first has a setting; what else could spoil the part is looked at here.
  if (found !== 'cut without a setting' || !move.reset) return found;
  const by = move.by ?? 0;
  if (known.setting.finished || known.setting.holds || move.part !== 'tenon') return found;
  if (truth.crestFlats[0] - 2 * SLOPE * by < 0.07) return 'crest gone';
  return truth.flankClearance + 2 * by > truth.bandOfThisTurner[1] + 0.05 ? 'cut too loose' : undefined;
};

/** The case with its question answered by the truth, where the truth of the case says the answer. */
const withAnswer = ({ truth }: GivenCase, view: DiagnosisView, field: string): DiagnosisView | null => {
  const last = view.trials[0] as DiagnosisView['trials'][number];
  if (field === 'endPlay' && last.endPlay === null)
    return { ...view, trials: [{ ...last, endPlay: mm(truth.endPlay) }] };
  if (field === 'crestFlat')
    return {
      ...view,
      trials: [{ ...last, crestFlat: { part: 'tenon', width: mm(Math.max(0, truth.crestFlats[0])) } }],
    };
  return null;
};

const told = givenCases.map((each) => ({
  given: each,
  view: caseView(each),
  first: answered(caseView(each)),
}));

describe('200 cases of an independent workshop (shared/diagnosis-cases.json)', { timeout: 120_000 }, () => {
  test('no advised move spoils a part', () => {
    const spoils = told.flatMap(({ given, first }) =>
      [first.move, first.next].flatMap((move) => {
        const why = move && forbidden(given, move);
        return why ? [`${given.id}: ${move.kind} ${move.by}: ${why}`] : [];
      }),
    );
    expect(told).toHaveLength(200);
    expect(spoils).toEqual([]);
  });

  test('nor after its questions are answered, as far as the truth of a case answers them', () => {
    let questions = 0;
    const spoils = told.flatMap(({ given, view, first }) => {
      const found: string[] = [];
      let [now, ask] = [view, first.ask];
      for (let asked = 0; asked < 2 && ask; asked++) {
        const next = withAnswer(given, now, ask.field);
        if (!next) break;
        questions++;
        now = next;
        const then = answered(now);
        for (const move of [then.move, then.next]) {
          const why = move && forbidden(given, move);
          if (why) found.push(`${given.id}: ${move.kind} ${move.by}: ${why}`);
        }
        ask = then.ask;
      }
      return found;
    });
    expect(questions).toBeGreaterThan(80);
    expect(spoils).toEqual([]);
  });

  test('nor with the play felt and the crest seen from the start', () => {
    const spoils = told.flatMap(({ given, view }) => {
      const seen = ['endPlay', 'crestFlat'].reduce(
        (known, field) => withAnswer(given, known, field) ?? known,
        view,
      );
      const { move, next } = answered(seen);
      return [move, next].flatMap((each) => {
        const why = each && forbidden(given, each);
        return why ? [`${given.id}: ${each.kind} ${each.by}: ${why}`] : [];
      });
    });
    expect(spoils).toEqual([]);
  });

  test('the first cause is a true one in more than 64 of 100, one of the first two in more than 78', () => {
    const hits = (count: number) =>
      told.filter(({ given, first }) =>
        first.causes.slice(0, count).some(({ cause }) => given.truth.causes.includes(cause)),
      ).length / told.length;
    expect(hits(1)).toBeGreaterThan(0.64);
    expect(hits(2)).toBeGreaterThan(0.78);
  });

  test('where the first is called likely, it is a true one in more than 83 of 100', () => {
    const likely = told.filter(({ first }) => first.confidence === 'likely');
    const right = likely.filter(({ given, first }) =>
      given.truth.causes.includes(first.causes[0]?.cause ?? ''),
    );
    expect(likely.length).toBeGreaterThan(40);
    expect(right.length / likely.length).toBeGreaterThan(0.83);
  });
});
