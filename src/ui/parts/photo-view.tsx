import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { photoWords as words } from './photo-words.ts';

interface Props {
  readonly onClose: () => void;
  readonly onRemove: () => void;
  readonly children: ComponentChildren;
}

/** One photo over the whole screen, until it is closed or Escape is pressed. */
export const PhotoView = ({ onClose, onRemove, children }: Props) => {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} class="photo-view" aria-label={words.photos} onClose={onClose}>
      {children}
      <button type="button" class="main" onClick={onClose}>
        {words.close}
      </button>
      <button type="button" class="plain" onClick={onRemove}>
        {words.remove}
      </button>
    </dialog>
  );
};
