import type { WoodAtPitch, WoodRecord } from '../../../domain/findings/woods-by-pitch.ts';
import { writePitch } from '../../../domain/units/write-quantity.ts';
import { ShareInterval } from '../../drawings/share-interval.tsx';
import { woodsWords as words } from '../../text/woods-words.ts';

/** How this wood held each pitch in one's own log, with honest width. */
export const OwnRecord = ({ record }: { record: WoodRecord | undefined }) => {
  if (!record) return <p>{words.recordNone}</p>;
  return (
    <>
      <p>
        {words.boxes(record.boxes)}.{' '}
        {record.finest
          ? words.finest(writePitch(record.finest.pitch, 'tpi'), Math.round(100 * record.finest.chance))
          : words.finestUnknown}
      </p>
      {record.littleTried && <p>{words.little}</p>}
      {record.pitches.map((at) => (
        <AtPitch key={`${at.pitch} ${at.hardened}`} at={at} />
      ))}
    </>
  );
};

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
      <ShareInterval low={low} high={high} estimate={mean} label={`${pitch}: ${between}`} />
      <p class="soft">
        {between}; {words.right(at.right.events, at.right.total)}
      </p>
    </div>
  );
};
