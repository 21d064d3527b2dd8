import fc from 'fast-check';
import type { Given } from '../../../src/domain/box/given.ts';
import type { Box, Cut, Rig, Trial } from '../../../src/domain/box/records.ts';
import { nextSeq } from '../../../src/domain/box/sequence.ts';
import { UNKNOWN_RIG } from '../../../src/domain/box/unknown-rig.ts';
import type { Part } from '../../../src/domain/setup/events.ts';
import { length, plannedBox } from './planned-box.ts';

export const RIG: Rig = { ...UNKNOWN_RIG, cutterRadius: length(12.7), tipFlat: length(0.2) };

/** A workshop whose caliper's inside jaws read this much over. */
export const givenWith = (offset: number | null, rig = RIG): Given => ({
  rig,
  caliper: { name: 'Caliper', insideMinusOutside: offset === null ? null : length(offset) },
  ownWoods: new Map(),
});

/** One entry more, as the app adds it: with the next place in the sequence, whatever the clock says. */
type Entry = (box: Box, at: number) => Box;

export const bored =
  (along: number, more: Partial<Box['bore'][number]> = {}): Entry =>
  (box) => {
    const seq = nextSeq(box);
    const reading = { where: 'mouth', along: length(along), across: null, overCrests: false } as const;
    return { ...box, bore: [...box.bore, { ...reading, id: `b${seq}`, seq, ...more }] };
  };

export const turned =
  (diameter: number, more: Partial<Box['tenon'][number]> = {}): Entry =>
  (box) => {
    const seq = nextSeq(box);
    const reading = { where: 'end', diameter: length(diameter), overCrests: false } as const;
    return { ...box, tenon: [...box.tenon, { ...reading, id: `t${seq}`, seq, ...more }] };
  };

export const cut =
  (part: Part, depth: number, more: Partial<Cut> = {}): Entry =>
  (box, at) => {
    const seq = nextSeq(box);
    const entry = { part, runId: null, depth: length(depth), correction: false, at };
    return { ...box, cuts: [...box.cuts, { ...entry, id: `c${seq}`, seq, ...more }] };
  };

export const tried =
  (more: Partial<Trial> = {}): Entry =>
  (box, at) => {
    const seq = nextSeq(box);
    const entry = {
      right: false,
      goingOn: ['stiff-all-the-way'],
      seated: null,
      threads: [],
      marks: null,
    } as const;
    const rest = { endPlay: null, turnsOn: null, afterFinish: false, at };
    return { ...box, trials: [...box.trials, { ...entry, ...rest, id: `f${seq}`, seq, ...more }] };
  };

export const setUp =
  (runId: string, part: Part): Entry =>
  (box) => ({ ...box, setUps: [...box.setUps, { runId, part, seq: nextSeq(box) }] });

/** The depth of the newest pass put right. */
export const corrected =
  (by: number): Entry =>
  (box) => ({
    ...box,
    cuts: box.cuts.map((each, i) =>
      i === box.cuts.length - 1 ? { ...each, depth: length(each.depth.mm + by) } : each,
    ),
  });

/** The newest pass taken back. */
export const takenBack: Entry = (box) => ({ ...box, cuts: box.cuts.slice(0, -1) });

/** A box from what happened to it, one after another; the clock goes on unless it is told otherwise. */
export const boxOf = (entries: readonly Entry[], clock: (i: number) => number = (i) => i): Box =>
  entries.reduce<Box>((box, entry, i) => entry(box, clock(i)), plannedBox());

const within = (from: number, to: number) => fc.double({ min: from, max: to, noNaN: true });
const overCrests = fc.boolean().map((over) => ({ overCrests: over }));

const anyEntry: fc.Arbitrary<Entry> = fc.oneof(
  fc
    .record({ along: within(49.5, 50.5), relief: fc.boolean(), more: overCrests })
    .map(({ along, relief, more }) => bored(along, { ...more, where: relief ? 'relief' : 'mouth' })),
  fc
    .record({ diameter: within(51.5, 53.5), shoulder: fc.boolean(), more: overCrests })
    .map(({ diameter, shoulder, more }) =>
      turned(diameter, { ...more, where: shoulder ? 'shoulder' : 'end' }),
    ),
  fc
    .record({ part: fc.constantFrom<Part>('recess', 'tenon'), depth: within(0.8, 1.7) })
    .map(({ part, depth }) => cut(part, depth)),
  fc.constant(tried()),
  within(-0.2, 0.2).map(corrected),
  fc.constant(takenBack),
);

const anyEntries = fc.array(anyEntry, { maxLength: 7 });
const cutBoth = [cut('recess', 1.5), cut('tenon', 1.6)];

/** Boxes with pieces turned again, readings over crests, corrections and passes taken back, by a clock that jumps; tried at the end. */
export const anyTriedBox: fc.Arbitrary<Box> = fc
  .record({
    first: anyEntries,
    second: anyEntries,
    last: fc.array(anyEntry, { maxLength: 2 }),
    clocks: fc.infiniteStream(fc.integer({ min: 0, max: 2e12 })),
  })
  .map(({ first, second, last, clocks }) => {
    const entries = [...first, bored(50), turned(52.6), ...second, ...cutBoth, ...last, tried()];
    return boxOf(entries, () => clocks.next().value);
  });

/** The jaws compared or not, and a rig that knows its cutter or not. */
export const anyGiven: fc.Arbitrary<Given> = fc
  .record({ offset: fc.option(within(-0.2, 0.2)), isKnown: fc.boolean() })
  .map(({ offset, isKnown }) => givenWith(offset, isKnown ? RIG : UNKNOWN_RIG));
