import type { Diagnosis } from '../domain/diagnosis/diagnosis.ts';
import type { DiagnosisView } from '../domain/diagnosis/view.ts';
import type { Result } from '../domain/result.ts';
import type { DiagnosisAnswer, DiagnosisQuestion } from '../workers/diagnosis-message.ts';

/** Kept for the next question: a worker that has answered once answers the next several times as fast. */
let worker: Worker | null = null;
let asked = 0;

const startWorker = (): Worker =>
  new Worker(new URL('../workers/diagnosis.ts', import.meta.url), { type: 'module' });

const askWorker = (to: Worker, question: DiagnosisQuestion): Promise<Result<Diagnosis>> =>
  new Promise((resolve, reject) => {
    const stop = new AbortController();
    const { signal } = stop;
    to.addEventListener(
      'message',
      ({ data }: MessageEvent<DiagnosisAnswer>) => {
        if (data.id !== question.id) return;
        stop.abort();
        resolve(data.diagnosis);
      },
      { signal },
    );
    to.addEventListener(
      'error',
      () => {
        stop.abort();
        reject(new Error('no worker'));
      },
      { signal },
    );
    to.postMessage(question);
  });

/** The diagnosis of a view, worked out beside the page: a tap's frame never waits for it. Rejects when no worker could be started. */
export const diagnoseApart = async (view: DiagnosisView): Promise<Result<Diagnosis>> => {
  try {
    worker ??= startWorker();
    return await askWorker(worker, { id: ++asked, view });
  } catch (error) {
    worker?.terminate();
    worker = null;
    throw error;
  }
};
