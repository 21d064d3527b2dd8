import type { Box, PhotoRef } from '../../src/domain/box/records.ts';
import { mm } from '../../src/domain/units/brands.ts';
import type { Sitter } from './draw-photo.ts';
import type { Made } from './make-box.ts';
import { SCENARIO } from './scenario.ts';

/** A photo of the log, as drawPhoto makes it. */
export interface DemoPhoto {
  readonly id: string;
  readonly sitter: Sitter;
  readonly lidOn: boolean;
}

const sitterOf = ({ kind, height, box: { plan, tenon } }: Made): Sitter => ({
  kind,
  height,
  outside: plan.outside?.mm ?? mm(0),
  tenon: tenon[0]?.diameter.mm ?? plan.opening.mm,
  pitch: plan.pitch.mm,
  threads: plan.threads,
  tenonIn: plan.recessIn === 'lid' ? 'base' : 'lid',
  lidWood: plan.lid.wood,
  baseWood: plan.base.wood,
});

/** Minutes before the close at which a box had its picture taken, lid beside it and lid on. */
const TAKEN: readonly (readonly [PhotoRef['of'], minutes: number])[] = [
  ['fit', 6],
  ['box', 2],
];

/** Of the two newest boxes kept of each family, a picture with the lid on; of the newest, one with the lid off too. */
export const takePhotos = (
  made: readonly Made[],
): { made: readonly Made[]; photos: readonly DemoPhoto[] } => {
  const photos: DemoPhoto[] = [];
  const withPhotos = new Map<string, Box>();
  for (const { name } of SCENARIO.kinds) {
    const kept = made.filter(({ kind, box }) => kind === name && box.closing?.outcome === 'kept');
    for (const [i, each] of kept.slice(-2).entries()) {
      const closedAt = each.box.closing?.at ?? each.endedAt;
      const refs = TAKEN.slice(1 - i).map(([of, minutes]): PhotoRef => {
        const id = `${each.id}-${of}`;
        photos.push({ id, sitter: sitterOf(each), lidOn: of === 'box' });
        return { id, at: closedAt - minutes * 60_000, of };
      });
      withPhotos.set(each.id, { ...each.box, photos: refs });
    }
  }
  return { made: made.map((each) => ({ ...each, box: withPhotos.get(each.id) ?? each.box })), photos };
};
