/** A photo made small, upright and free of metadata, with a thumbnail; both JPEG. */
export interface ShrunkPhoto {
  readonly type: 'image/jpeg';
  readonly width: number;
  readonly height: number;
  readonly bytes: ArrayBuffer;
  readonly sha256: string;
  readonly thumbnail: ArrayBuffer;
}

/** `too-big`: more bytes or picture than a phone can unpack. `no-worker`: this browser cannot run the shrinker at all. */
export type PhotoProblem = 'not-a-picture' | 'too-big' | 'no-worker';

export type PhotoAnswer =
  | { readonly ok: true; readonly value: ShrunkPhoto }
  | { readonly ok: false; readonly error: PhotoProblem };
