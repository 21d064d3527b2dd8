import { boxById, withRuns } from './boxes.ts';
import { woodNames } from './wood-names.ts';

/** A box with its set-ups and what its woods are called; without `shown` when there is no such box. */
export const boxStory = async (id: string) => ({
  shown: await withRuns(await boxById(id)),
  nameOf: await woodNames(),
});
