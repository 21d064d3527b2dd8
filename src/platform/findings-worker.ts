import type { FindingsAnswer, FindingsQuestion, Found, SheetQuestion } from '../workers/findings-message.ts';

export interface Asked<T> {
  readonly answer: Promise<T>;
  readonly cancel: () => void;
}

/** A worker that lives as long as the question. Rejects with the reason when the store failed, or when no worker could be started. */
const ask = (
  question: FindingsQuestion | SheetQuestion,
  onProgress: (share: number) => void,
): Asked<FindingsAnswer> => {
  let worker: Worker | undefined;
  const answer = new Promise<FindingsAnswer>((resolve, reject) => {
    worker = new Worker(new URL('../workers/findings.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<FindingsAnswer>) => {
      if (data.kind === 'progress') onProgress(data.share);
      else if (data.kind === 'failed') reject(new Error(data.reason));
      else resolve(data);
    });
    worker.addEventListener('error', () => reject(new Error('no worker')));
    worker.postMessage(question);
  }).finally(() => worker?.terminate());
  return { answer, cancel: () => worker?.terminate() };
};

/** Null when what the asker has already still holds. */
export const askForFindings = (
  question: Omit<FindingsQuestion, 'want'>,
  onProgress: (share: number) => void,
): Asked<Found | null> => {
  const { answer, cancel } = ask({ ...question, want: 'findings' }, onProgress);
  return { answer: answer.then((given) => (given.kind === 'found' ? given.found : null)), cancel };
};

/** The rows, or what their columns hold, as CSV. */
export const askForSheet = async (question: SheetQuestion): Promise<string> => {
  const given = await ask(question, () => {}).answer;
  return given.kind === 'sheet' ? given.text : '';
};
