import type { Box, Plan } from '../domain/box/records.ts';
import { today } from '../platform/clock.ts';
import { addBox } from '../storage/add-box.ts';
import { announce } from './changes.ts';
import { attempt } from './failure.ts';
import { FIRST_RIG_ID } from './rigs.ts';
import { author, logId } from './session.ts';

const DEFAULT_PROCEDURE_ID = 'board-and-cone';

/** Puts a new box on the bench under a new id, with the rig and procedure of another; durable when it resolves to true. */
export const startBox = async (
  id: string,
  plan: Plan,
  like?: Box,
  name = '',
  rigId = like?.rigId ?? FIRST_RIG_ID,
): Promise<boolean> =>
  (await attempt(
    'box',
    async () => {
      await addBox(logId.value, id, author(), {
        name,
        startedOn: today(),
        rigId,
        procedureId: like?.procedureId ?? DEFAULT_PROCEDURE_ID,
        plan,
        bore: [],
        tenon: [],
        instrumentId: like?.instrumentId ?? null,
        setUps: [],
        cuts: [],
        trials: [],
        seats: [],
        closing: null,
        lidChecks: [],
        photos: [],
      });
      announce('box');
      return true;
    },
    id,
  )) ?? false;
