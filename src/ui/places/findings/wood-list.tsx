import { logId } from '../../../app/session.ts';
import { woodNames } from '../../../app/wood-names.ts';
import type { WoodsByPitch } from '../../../domain/findings/woods-by-pitch.ts';
import { useLive } from '../../parts/use-live.ts';
import { hrefTo } from '../../shell/route.ts';
import { findingsWords as words } from '../../text/findings-words.ts';
import { OwnRecord } from '../woods/own-record.tsx';

/** Woods tried most, each with its pitches folded under it. */
export const WoodList = ({ woods: { woods } }: { woods: WoodsByPitch }) => {
  const nameOf = useLive(woodNames, ['wood', 'log'], logId.value).value;
  const sorted = [...woods].sort((a, b) => b.boxes - a.boxes);
  return (
    <section>
      <h2>{words.woods}</h2>
      <p class="soft">{words.woodsAbout}</p>
      {sorted.map((record) => (
        <details key={record.wood}>
          <summary>{nameOf?.(record.wood) ?? record.wood}</summary>
          <OwnRecord record={record} />
        </details>
      ))}
      <a href={hrefTo('woods')}>{words.allWoods}</a>
    </section>
  );
};
