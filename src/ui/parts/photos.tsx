import './field.css';
import './photos.css';
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { keepPhoto, pictureOf, putPhotoBack, removePhoto } from '../../app/photos.ts';
import type { PhotoRef } from '../../domain/box/records.ts';
import { PhotoView } from './photo-view.tsx';
import { photoProblem, photoWords as words } from './photo-words.ts';
import { useAct } from './use-act.ts';

interface Props {
  readonly boxId: string;
  readonly photos: readonly PhotoRef[];
  /** What the next photo shows; without it, photos can be looked at and none added. */
  readonly of?: PhotoRef['of'];
}

/** The photos of a box as small pictures, one tap from the whole; and two ways to add one. */
export const Photos = ({ boxId, photos, of }: Props) => {
  const problem = useSignal<string | null>(null);
  const open = useSignal<PhotoRef | null>(null);
  const removed = useSignal<PhotoRef | null>(null);

  const { busy, act: take } = useAct(async (_, input: HTMLInputElement, what: PhotoRef['of']) => {
    const file = input.files?.[0];
    if (!file) return;
    problem.value = null;
    const ended = await keepPhoto(boxId, what, file);
    problem.value = ended === 'kept' || ended === 'not-saved' ? null : photoProblem[ended];
    // The same file may be picked again.
    input.value = '';
  });
  const remove = async (photo: PhotoRef) => {
    open.value = null;
    if (await removePhoto(boxId, photo.id)) removed.value = photo;
  };
  const putBack = async () => {
    if (removed.value && (await putPhotoBack(boxId, removed.value))) removed.value = null;
  };
  const altOf = (photo: PhotoRef) => words.alt(photo.of, photos.indexOf(photo) + 1, photos.length);

  return (
    <section class="photos" aria-label={words.photos}>
      {photos.length > 0 && (
        <ul>
          {photos.map((photo) => (
            <li key={photo.id}>
              <button
                type="button"
                aria-label={words.open(altOf(photo))}
                onClick={() => {
                  open.value = photo;
                }}
              >
                <Picture id={photo.id} size="thumbnail" alt={altOf(photo)} />
              </button>
            </li>
          ))}
        </ul>
      )}
      {removed.value && (
        <p class="row" role="status">
          {words.removed}
          <button type="button" onClick={putBack}>
            {words.putBack}
          </button>
        </p>
      )}
      {of && (
        <div class="row">
          <FileButton word={words.camera} camera busy={busy} onPick={(input) => take(input, of)} />
          <FileButton word={words.library} busy={busy} onPick={(input) => take(input, of)} />
        </div>
      )}
      <p role="status" class={busy ? '' : 'hidden-words'}>
        {busy ? words.working : ''}
      </p>
      {problem.value && (
        <p role="alert" class="refusal">
          {problem.value}
        </p>
      )}
      {open.value && (
        <PhotoView
          onClose={() => {
            open.value = null;
          }}
          onRemove={() => open.value && remove(open.value)}
        >
          <Picture id={open.value.id} size="full" alt={altOf(open.value)} />
        </PhotoView>
      )}
    </section>
  );
};

interface FileButtonProps {
  readonly word: string;
  readonly camera?: boolean;
  readonly busy: boolean;
  readonly onPick: (input: HTMLInputElement) => void;
}

/** A file input as large as a button: reachable by key, name and touch without a script in between. */
const FileButton = ({ word, camera, busy, onPick }: FileButtonProps) => (
  <label class="act file">
    {word}
    <input
      type="file"
      class="unseen"
      accept="image/*"
      disabled={busy}
      {...(camera ? { capture: 'environment' as const } : {})}
      onChange={(event) => onPick(event.currentTarget)}
    />
  </label>
);

/** One picture out of the store; its object URL lives as long as it is on screen. */
const Picture = ({ id, size, alt }: { id: string; size: 'thumbnail' | 'full'; alt: string }) => {
  const url = useSignal<string | null>(null);
  const missing = useSignal(false);
  useEffect(() => {
    let gone = false;
    let made: string | null = null;
    pictureOf(id, size).then(
      (blob) => {
        if (gone) return;
        missing.value = blob === null;
        made = blob && URL.createObjectURL(blob);
        url.value = made;
      },
      () => {
        missing.value = true;
      },
    );
    return () => {
      gone = true;
      if (made) URL.revokeObjectURL(made);
    };
  }, [id, size]);

  if (missing.value) return <span class="soft">{words.missing}</span>;
  return url.value ? <img src={url.value} alt={alt} /> : <span aria-busy="true" class="blank" />;
};
