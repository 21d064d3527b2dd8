import type { WoodOnHand } from '../../app/woods.ts';
import { type ByHardness, onLine } from '../../domain/findings/answers/hardness-lines.ts';
import { writePitch } from '../../domain/units/write-quantity.ts';
import { ShareInterval } from '../drawings/share-interval.tsx';
import { woodsWords as words } from './words.ts';

/** What to expect of a wood little tried, from what woods of its hardness did. Nothing without a tabled hardness or a curve. */
export const ByItsHardness = ({ wood, found }: { wood: WoodOnHand; found: ByHardness | null }) => {
  const hardness = wood.species?.hardness?.newton;
  if (!found || hardness === undefined) return null;
  const inHundred = (share: number) => Math.round(100 * share);
  return (
    <>
      <h3>{words.byHardness}</h3>
      {found.lines.map((line) => {
        const at = onLine(line, hardness);
        if (!at) return null;
        const said = words.expected(
          writePitch(line.pitch, 'tpi'),
          inHundred(at.value),
          inHundred(at.low),
          inHundred(at.high),
        );
        return (
          <div key={line.pitch}>
            <p>{said}</p>
            <ShareInterval low={at.low} high={at.high} estimate={at.value} label={said} all={words.all} />
          </div>
        );
      })}
      <p class="soft">{words.expectedAbout(found.joints, found.woods)}</p>
    </>
  );
};
