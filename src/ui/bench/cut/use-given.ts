import type { BoxOnHand } from '../../../app/boxes.ts';
import { givenFor } from '../../../app/calculated.ts';
import { logId } from '../../../app/session.ts';
import type { Given } from '../../../domain/box/given.ts';
import { useLive } from '../../parts/use-live.ts';

/** Rig, caliper and woods of the box on hand; undefined until they are read. */
export const useGiven = ({ box }: BoxOnHand): Given | undefined =>
  useLive(
    () => givenFor(box),
    ['rig', 'instrument', 'wood', 'log'],
    `${logId.value} ${box.rigId} ${box.instrumentId}`,
  ).value;
