// The findings, in a worker: a large log takes a while.
import { disconnect } from '../storage/connection.ts';
import { asFailure } from '../storage/failure.ts';
import { answerTo } from './findings-answer.ts';
import type { FindingsAnswer, FindingsQuestion, SheetQuestion } from './findings-message.ts';

declare const self: DedicatedWorkerGlobalScope;

const answer = (message: FindingsAnswer): void => self.postMessage(message);

self.addEventListener('message', async ({ data }: MessageEvent<FindingsQuestion | SheetQuestion>) => {
  try {
    answer(await answerTo(data, (share) => answer({ kind: 'progress', share })));
  } catch (error) {
    answer({ kind: 'failed', reason: asFailure(error).reason });
  } finally {
    await disconnect().catch(() => {});
  }
});
