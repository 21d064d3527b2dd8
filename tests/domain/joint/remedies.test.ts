import { describe, expect, test } from 'vitest';
import { type Cause, type RemedyKey, remediesAgainst } from '../../../src/domain/joint/advice-table.ts';
import { fitOf } from '../../../src/domain/joint/fit.ts';
import type { FitState } from '../../../src/domain/joint/fit-target.ts';
import { type Amount, remediesFor, stateAfter } from '../../../src/domain/joint/remedies.ts';
import { findingsOf, type KnownJoint, type TrialFit } from '../../../src/domain/joint/trial-evidence.ts';
import { mm, turns } from '../../../src/domain/units/brands.ts';
import { nothingKnown, nothingTold } from './nothing-told.ts';
import { gotten, refusalOf } from './results.ts';

const t = Math.tan(Math.PI / 6);
const cut = { depth: mm(1.633), tipFlat: mm(0.2) };
/** A pair whose flanks clear by this much. */
const pairOf = (clearance: number) => ({
  pitch: mm(2.54),
  recess: { ...cut, diameter: mm(40) },
  tenon: { ...cut, diameter: mm(40 + 4 * 1.633 - (2.54 - 0.4) / t - clearance) },
});

interface Told {
  readonly trial?: Partial<TrialFit>;
  readonly known?: Partial<KnownJoint>;
  readonly trustSizes?: boolean;
}
const caseOf = ({ trial, known, trustSizes = true }: Told) => {
  const joint = { ...nothingKnown, ...known };
  return { found: gotten(findingsOf({ ...nothingTold, ...trial }, joint)), known: joint, trustSizes };
};
const remedies = (suspects: readonly Cause[], told: Told = {}) => gotten(remediesFor(suspects, caseOf(told)));
const keys = (suspects: readonly Cause[], told: Told = {}) =>
  remedies(suspects, told).map(({ remedy }) => remedy);
const amounts = (cause: Cause, remedy: RemedyKey, told: Told = {}) =>
  remedies([cause], told).find((each) => each.remedy === remedy)?.amounts;
const near = (value: number) => expect.closeTo(value, 9);

describe('which remedies, against what', () => {
  test('all that help against any of the causes, in the order of the bench, each with the causes it is for', () => {
    const both = remedies(['no-lead-in', 'rechuck-tilt']);
    expect(both.map(({ remedy }) => remedy)).toEqual([
      'brush-out',
      'chamfer-start',
      'check-chuck-seat',
      'face-shoulder',
    ]);
    expect(both.map(({ against }) => against)).toEqual([
      ['no-lead-in'],
      ['no-lead-in'],
      ['rechuck-tilt'],
      ['rechuck-tilt'],
    ]);
    expect(remedies(['no-lead-in', 'cross-started'])[0]?.against).toEqual(['no-lead-in', 'cross-started']);
    expect(both.flatMap(({ amounts: found }) => found)).toEqual([]);
    expect(remedies([])).toEqual([]);
  });

  test('of those that open or close the flanks only one, that of the likeliest cause', () => {
    expect(keys(['finish-film', 'flanks-tight'])).toContain('rub-flanks');
    expect(keys(['finish-film', 'flanks-tight'])).not.toContain('deepen');
    expect(keys(['flanks-tight', 'finish-film'])).toContain('deepen');
    expect(keys(['flanks-tight', 'finish-film'])).not.toContain('rub-flanks');
    expect(keys(['rechuck-tilt', 'flanks-tight'])).toContain('deepen');
  });

  test('a deepening that would come to nothing is left out; what has no number stays', () => {
    expect(keys(['flanks-tight'], { known: { pair: pairOf(0.3) } })).toEqual(
      remediesAgainst['flanks-tight'].filter((remedy) => remedy !== 'deepen'),
    );
    expect(keys(['flanks-loose'])).toEqual(['new-tenon']);
  });

  test('sizes that contradict the hand are to be measured again first', () => {
    expect(keys(['flanks-tight'], { trustSizes: false })[0]).toBe('measure-again');
    expect(keys(['flanks-tight'])).not.toContain('measure-again');
  });
});

describe('how much', () => {
  const dial = { travelPerTurn: mm(1.27), marksPerTurn: 50 };

  test('deepen: half of what is missing, from sizes, from play, from two tries, by feel', () => {
    const deepen = (told: Told) => amounts('flanks-tight', 'deepen', told);
    const of = (by: number, basis: Amount['basis'], atLeast = false) => [
      { part: 'tenon', by: near(by), basis, atLeast, dial: null },
    ];
    expect(deepen({ known: { pair: pairOf(0) } })).toEqual(of(0.15, 'sizes'));
    expect(deepen({ known: { pair: pairOf(0) }, trustSizes: false })).toEqual(of(0.05, 'feel'));
    expect(deepen({ trial: { endPlay: mm(0.1 * t) } })).toEqual(of(0.1, 'play'));
    expect(deepen({ trial: { endPlay: mm(0) } })).toEqual(of(0.15, 'play', true));
    expect(deepen({ trial: { endPlay: mm(0.1 * t) }, trustSizes: false })).toEqual(of(0.1, 'play'));
    const tries = { deepened: mm(0.05), turnsBefore: turns(1), turnsAfter: turns(2) };
    // 0.05 x 1/(2 - 1) and half of the wanted clearance.
    expect(deepen({ known: { tries } })).toEqual(of(0.2, 'two-tries'));
    expect(deepen({ known: { tries }, trial: { endPlay: mm(0) } })).toEqual(of(0.2, 'two-tries'));
    expect(deepen({ known: { tries }, trial: { endPlay: mm(0.1 * t) } })).toEqual(of(0.1, 'play'));
    expect(deepen({ known: { tries, pair: pairOf(0) } })).toEqual(of(0.15, 'sizes'));
    expect(deepen({ known: { tries: { ...tries, turnsAfter: turns(1) } } })).toEqual(of(0.05, 'feel'));
  });

  test('deepen: nothing once the clearance is half of what was wanted', () => {
    expect(amounts('flanks-tight', 'deepen', { known: { pair: pairOf(0.149) } })).toHaveLength(1);
    expect(amounts('flanks-tight', 'deepen', { known: { pair: pairOf(0.151) } })).toBeUndefined();
  });

  test('deepen: the part on the jig, on its dial; a dial that cannot be is refused', () => {
    const known = { pair: pairOf(0), onJig: 'recess', dial } as const;
    expect(amounts('flanks-tight', 'deepen', { known })).toMatchObject([
      { part: 'recess', by: near(0.15), dial: { wholeTurns: 0, marks: 6 } },
    ]);
    const bad = caseOf({ known: { ...known, dial: { travelPerTurn: mm(0) } } });
    expect(refusalOf(remediesFor(['flanks-tight'], bad))).toMatchObject({ field: 'travelPerTurn' });
  });

  test('ease crests: each that crosses, up to 0.05 mm of gap in whole steps; without sizes one step on the part at hand', () => {
    const pair = pairOf(0.3);
    const { tenonCrestGap, recessCrestGap } = gotten(fitOf(pair));
    const ease = (known: Partial<KnownJoint>, trustSizes = true) =>
      amounts('crests-rub', 'ease-crests', { known: { pair, ...known }, trustSizes });
    const tapers = {
      tenonTaper: mm(2 * (tenonCrestGap + 0.06)),
      boreTaper: mm(2 * (recessCrestGap - 0.01)),
    };
    // From -0.06 to 0.05 is 0.11, so 0.15; from 0.01 to 0.05 is 0.04, so 0.05.
    expect(ease(tapers)).toEqual([
      { part: 'tenon', by: near(0.15), basis: 'sizes', atLeast: false, dial: null },
      { part: 'recess', by: near(0.05), basis: 'sizes', atLeast: false, dial: null },
    ]);
    const byFeel = (part: 'tenon' | 'recess', by: number) => [
      { part, by: near(by), basis: 'feel', atLeast: false, dial: null },
    ];
    expect(ease(tapers, false)).toEqual(byFeel('tenon', 0.05));
    expect(ease({ onJig: 'recess', unit: 'inch' })).toEqual(byFeel('recess', 0.0508));
    expect(ease({ tenonTaper: mm(2 * (tenonCrestGap - 0.019)) })).toMatchObject([{ basis: 'sizes' }]);
    expect(ease({ tenonTaper: mm(2 * (tenonCrestGap - 0.021)) })).toMatchObject([{ basis: 'feel' }]);
  });

  test('clear the floor: to 0.3 mm, in steps of half a millimetre or 20 thou', () => {
    const clear = (known: Partial<KnownJoint>) => amounts('bottoming', 'clear-floor', { known });
    const by = (length: number, basis: Amount['basis']) => [
      { part: 'tenon', by: near(length), basis, atLeast: false, dial: null },
    ];
    expect(clear({})).toEqual(by(0.5, 'feel'));
    expect(clear({ unit: 'inch' })).toEqual(by(0.508, 'feel'));
    expect(clear({ bottomGap: mm(0.1) })).toEqual(by(0.5, 'sizes'));
    expect(clear({ bottomGap: mm(-0.2) })).toEqual(by(0.5, 'sizes'));
    expect(clear({ bottomGap: mm(-0.3) })).toEqual(by(1, 'sizes'));
    expect(clear({ bottomGap: mm(0.3) })).toEqual(by(0.5, 'feel'));
  });

  test('rub the flanks: a quarter of what is missing, in hundredths; one without a number', () => {
    const rub = (told: Told) => amounts('finish-film', 'rub-flanks', told);
    const by = (length: number, basis: Amount['basis']) => [
      { part: 'tenon', by: near(length), basis, atLeast: false, dial: null },
    ];
    expect(rub({})).toEqual(by(0.01, 'feel'));
    expect(rub({ known: { pair: pairOf(0.1) } })).toEqual(by(0.05, 'sizes'));
    expect(rub({ known: { pair: pairOf(0.5) } })).toEqual(by(0.01, 'sizes'));
  });

  test('a new tenon: larger by what the clearance is too much, in whole steps; no number without sizes', () => {
    const anew = (told: Told) => amounts('flanks-loose', 'new-tenon', told);
    const pair = pairOf(0.62);
    const diameter = pair.tenon.diameter + 0.32;
    expect(anew({ known: { pair } })).toMatchObject([
      { part: 'tenon', by: near(0.05 * Math.round(diameter / 0.05)), basis: 'sizes' },
    ]);
    expect(anew({ known: { pair }, trustSizes: false })).toEqual([]);
    expect(anew({ trial: { endPlay: mm(0.4) } })).toEqual([]);
  });
});

describe('what it changes', () => {
  const before: FitState = {
    clearance: mm(0.1),
    endPlay: mm(0.1 * t),
    tenonCrestGap: mm(0.2),
    recessCrestGap: mm(0.3),
    bottomGap: mm(1),
  };
  const changed = (
    remedy: RemedyKey,
    part: 'tenon' | 'recess',
    by: number,
    pair: KnownJoint['pair'] = pairOf(0.1),
    state = before,
  ) =>
    stateAfter(
      state,
      [{ remedy, against: [], amounts: [{ part, by: mm(by), basis: 'feel', atLeast: false, dial: null }] }],
      { ...nothingKnown, pair },
    );
  const opened = (by: number) => ({ clearance: near(0.1 + by), endPlay: near((0.1 + by) * t) });

  test('deeper opens the flanks by twice, and the crest gap over its own root by once', () => {
    expect(changed('deepen', 'tenon', 0.05)).toEqual({
      ...before,
      ...opened(0.1),
      recessCrestGap: near(0.35),
    });
    expect(changed('deepen', 'recess', 0.05)).toEqual({
      ...before,
      ...opened(0.1),
      tenonCrestGap: near(0.25),
    });
  });

  test('eased crests gain their own gap and nothing else; a shorter tenon the floor', () => {
    expect(changed('ease-crests', 'tenon', 0.05)).toEqual({ ...before, tenonCrestGap: near(0.25) });
    expect(changed('ease-crests', 'recess', 0.05)).toEqual({ ...before, recessCrestGap: near(0.35) });
    expect(changed('clear-floor', 'tenon', 0.5)).toEqual({ ...before, bottomGap: near(1.5) });
  });

  test('rubbed flanks of one part open by four times, 2/sin 30', () => {
    expect(changed('rub-flanks', 'tenon', 0.02)).toEqual({ ...before, ...opened(0.08) });
    expect(changed('rub-flanks', 'tenon', 0.02, null)).toEqual({ ...before, ...opened(0.08) });
  });

  test('a larger tenon closes flanks and crests; play never falls below nothing', () => {
    const pair = pairOf(0.1);
    const larger = (by: number) => changed('new-tenon', 'tenon', pair.tenon.diameter + by, pair);
    expect(larger(0.05)).toEqual({
      ...before,
      ...opened(-0.05),
      tenonCrestGap: near(0.175),
      recessCrestGap: near(0.275),
    });
    expect(larger(0.3).endPlay).toBe(0);
    expect(changed('new-tenon', 'tenon', 42, null)).toEqual({ ...before, ...opened(0) });
  });

  test('wax changes no size; what is not known stays so; amounts add up', () => {
    expect(changed('wax', 'tenon', 1)).toEqual(before);
    const unknown: FitState = {
      clearance: null,
      endPlay: null,
      tenonCrestGap: null,
      recessCrestGap: null,
      bottomGap: null,
    };
    for (const remedy of ['deepen', 'ease-crests', 'clear-floor', 'rub-flanks', 'new-tenon'] as const)
      expect(changed(remedy, 'tenon', 0.05, null, unknown)).toEqual(unknown);
    const amount = { part: 'tenon', by: mm(0.05), basis: 'feel', atLeast: false, dial: null } as const;
    const both = [
      { remedy: 'ease-crests', against: [], amounts: [amount, { ...amount, part: 'recess' }] },
      { remedy: 'deepen', against: [], amounts: [amount] },
    ] as const;
    expect(stateAfter(before, both, { ...nothingKnown, pair: pairOf(0.1) })).toEqual({
      ...before,
      ...opened(0.1),
      tenonCrestGap: near(0.25),
      recessCrestGap: near(0.4),
    });
  });
});
