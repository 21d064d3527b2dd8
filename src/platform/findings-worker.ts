import type { Findings } from '../domain/findings/findings.ts';
import type { FindingsAnswer, FindingsQuestion } from '../workers/findings-message.ts';

export interface Asked {
  readonly answer: Promise<Findings>;
  readonly cancel: () => void;
}

/** Asks the findings worker; it lives as long as the question. Rejects with the reason when the store failed, or when no worker could be started. */
export const askForFindings = (question: FindingsQuestion, onProgress: (share: number) => void): Asked => {
  let worker: Worker | undefined;
  const answer = new Promise<Findings>((resolve, reject) => {
    worker = new Worker(new URL('../workers/findings.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<FindingsAnswer>) => {
      if (data.kind === 'progress') onProgress(data.share);
      else if (data.kind === 'found') resolve(data.findings);
      else reject(new Error(data.reason));
    });
    worker.addEventListener('error', () => reject(new Error('no worker')));
    worker.postMessage(question);
  }).finally(() => worker?.terminate());
  return { answer, cancel: () => worker?.terminate() };
};
