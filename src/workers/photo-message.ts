/** A photo made small, upright and free of metadata, with a thumbnail; both JPEG. */
export interface ShrunkPhoto {
  readonly type: 'image/jpeg';
  readonly width: number;
  readonly height: number;
  readonly bytes: ArrayBuffer;
  readonly sha256: string;
  readonly thumbnail: ArrayBuffer;
}

/** `too-big`: more bytes or pixels than a phone can decode. `no-worker`: this browser cannot run the worker. */
export type PhotoProblem = 'not-a-picture' | 'too-big' | 'no-worker';

export type PhotoAnswer =
  | { readonly ok: true; readonly value: ShrunkPhoto }
  | { readonly ok: false; readonly error: PhotoProblem };
