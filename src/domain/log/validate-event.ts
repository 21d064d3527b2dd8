import * as v from 'valibot';
import { type ForeignEvent, isKnownKind, type SetUpEvent } from '../setup/events.ts';
import { GUARDS, LONGEST_SENTENCE, MOVEMENTS, type Procedure } from '../setup/procedure.ts';
import type { Reading } from '../setup/reading.ts';
import { GREATEST, MOST_ITEMS } from './bounds.ts';
import {
  id,
  length,
  list,
  moment,
  name,
  note,
  number,
  part,
  signedLength,
  text,
  whole,
} from './validate-parts.ts';

const step = v.strictObject({
  key: id,
  sentence: text(LONGEST_SENTENCE),
  why: note,
  hold: v.boolean(),
  guards: list(v.picklist(GUARDS)),
  reopenedBy: list(v.picklist(MOVEMENTS)),
  restsOn: list(id),
  everyTime: v.boolean(),
  onlyWithGroove: v.boolean(),
  reading: v.nullable(v.picklist(['gap', 'turns', 'sweep'])),
  drawing: v.nullable(name),
});

export const procedure = v.strictObject({
  name,
  version: whole(1, GREATEST.count),
  steps: list(step, MOST_ITEMS.steps),
}) satisfies v.GenericSchema<unknown, Procedure>;

const reading = v.variant('kind', [
  v.strictObject({
    kind: v.literal('gap'),
    gap: length,
    over: length,
    plane: v.picklist(['lean', 'tilt', 'either']),
  }),
  v.strictObject({ kind: v.literal('turns'), turns: number(0, 10_000) }),
  v.strictObject({
    kind: v.literal('sweep'),
    difference: signedLength,
    radius: length,
    plane: v.picklist(['lean', 'tilt']),
  }),
]) satisfies v.GenericSchema<unknown, Reading>;

const stamped = {
  logId: id,
  runId: id,
  n: whole(1, GREATEST.count),
  writer: id,
  at: moment,
  mono: moment,
  hid: moment,
  session: id,
};

/** An event of a kind this version knows: every field, and no other. */
export const knownEvent = v.variant('kind', [
  v.strictObject({
    ...stamped,
    kind: v.literal('started'),
    boxId: id,
    part,
    procedureId: id,
    procedure,
    inherited: list(v.strictObject({ key: id, since: moment })),
    fromRun: v.nullable(id),
    groove: v.boolean(),
  }),
  v.strictObject({
    ...stamped,
    kind: v.literal('ticked'),
    steps: list(id),
    verdict: v.picklist(['pass', 'fail', 'skip']),
  }),
  v.strictObject({ ...stamped, kind: v.literal('read'), step: id, reading }),
  v.strictObject({
    ...stamped,
    kind: v.literal('moved'),
    what: v.picklist(MOVEMENTS),
    groove: v.exactOptional(v.boolean()),
  }),
  v.strictObject({ ...stamped, kind: v.literal('paused') }),
  v.strictObject({ ...stamped, kind: v.literal('resumed') }),
  v.strictObject({
    ...stamped,
    kind: v.literal('undone'),
    target: v.strictObject({ n: stamped.n, writer: id }),
  }),
  v.strictObject({ ...stamped, kind: v.literal('closed'), how: v.picklist(['cut', 'abandoned']) }),
]) satisfies v.GenericSchema<unknown, SetUpEvent>;

/** An event of a newer version: its stamp must be valid, the rest is stored as it is. */
export const foreignEvent = v.looseObject({
  ...stamped,
  kind: v.pipe(
    name,
    v.check((kind) => !isKnownKind(kind)),
  ),
}) satisfies v.GenericSchema<unknown, ForeignEvent>;
