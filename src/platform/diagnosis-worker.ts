import type { Diagnosis } from '../domain/diagnosis/diagnosis.ts';
import type { DiagnosisView } from '../domain/diagnosis/view.ts';
import type { Result } from '../domain/result.ts';
import type { DiagnosisAnswer, DiagnosisQuestion } from '../workers/diagnosis-message.ts';
import { afterNextFrame } from './next-frame.ts';

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

/** Where no worker runs, on the page itself, once what was tapped is drawn. */
const onPage = async (view: DiagnosisView): Promise<Result<Diagnosis>> => {
  const { diagnose } = await import('../domain/diagnosis/diagnose.ts');
  await new Promise<void>(afterNextFrame);
  return diagnose(view);
};

/** The diagnosis of a view, worked out beside the page: a tap's frame never waits for it. */
export const diagnoseApart = async (view: DiagnosisView): Promise<Result<Diagnosis>> => {
  try {
    worker ??= startWorker();
    return await askWorker(worker, { id: ++asked, view });
  } catch {
    worker?.terminate();
    worker = null;
    return onPage(view);
  }
};
