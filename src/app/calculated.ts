import { type CalculatedBox, calculate } from '../domain/box/calculate.ts';
import type { Given } from '../domain/box/given.ts';
import type { Box } from '../domain/box/records.ts';
import type { Result } from '../domain/result.ts';
import { caliperOf } from './instruments.ts';
import { listBodies } from './keep.ts';
import { rigById } from './rigs.ts';

/** Reads what a box is worked out from beside its own record. */
export const givenFor = async (box: Pick<Box, 'rigId' | 'instrumentId'>): Promise<Given> => {
  const woods = await listBodies('wood');
  return {
    rig: await rigById(box.rigId),
    caliper: (await caliperOf(box)).instrument,
    ownWoods: new Map(woods.map(({ id, body }) => [id, body] as const)),
  };
};

/** Everything that follows from a box's record and what is stored beside it. */
export const calculateBox = async (box: Box): Promise<Result<CalculatedBox>> =>
  calculate(box, await givenFor(box));
