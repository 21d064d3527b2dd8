import type { WoodAtPitch, WoodRecord } from '../../domain/findings/answers/woods-by-pitch.ts';
import { writePitch } from '../../domain/units/write-quantity.ts';
import { ShareInterval } from '../drawings/share-interval.tsx';
import { woodsWords as words } from './words.ts';

/** How many boxes, and the finest pitch that holds. */
export const finestWords = ({ boxes, finest }: WoodRecord): string =>
  `${words.boxes(boxes)}. ${
    finest
      ? words.finest(writePitch(finest.pitch, 'tpi'), Math.round(100 * finest.chance))
      : words.finestUnknown
  }`;

/** How this wood held each pitch in one's own log, with honest width: the counts stand above each picture. */
export const OwnRecord = ({ record }: { record: WoodRecord }) => (
  <>
    {record.littleTried && <p>{words.little}</p>}
    {record.pitches.map((at) => (
      <AtPitch key={`${at.pitch} ${at.hardened}`} at={at} />
    ))}
  </>
);

const AtPitch = ({ at }: { at: WoodAtPitch }) => {
  const pitch = words.pitch(writePitch(at.pitch, 'tpi'), at.hardened);
  const inHundred = (share: number) => Math.round(100 * share);
  const { low, high, mean } = at.pooled;
  const between = words.interval(inHundred(low), inHundred(high));
  return (
    <div>
      <p>
        <b>{pitch}</b>: {words.held(at.held.events, at.held.total)}
      </p>
      <ShareInterval low={low} high={high} estimate={mean} label={`${pitch}: ${between}`} all={words.all} />
      <p class="soft">
        {between}; {words.right(at.right.events, at.right.total)}
      </p>
    </div>
  );
};
