import { download } from './files.ts';

export type Shared = 'shared' | 'left' | 'downloaded';

const canShare = (file: File): boolean => navigator.canShare?.({ files: [file] }) ?? false;

/** Shares a file with another app, or downloads it where sharing is not possible. Call it from a tap, with a file made before. */
export const shareOrDownload = async (file: File): Promise<Shared> => {
  if (canShare(file)) {
    try {
      await navigator.share({ files: [file], title: file.name });
      return 'shared';
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return 'left';
    }
  }
  download(file, file.name);
  return 'downloaded';
};

/** Opens the browser's print dialog for the page on screen. Call it from a tap. */
export const printPage = (): void => globalThis.print();
