import type { BoxOnHand } from '../../../app/boxes.ts';
import { givenFor } from '../../../app/calculated.ts';
import type { Given } from '../../../domain/box/given.ts';
import { useLive } from '../../parts/use-live.ts';

/** Rig, caliper and woods of the box on hand; undefined until they are read. */
export const useGiven = ({ box }: Pick<BoxOnHand, 'box'>): Given | undefined =>
  useLive(load, ['rig', 'instrument', 'wood'], box.rigId, box.instrumentId).value;

const load = (rigId: string, instrumentId: string | null) => givenFor({ rigId, instrumentId });
