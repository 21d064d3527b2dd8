import type { Bodies, Box, Instrument, Kind, OwnWood, Rig, Stored } from './records.ts';
import { UNKNOWN_RIG } from './unknown-rig.ts';

export type OwnWoods = ReadonlyMap<string, OwnWood>;

/** What a box is worked out from beside its own record. */
export interface Given {
  readonly rig: Rig;
  readonly caliper: Instrument;
  readonly ownWoods: OwnWoods;
}

/** The rigs, calipers and own woods of a log by their ids, in the order of the ids. */
export interface Workshop {
  readonly rigs: ReadonlyMap<string, Rig>;
  readonly calipers: ReadonlyMap<string, Instrument>;
  readonly ownWoods: OwnWoods;
}

/** A caliper whose jaws were never compared: assumed to agree. */
export const UNKNOWN_CALIPER: Instrument = { name: 'Caliper', insideMinusOutside: null };

/** The caliper of a box with its id: its own, else the first of the log; nothing in a log that has none. */
export const caliperOfBox = (
  calipers: Workshop['calipers'],
  { instrumentId }: Pick<Box, 'instrumentId'>,
): readonly [id: string, caliper: Instrument] | undefined => {
  const own = instrumentId === null ? undefined : calipers.get(instrumentId);
  return own && instrumentId !== null ? [instrumentId, own] : [...calipers][0];
};

/** What is given for a box of this workshop; what is not known is given as unknown. */
export const givenOfBox = (
  { rigs, calipers, ownWoods }: Workshop,
  box: Pick<Box, 'rigId' | 'instrumentId'>,
): Given => ({
  rig: rigs.get(box.rigId) ?? UNKNOWN_RIG,
  caliper: caliperOfBox(calipers, box)?.[1] ?? UNKNOWN_CALIPER,
  ownWoods,
});

/** The workshop that a log's records make; deleted ones left out. */
export const workshopOf = (records: readonly Stored[]): Workshop => {
  const of = <K extends Kind>(kind: K): ReadonlyMap<string, Bodies[K]> =>
    new Map(
      records
        .filter((record): record is Stored<K> => record.kind === kind)
        .flatMap(({ id, body }) => (body ? [[id, body] as const] : []))
        .sort(([a], [b]) => (a < b ? -1 : 1)),
    );
  return { rigs: of('rig'), calipers: of('instrument'), ownWoods: of('wood') };
};
