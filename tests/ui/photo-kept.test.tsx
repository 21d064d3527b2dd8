// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, fireEvent, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { replacedVersions } from '../../src/app/superseded.ts';
import { shrinkPhoto } from '../../src/platform/photo.ts';
import { getPhoto, getThumbnail } from '../../src/storage/photos.ts';
import type { StageProps } from '../../src/ui/bench/stage-props.ts';
import { Photos } from '../../src/ui/parts/photos.tsx';
import { boxOf, newBox, show } from './cut-box-on-bench.tsx';

// The shrinking itself wants a real canvas and is tested in the browser.
vi.mock('../../src/platform/photo.ts', () => ({ shrinkPhoto: vi.fn() }));

const bytes = (...values: number[]) => new Uint8Array(values).buffer;
const shrunk = () => ({
  ok: true as const,
  value: {
    type: 'image/jpeg' as const,
    width: 2,
    height: 1,
    bytes: bytes(1, 2, 3),
    sha256: 'abc',
    thumbnail: bytes(9),
  },
});
const BoxPhotos = ({ onHand }: StageProps) => (
  <Photos boxId={onHand.id} photos={onHand.box.photos} of="box" />
);
const pick = async (label: string) =>
  fireEvent.change(await screen.findByLabelText(label), {
    target: { files: [new File(['x'], 'x.jpg', { type: 'image/jpeg' })] },
  });

let id = '';
const made: string[] = [];
const revoked: string[] = [];
beforeEach(async () => {
  made.length = 0;
  revoked.length = 0;
  URL.createObjectURL = () => {
    const url = `blob:test/${made.length}`;
    made.push(url);
    return url;
  };
  URL.revokeObjectURL = (url) => revoked.push(url);
  vi.mocked(shrinkPhoto).mockReset();
  id = await newBox();
});
afterEach(cleanup);

describe('photos', () => {
  it('come from the camera or the library', async () => {
    await show(id, BoxPhotos);
    expect((await screen.findByLabelText('Take a photo')).getAttribute('capture')).toBe('environment');
    expect(screen.getByLabelText('Choose a photo').hasAttribute('capture')).toBe(false);
  });

  it('are kept with the box, shown small, and every object URL is given back', async () => {
    vi.mocked(shrinkPhoto).mockResolvedValue(shrunk());
    await show(id, BoxPhotos);
    await pick('Choose a photo');
    expect(await screen.findByRole('img', { name: 'Photo 1 of 1, of the box' })).toBeTruthy();
    const [photo] = (await boxOf(id)).photos;
    expect(photo?.of).toBe('box');
    const full = await getPhoto('mine', photo?.id ?? '');
    expect([...new Uint8Array(full?.bytes ?? bytes())]).toEqual([1, 2, 3]);
    const thumbnail = await getThumbnail('mine', photo?.id ?? '');
    expect([...new Uint8Array(thumbnail?.bytes ?? bytes())]).toEqual([9]);
    cleanup();
    expect(made.length).toBeGreaterThan(0);
    await waitFor(() => expect(revoked).toEqual(made));
  });

  it('open to the whole picture and close again', async () => {
    vi.mocked(shrinkPhoto).mockResolvedValue(shrunk());
    await show(id, BoxPhotos);
    await pick('Take a photo');
    fireEvent.click(await screen.findByRole('button', { name: 'Look at it: Photo 1 of 1, of the box' }));
    expect(await screen.findByRole('dialog')).toBeTruthy();
    fireEvent.click(screen.getByRole('button', { name: 'Close' }));
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
  });

  it('one removed comes back to its place; its bytes stay, and the box that showed it can be brought back', async () => {
    vi.mocked(shrinkPhoto).mockResolvedValue(shrunk());
    await show(id, BoxPhotos);
    await pick('Take a photo');
    await screen.findByRole('img', { name: 'Photo 1 of 1, of the box' });
    await pick('Take a photo');
    await screen.findByRole('img', { name: 'Photo 2 of 2, of the box' });
    const before = (await boxOf(id)).photos;

    fireEvent.click(screen.getByRole('button', { name: 'Look at it: Photo 1 of 2, of the box' }));
    fireEvent.click(await screen.findByRole('button', { name: 'Remove this photo' }));
    await screen.findByText('Photo removed.');
    expect((await boxOf(id)).photos).toEqual(before.slice(1));
    expect(await getPhoto('mine', before[0]?.id ?? '')).toBeTruthy();
    expect((await replacedVersions()).map(({ body }) => body)).toMatchObject([{ photos: before }]);

    fireEvent.click(screen.getByRole('button', { name: 'Bring it back' }));
    await screen.findByRole('img', { name: 'Photo 2 of 2, of the box' });
    expect((await boxOf(id)).photos).toEqual(before);
    expect(screen.queryByText('Photo removed.')).toBeNull();
  });

  it('a file that is no picture is refused in words and changes nothing', async () => {
    vi.mocked(shrinkPhoto).mockResolvedValue({ ok: false, error: 'not-a-picture' });
    await show(id, BoxPhotos);
    await pick('Choose a photo');
    expect((await screen.findByRole('alert')).textContent).toMatch(
      /not a picture .* the record is as it was\.$/,
    );
    expect((await boxOf(id)).photos).toEqual([]);
  });
});
