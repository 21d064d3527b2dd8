import { type WoodsToChoose, woodNamed } from '../../../app/woods-to-choose.ts';
import type { Plan, WoodUse } from '../../../domain/box/records.ts';
import { LONGEST } from '../../../domain/log/bounds.ts';
import type { Result } from '../../../domain/result.ts';
import type { Length } from '../../../domain/units/length.ts';
import { readLength, readPitch, readTurns } from '../../../domain/units/read-quantity.ts';
import { readName } from '../../../domain/units/read-text.ts';
import { grainOf, type PlanForm, passesOf, pieceOf, routeOf } from './texts.ts';

/** Openings, outsides and clearances that a box can have, mm. */
const OPENING = { min: 6, max: 400 };
const OUTSIDE = { min: 8, max: 600 };
const CLEARANCE = { min: 0.05, max: 2 };
const TURNS = { min: 0.1, max: 20 };
const THREADS = { min: 3, max: 20 };

const orEmpty =
  <T>(reader: (field: string, typed: string) => Result<T>) =>
  (field: string, typed: string): Result<T | null> =>
    typed.trim() === '' ? { ok: true, value: null } : reader(field, typed);

const readWood =
  (woods: WoodsToChoose) =>
  (field: string, typed: string): Result<string> =>
    readName(field, woodNamed(woods, typed)?.key ?? typed, LONGEST.id);

const readAim = (form: PlanForm, unit: 'in' | 'mm'): Plan['aim'] | undefined => {
  if (form.values.value.aim === 'depth') {
    const dialTurns = form.read('dialTurns', (field, typed) => readTurns(field, typed, TURNS));
    return dialTurns === undefined ? undefined : { by: 'depth', dialTurns };
  }
  const clearance = form.read(
    'clearance',
    orEmpty<Length>((field, typed) => readLength(field, typed, unit, CLEARANCE)),
  );
  return clearance === undefined ? undefined : { by: 'fit', clearance };
};

/** Reads every field, so that each wrong one has its refusal beside it; undefined when there is one. */
export const readPlan = (form: PlanForm, woods: WoodsToChoose, unit: 'in' | 'mm'): Plan | undefined => {
  const texts = form.values.value;
  const pitch =
    texts.pitch === 'other'
      ? form.read('pitchOther', (field, typed) => readPitch(field, typed, 'tpi'))
      : form.read('pitch', (field, typed) => readPitch(field, typed, 'tpi'));
  const opening = form.read('opening', (field, typed) => readLength(field, typed, unit, OPENING));
  const outside = form.read(
    'outside',
    orEmpty<Length>((field, typed) => readLength(field, typed, unit, OUTSIDE)),
  );
  const lid = form.read('lid', readWood(woods));
  const base = texts.twoWoods ? form.read('base', readWood(woods)) : lid;
  const ring = texts.ring === 'none' ? null : form.read('ringWood', readWood(woods));
  const aim = readAim(form, unit);
  const threads = form.read('threads', (field, typed) => readTurns(field, typed, THREADS));
  if (!pitch || !opening || outside === undefined || !lid || !base || ring === undefined) return undefined;
  if (!aim || threads === undefined) return undefined;
  const use = (wood: string, grain: string): WoodUse => ({ wood, grain: grainOf(grain) });
  return {
    route: routeOf(texts.route),
    recessIn: pieceOf(texts.recessIn),
    lid: use(lid, texts.lidGrain),
    base: use(base, texts.baseGrain),
    insert: ring === null ? null : { ...use(ring, texts.ringGrain), in: pieceOf(texts.ring) },
    pitch,
    opening,
    outside,
    aim,
    threads,
    passes: passesOf(texts.passes),
  };
};
