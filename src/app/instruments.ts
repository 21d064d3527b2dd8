import { caliperOfBox, UNKNOWN_CALIPER } from '../domain/box/given.ts';
import type { Box, Instrument } from '../domain/box/records.ts';
import type { Length } from '../domain/units/length.ts';
import { changeRecord, listRecords } from '../storage/records.ts';
import { type BoxOnHand, changeBox } from './boxes.ts';
import { announce } from './changes.ts';
import { attempt } from './failure.ts';
import { author, logId } from './session.ts';

/** The id of the caliper that a log gets when its offset is first told. */
const FIRST_CALIPER_ID = 'caliper-1';

interface InstrumentOnHand {
  readonly id: string;
  readonly instrument: Instrument;
}

/** The caliper of a box: its own, else the first of the log, else one about which nothing is known. */
export const caliperOf = async (box: Pick<Box, 'instrumentId'>): Promise<InstrumentOnHand> => {
  const found = await listRecords(logId.value, 'instrument');
  const calipers = new Map(found.flatMap(({ id, body }) => (body ? [[id, body] as const] : [])));
  const [id, instrument] = caliperOfBox(calipers, box) ?? [FIRST_CALIPER_ID, UNKNOWN_CALIPER];
  return { id, instrument };
};

/** Keeps what a ring told of the box's caliper, or forgets it; both records are on disk when it resolves to true. */
export const keepOffset = async ({ id, box }: BoxOnHand, offset: Length | null): Promise<boolean> => {
  const caliper = await caliperOf(box);
  const saved = await attempt(() =>
    changeRecord(logId.value, 'instrument', caliper.id, author(), (now) => ({
      ...(now ?? caliper.instrument),
      insideMinusOutside: offset,
    })),
  );
  if (saved) announce('instrument');
  return (
    saved !== undefined &&
    (box.instrumentId === caliper.id ||
      (await changeBox(id, (now) => ({ ...now, instrumentId: caliper.id }))))
  );
};
