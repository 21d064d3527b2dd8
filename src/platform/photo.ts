import { type Result, refuse } from '../domain/result.ts';
import type { PhotoAnswer, PhotoProblem, ShrunkPhoto } from '../workers/photo-message.ts';

/** Shrinks a picked or taken photo in a worker that lives as long as the work. */
export const shrinkPhoto = (file: Blob): Promise<Result<ShrunkPhoto, PhotoProblem>> => {
  if (typeof Worker === 'undefined' || typeof OffscreenCanvas === 'undefined')
    return Promise.resolve(refuse('no-worker'));
  const worker = new Worker(new URL('../workers/photo.ts', import.meta.url), { type: 'module' });
  return new Promise<PhotoAnswer>((resolve) => {
    worker.addEventListener('message', (event: MessageEvent<PhotoAnswer>) => resolve(event.data));
    worker.addEventListener('error', () => resolve(refuse('no-worker')));
    worker.postMessage(file);
  }).finally(() => worker.terminate());
};
