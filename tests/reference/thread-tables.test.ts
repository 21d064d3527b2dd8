/**
 * The joint's profile against standard threads: ISO 68-1 (1998), ISO 724 (1993), ASME B1.1 (2003/2019), three-wire examples as in
 * NBS Handbook H28, all copied into shared/thread-standards.json. A standard thread is a tenon with a crest flat of P/8, cut 5/8 H deep by a tip of P/4.
 */
import { describe, expect, test } from 'vitest';
import standards from '../../shared/thread-standards.json' with { type: 'json' };
import { tenonForClearance } from '../../src/domain/joint/fit.ts';
import { crestFromDepth, depthFromCrest } from '../../src/domain/joint/profile.ts';
import { tenonFromEngagement } from '../../src/domain/joint/sizes.ts';
import { inches, mm, mmFromInches, pitchFromTpi } from '../../src/domain/units/brands.ts';
import { gotten } from '../domain/joint/results.ts';

const ratio = (name: string): number => {
  const row = standards.basic_profile.find((each) => each.name === name);
  if (!row) throw new Error(`no ${name}`);
  return row.of_P;
};

/** Height of the sharp V: what a sharp tip cuts that leaves no crest. */
const vHeight = (pitch: number): number =>
  gotten(depthFromCrest({ pitch: mm(pitch), tipFlat: mm(0) }, mm(0)));
/** What a flat cuts off the sharp V. */
const truncation = (pitch: number, flat: number): number =>
  vHeight(pitch) - gotten(depthFromCrest({ pitch: mm(pitch), tipFlat: mm(flat) }, mm(0)));

/** Pitch and minor diameter of a standard thread of this major diameter, by the joint's own functions. */
const basic = (major: number, P: number) => {
  const pitch = mm(P);
  const form = { pitch, tipFlat: mm(P / 4) };
  const depth = gotten(depthFromCrest(form, mm(P / 8)));
  // A ring grooved half of H deep by a sharp tip has its pitch diameter at its own bore: the thread that fits it with no clearance shares it.
  const groove = { depth: mm(vHeight(P) / 2), tipFlat: mm(0) };
  const ring = 100;
  const tenon = gotten(
    tenonForClearance(
      { pitch, recess: { ...groove, diameter: mm(ring) }, tenon: { depth, tipFlat: form.tipFlat } },
      mm(0),
    ),
  );
  return { pitchDiameter: major - tenon + ring, minor: major - 2 * depth };
};

test('ISO 68-1: the ratios of the basic profile', () => {
  const pitch = mm(1);
  const height = vHeight(pitch);
  for (const { name, of_P } of standards.basic_profile) {
    const [above = 1, below = 1] = name === 'H' ? [1, 1] : name.replace(' H', '').split('/').map(Number);
    expect((above / below) * height, name).toBeCloseTo(of_P, 8);
  }
  expect(gotten(depthFromCrest({ pitch, tipFlat: mm(1 / 4) }, mm(1 / 8)))).toBeCloseTo(ratio('5/8 H'), 8);
  expect(truncation(1, 1 / 8)).toBeCloseTo(ratio('1/8 H'), 8);
  expect(truncation(1, 1 / 4)).toBeCloseTo(ratio('1/4 H'), 8);
  expect(gotten(crestFromDepth({ pitch, tipFlat: mm(1 / 8) }, mm(ratio('17/24 H'))))).toBeCloseTo(
    1 - 1 / 8 - (2 * ratio('17/24 H')) / Math.sqrt(3),
    8,
  );
});

describe('ISO 724: pitch and minor diameters, as printed to 0.001 mm', () => {
  test.each(standards.iso_724.map((row) => [row.thread, row] as const))('%s', (_thread, { d, P, d2, d1 }) => {
    const found = basic(d, P);
    expect(Math.abs(found.pitchDiameter - d2)).toBeLessThanOrEqual(0.000501);
    expect(Math.abs(found.minor - d1)).toBeLessThanOrEqual(0.000501);
  });
});

describe('ASME B1.1: pitch and minor diameters, as printed to 0.0001 in', () => {
  test.each(standards.asme_b1_1.map((row) => [row.thread, row] as const))('%s', (_thread, row) => {
    const found = basic(mmFromInches(inches(row.D)), pitchFromTpi(row.tpi));
    expect(Math.abs(found.pitchDiameter / 25.4 - row.pitch_dia)).toBeLessThanOrEqual(0.0000501);
    expect(Math.abs(found.minor / 25.4 - row.minor_dia)).toBeLessThanOrEqual(0.0000501);
  });
});

test('a standard nut takes the standard bolt: full engagement is 100 % of 0.625 H and leaves no clearance', () => {
  for (const { d, P, d1_exact } of standards.iso_724) {
    const form = { pitch: mm(P), tipFlat: mm(0) };
    const wanted = { recess: mm(d1_exact), clearance: mm(0) };
    const sizes = gotten(tenonFromEngagement(form, wanted, 100, '0.625H'));
    expect(Math.abs(sizes.tenon - d)).toBeLessThan(0.00001);
    // Crest flats of both pieces as one figure: the standard's are P/8 and P/4, here their mean.
    expect(sizes.crestFlat).toBeCloseTo((3 / 16) * P, 9);
  }
});

describe('three wires lie in the groove where the printed formula puts them', () => {
  /** A wire's centre lies W/(2 sin 30) above the sharp root, which is H/2 below the pitch line. */
  const overWires = (pitchDia: number, wire: number, P: number): number =>
    pitchDia - vHeight(P) + 2 * wire + wire;

  test('worked examples', () => {
    const [unc, thirteen, twenty] = standards.three_wire.examples_read;
    // The wire column of the first example is rounded; the published figures come from the unrounded best wire, P/(2 cos 30).
    const { P_in = 0, E_max_in = 0, E_min_in = 0 } = unc?.inputs ?? {};
    const P = P_in * 25.4;
    const best = P / Math.sqrt(3);
    expect(overWires(E_max_in * 25.4, best, P) / 25.4).toBeCloseTo(0.2597, 4);
    expect(overWires(E_min_in * 25.4, best, P) / 25.4).toBeCloseTo(0.256, 4);
    for (const [row, wanted] of [
      [thirteen, 0.46878],
      [twenty, 0.4667],
    ] as const) {
      const { M_in = 0, P_in: pitch = 0, W_in = 0 } = row?.inputs ?? {};
      const pitchDia = M_in * 25.4 - overWires(0, W_in * 25.4, pitch * 25.4);
      expect(Math.abs(pitchDia / 25.4 - wanted)).toBeLessThanOrEqual(0.0000151);
    }
  });

  test('computed rows, pitch diameter and measure over best wires', () => {
    for (const { P_mm, d_mm, basic_pitch_dia_mm, best_wire_mm, M_over_best_wires_mm } of standards.three_wire
      .computed_rows) {
      const { pitchDiameter: found } = basic(d_mm, P_mm);
      expect(found).toBeCloseTo(basic_pitch_dia_mm, 4);
      expect(Math.abs(overWires(found, best_wire_mm, P_mm) - M_over_best_wires_mm)).toBeLessThan(0.00003);
    }
  });
});

test('a pitch in threads to the inch is the standard pitch in millimetres', () => {
  for (const { tpi, pitch_mm } of standards.tpi_to_mm) expect(pitchFromTpi(tpi)).toBeCloseTo(pitch_mm, 6);
});
