/** What may be picked, and whether straight from the camera. */
interface Picking {
  readonly accept: string;
  readonly camera?: boolean;
}

/**
 * Lets the user pick one file; null when they cancel. Call it from a tap. Chrome before 113 does not report a
 * cancelled dialog, and then this never settles, so nothing may wait for it.
 */
export const pickFile = ({ accept, camera = false }: Picking): Promise<File | null> =>
  new Promise((resolve) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = accept;
    if (camera) input.setAttribute('capture', 'environment');
    input.hidden = true;
    const finish = (): void => {
      input.remove();
      resolve(input.files?.[0] ?? null);
    };
    input.addEventListener('change', finish, { once: true });
    input.addEventListener('cancel', finish, { once: true });
    // Safari drops the answer of an input that is not in the page.
    document.body.append(input);
    input.click();
  });

/** Long enough for any browser to have read the file. */
const DOWNLOAD_TAKEN_MS = 60_000;

/** Saves a file to the downloads. */
export const download = (file: Blob, name: string): void => {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), DOWNLOAD_TAKEN_MS);
};
