import { boxById } from '../../../app/boxes.ts';
import { Photos } from '../../parts/photos.tsx';
import { useLive } from '../../parts/use-live.ts';

const photosOf = async (boxId: string) => (await boxById(boxId))?.box.photos ?? [];

/** The photos of the set-up, kept with its box. */
export default ({ boxId, canAdd = false }: { boxId: string; canAdd?: boolean }) => {
  const photos = useLive(photosOf, ['box'], boxId).value;
  if (!photos) return <div class="list" aria-busy="true" />;
  return (
    <div class="list">
      <Photos
        boxId={boxId}
        photos={photos.filter(({ of }) => of === 'set-up')}
        {...(canAdd ? { of: 'set-up' as const } : {})}
      />
    </div>
  );
};
