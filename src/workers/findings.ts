// Computes the findings in a worker, because a large log takes a while.
import { disconnect } from '../storage/connection.ts';
import { asFailure } from '../storage/failure.ts';
import { answerTo, type Meanwhile } from './findings-answer.ts';
import type { FindingsAnswer, FindingsQuestion, SheetQuestion } from './findings-message.ts';

declare const self: DedicatedWorkerGlobalScope;

const answer = (message: FindingsAnswer): void => self.postMessage(message);

const meanwhile: Meanwhile = {
  share: (share) => answer({ kind: 'progress', share }),
  last: (found, at) => answer({ kind: 'last', found, at }),
};

/** How often a lost connection is tried: the store opens late while the page reads a large log. */
const TRIES = 5;

const patiently = async <T>(work: () => Promise<T>, tries = TRIES): Promise<T> => {
  try {
    return await work();
  } catch (error) {
    if (tries <= 1 || asFailure(error).reason !== 'lost') throw error;
    return patiently(work, tries - 1);
  }
};

self.addEventListener('message', async ({ data }: MessageEvent<FindingsQuestion | SheetQuestion>) => {
  try {
    answer(await patiently(() => answerTo(data, self.location.href, meanwhile)));
  } catch (error) {
    answer({ kind: 'failed', reason: asFailure(error).reason });
  } finally {
    await disconnect().catch(() => {});
  }
});
