import { caliperOfBox, UNKNOWN_CALIPER } from '../domain/box/given.ts';
import type { Box, Instrument } from '../domain/box/records.ts';
import type { Length } from '../domain/units/length.ts';
import type { BoxOnHand } from './boxes.ts';
import { attempt } from './failure.ts';
import { listBodies, put } from './keep.ts';

/** The id of the caliper that a log gets when its offset is first told. */
const FIRST_CALIPER_ID = 'caliper-1';

interface InstrumentOnHand {
  readonly id: string;
  readonly instrument: Instrument;
}

/** The caliper of a box: its own, else the first of the log, else one about which nothing is known. */
export const caliperOf = async (box: Pick<Box, 'instrumentId'>): Promise<InstrumentOnHand> => {
  const calipers = new Map((await listBodies('instrument')).map(({ id, body }) => [id, body] as const));
  const [id, instrument] = caliperOfBox(calipers, box) ?? [FIRST_CALIPER_ID, UNKNOWN_CALIPER];
  return { id, instrument };
};

/** Keeps what a ring showed of the box's caliper, or forgets it; both records are on disk when it resolves to true. */
export const keepOffset = async ({ id, box }: BoxOnHand, offset: Length | null): Promise<boolean> =>
  (await attempt(
    'instrument',
    async () => {
      const caliper = await caliperOf(box);
      await put('instrument', caliper.id, (now) => ({
        ...(now ?? caliper.instrument),
        insideMinusOutside: offset,
      }));
      if (box.instrumentId === caliper.id) return true;
      return put('box', id, (now) => now && { ...now, instrumentId: caliper.id });
    },
    id,
  )) ?? false;
