import type { FindingsAnswer, FindingsQuestion, Found, SheetQuestion } from '../workers/findings-message.ts';

export interface Asked<T> {
  readonly answer: Promise<T>;
  readonly cancel: () => void;
}

/** Asks a worker that is ended after its answer. Rejects with the reason when the store failed, or when no worker could be started. */
const ask = (
  question: FindingsQuestion | SheetQuestion,
  { onProgress, onLast }: Partial<Meanwhile> = {},
): Asked<FindingsAnswer> => {
  let worker: Worker | undefined;
  const answer = new Promise<FindingsAnswer>((resolve, reject) => {
    worker = new Worker(new URL('../workers/findings.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<FindingsAnswer>) => {
      if (data.kind === 'progress') onProgress?.(data.share);
      else if (data.kind === 'last') onLast?.(data.found, data.at);
      else if (data.kind === 'failed') reject(new Error(data.reason));
      else resolve(data);
    });
    worker.addEventListener('error', () => reject(new Error('no worker')));
    worker.postMessage(question);
  }).finally(() => worker?.terminate());
  return { answer, cancel: () => worker?.terminate() };
};

export interface Meanwhile {
  readonly onProgress: (share: number) => void;
  /** Called with the last answer and its time; it may be stale. */
  readonly onLast: (found: Found, at: number) => void;
}

/** Resolves to null when the answer that the page has (`known`, or the one given to `onLast`) is still current. */
export const askForFindings = (
  question: Omit<FindingsQuestion, 'want'>,
  meanwhile: Meanwhile,
): Asked<Found | null> => {
  const { answer, cancel } = ask({ ...question, want: 'findings' }, meanwhile);
  return { answer: answer.then((given) => (given.kind === 'found' ? given.found : null)), cancel };
};

/** The rows, or the description of their columns, as CSV. */
export const askForSheet = async (question: SheetQuestion): Promise<string> => {
  const given = await ask(question).answer;
  return given.kind === 'sheet' ? given.text : '';
};
