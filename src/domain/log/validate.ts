import * as v from 'valibot';
import type { Bodies, Kind, Stored } from '../box/records.ts';
import { goingOn, marks, marksAt, seated, threads } from '../box/trial-words.ts';
import { FIELDS, MOVE_KINDS } from '../diagnosis/view.ts';
import { ok, type Result, refuse } from '../result.ts';
import { type ForeignEvent, isKnownKind, type SetUpEvent } from '../setup/events.ts';
import type { Procedure } from '../setup/procedure.ts';
import { GREATEST, MOST_ITEMS } from './bounds.ts';
import type { Settings } from './settings.ts';
import { foreignEvent, knownEvent, procedure } from './validate-event.ts';
import {
  day,
  id,
  length,
  list,
  millimetres,
  moment,
  name,
  note,
  number,
  part,
  pitch,
  signedLength,
  whole,
} from './validate-parts.ts';

/** What is wrong with a piece of foreign data: where in it, what belongs there, and what was found. */
export interface Misfit {
  readonly at: string;
  readonly expected: string;
  readonly found: string;
}

const woodUse = { wood: id, grain: v.picklist(['end', 'side']) };
const piece = v.picklist(['lid', 'base']);
/** Its place in the box's one sequence of entries. */
const seq = whole(1, GREATEST.count);

const plan = v.strictObject({
  route: v.picklist(['recess-first', 'both-turned']),
  recessIn: piece,
  lid: v.strictObject(woodUse),
  base: v.strictObject(woodUse),
  insert: v.nullable(v.strictObject({ ...woodUse, in: piece })),
  pitch,
  opening: length,
  outside: v.nullable(length),
  aim: v.variant('by', [
    v.strictObject({ by: v.literal('fit'), clearance: v.nullable(signedLength) }),
    v.strictObject({ by: v.literal('depth'), dialTurns: number(0, 10_000) }),
  ]),
  threads: number(0, 1_000),
  passes: v.picklist(['two-thirds', 'equal-area', 'crumbly']),
});

const move = v.strictObject({
  kind: v.picklist(MOVE_KINDS),
  part: v.nullable(part),
  by: v.nullable(millimetres),
  size: v.nullable(millimetres),
  depth: v.nullable(millimetres),
});

const box = v.strictObject({
  number: whole(1, GREATEST.count),
  name,
  startedOn: day,
  rigId: id,
  procedureId: id,
  plan,
  bore: list(
    v.strictObject({
      id,
      seq,
      where: v.picklist(['mouth', 'relief']),
      along: length,
      across: v.nullable(length),
      overCrests: v.boolean(),
    }),
  ),
  tenon: list(
    v.strictObject({
      id,
      seq,
      where: v.picklist(['end', 'shoulder']),
      diameter: length,
      overCrests: v.boolean(),
    }),
  ),
  instrumentId: v.nullable(id),
  setUps: list(v.strictObject({ runId: id, seq, part })),
  cuts: list(
    v.strictObject({
      id,
      seq,
      part,
      runId: v.nullable(id),
      at: moment,
      depth: signedLength,
      correction: v.boolean(),
    }),
  ),
  trials: list(
    v.strictObject({
      id,
      seq,
      at: moment,
      right: v.boolean(),
      goingOn: list(v.picklist(goingOn)),
      seated: v.nullable(v.picklist(seated)),
      threads: list(v.picklist(threads)),
      marks: v.nullable(v.strictObject({ on: v.picklist(marks), at: v.picklist(marksAt) })),
      endPlay: v.nullable(length),
      bottomGap: v.exactOptional(v.nullable(signedLength)),
      crestFlat: v.exactOptional(v.nullable(v.strictObject({ part, width: length }))),
      boreTaper: v.exactOptional(v.nullable(signedLength)),
      tenonTaper: v.exactOptional(v.nullable(signedLength)),
      outOfRound: v.exactOptional(v.nullable(signedLength)),
      asked: v.exactOptional(list(v.picklist(FIELDS), FIELDS.length)),
      moves: v.exactOptional(list(move, 40)),
      turnsOn: v.nullable(number(0, 1_000)),
      afterFinish: v.boolean(),
    }),
  ),
  seats: list(
    v.strictObject({
      id,
      seq,
      at: moment,
      open: list(number(0, 12)),
      papers: number(0, 1_000),
      degreesToGo: v.nullable(number(0, 360)),
      takenFrom: v.nullable(v.picklist(['tenon-shoulder', 'rim'])),
    }),
  ),
  closing: v.nullable(
    v.strictObject({
      at: moment,
      outcome: v.picklist(['kept', 'second', 'scrapped']),
      scrapReason: v.nullable(v.picklist(['thread', 'wood', 'turning', 'other'])),
      hardener: v.picklist(['none', 'thin-ca', 'sealer', 'wax']),
      hardenerBeforePass: v.nullable(whole(1, 1_000)),
      outsideTurned: v.nullable(v.picklist(['before', 'after'])),
      note,
    }),
  ),
  lidChecks: list(
    v.strictObject({ id, at: moment, on: day, lid: v.picklist(['free', 'stiff', 'stuck', 'loose']) }),
  ),
  photos: list(
    v.strictObject({ id, at: moment, of: v.picklist(['set-up', 'recess', 'tenon', 'fit', 'box']) }),
  ),
});

const rig = v.strictObject({
  name,
  cutterRadius: v.nullable(length),
  teeth: v.nullable(whole(1, 1_000)),
  tipFlat: v.nullable(length),
  tipFlatFrom: v.nullable(v.picklist(['told', 'scrap-pair'])),
  aheadOfTooth: v.nullable(length),
  grip: v.nullable(v.picklist(['collet', 'draw-bar'])),
  travelPerTurn: v.nullable(length),
  marksPerTurn: v.nullable(number(1, 100_000)),
  slideTravel: v.nullable(length),
  recessDial: v.nullable(v.picklist(['same', 'other'])),
  jigSide: v.nullable(v.picklist(['front', 'behind'])),
  banjos: v.nullable(v.picklist([1, 2])),
  chucks: v.nullable(whole(0, 1_000)),
  hand: v.picklist(['right', 'left']),
  pitch: v.nullable(pitch),
});

const bodies = {
  box,
  rig,
  procedure,
  instrument: v.strictObject({ name, insideMinusOutside: v.nullable(signedLength) }),
  wood: v.strictObject({ name, group: v.picklist(['hardwood', 'softwood', 'tropical']), note }),
  experiment: v.pipe(
    v.strictObject({
      step: id,
      sentence: name,
      measure: v.exactOptional(
        v.variant('kind', [
          v.strictObject({
            kind: v.literal('reading'),
            step: id,
            sentence: name,
            of: v.picklist(['angle', 'turns']),
          }),
          v.strictObject({ kind: v.literal('time') }),
          v.strictObject({ kind: v.literal('fit') }),
        ]),
      ),
      lots: list(v.picklist(['with', 'without']), MOST_ITEMS.lots),
      drawnOn: day,
      boxes: list(id, MOST_ITEMS.lots),
      givenUp: v.boolean(),
    }),
    v.check(
      ({ lots, boxes }) => boxes.length <= lots.length && new Set(boxes).size === boxes.length,
      'one lot a box',
    ),
  ),
} satisfies { readonly [K in Kind]: v.GenericSchema<unknown, Bodies[K]> };

const record = <const K extends Kind, S extends v.GenericSchema>(kind: K, body: S) =>
  v.strictObject({
    logId: id,
    kind: v.literal(kind),
    id,
    rev: whole(1, GREATEST.rev),
    writer: id,
    savedAt: moment,
    body: v.nullable(body),
  });

const anyRecord = v.variant('kind', [
  record('box', bodies.box),
  record('rig', bodies.rig),
  record('procedure', bodies.procedure),
  record('instrument', bodies.instrument),
  record('wood', bodies.wood),
  record('experiment', bodies.experiment),
]) satisfies v.GenericSchema<unknown, Stored>;

/** Any of them may be missing: an older version had fewer. */
const settings = v.partial(
  v.strictObject({
    unit: v.picklist(['in', 'mm']),
    distanceCm: number(10, 1_000),
    pxPerMm: v.nullable(number(0.5, 100)),
    look: v.picklist(['auto', 'day', 'night']),
    sound: v.boolean(),
    vibration: v.boolean(),
    speech: v.boolean(),
    letters: v.boolean(),
    clock: v.boolean(),
  } satisfies { readonly [K in keyof Settings]: v.GenericSchema<unknown, Settings[K]> }),
);

const check = <S extends v.GenericSchema>(schema: S, input: unknown): Result<v.InferOutput<S>, Misfit> => {
  const answer = v.safeParse(schema, input, { abortEarly: true });
  if (answer.success) return ok(answer.output);
  const [issue] = answer.issues;
  return refuse({
    at: v.getDotPath(issue) ?? '',
    expected: issue.expected ?? issue.requirement?.toString() ?? issue.type,
    found: issue.received.slice(0, 100),
  });
};

/** A record from a file: every field there and in bounds, and no other; or the first misfit. */
export const checkRecord = (input: unknown): Result<Stored, Misfit> => check(anyRecord, input);

/** A set-up event from a file. A kind that this version does not know passes with a sound stamp, and its run becomes read-only. */
export const checkEvent = (input: unknown): Result<SetUpEvent | ForeignEvent, Misfit> => {
  const kind = typeof input === 'object' && input !== null && 'kind' in input ? input.kind : undefined;
  return typeof kind === 'string' && !isKnownKind(kind)
    ? check(foreignEvent, input)
    : check(knownEvent, input);
};

/** A procedure from a file, where it stands by itself. */
export const checkProcedure = (input: unknown): Result<Procedure, Misfit> => check(procedure, input);

/** The way of showing things, from a file. */
export const checkSettings = (input: unknown): Result<Partial<Settings>, Misfit> =>
  check(settings, input) as Result<Partial<Settings>, Misfit>;
