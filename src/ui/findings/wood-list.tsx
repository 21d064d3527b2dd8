import { woodNames } from '../../app/wood-names.ts';
import type { ByHardness } from '../../domain/findings/answers/hardness-lines.ts';
import type { WoodRecord, WoodsByPitch } from '../../domain/findings/answers/woods-by-pitch.ts';
import { useLive } from '../parts/use-live.ts';
import { hrefTo } from '../shell/route.ts';
import { finestWords, OwnRecord } from '../woods/own-record.tsx';
import { woodsWords } from '../woods/words.ts';
import { woodFigureWords as words } from './figure-words.ts';
import { HardnessPicture } from './hardness-picture.tsx';

interface Props {
  readonly woods: WoodsByPitch;
  readonly byHardness: ByHardness | null;
}

/** Woods tried most, each with its pitches folded under it; those little tried apart, by their hardness. */
export const WoodList = ({ woods: { woods, silent }, byHardness }: Props) => {
  const names = useLive(woodNames, ['wood']).value;
  const nameOf = (wood: string) => names?.(wood) ?? wood;
  const tried = woods.filter(({ littleTried }) => !littleTried).sort((a, b) => b.boxes - a.boxes);
  const little = woods
    .filter(({ littleTried }) => littleTried)
    .sort((a, b) => (b.hardness ?? 0) - (a.hardness ?? 0));
  return (
    <section>
      <h2>{words.title}</h2>
      <p class="soft">
        {words.about} {words.silent(silent['never-tried'])}
      </p>
      {tried.map((record) => (
        <details key={record.wood}>
          <summary class="of-wood">
            <span>
              <b>{nameOf(record.wood)}</b>
              <br />
              <span class="soft">{finestWords(record)}</span>
            </span>
          </summary>
          <OwnRecord record={record} />
        </details>
      ))}
      {little.length > 0 && <LittleTried woods={little} nameOf={nameOf} />}
      {byHardness && <HardnessPicture found={byHardness} woods={woods} />}
      <a href={hrefTo('woods')}>{words.all}</a>
    </section>
  );
};

const LittleTried = ({
  woods,
  nameOf,
}: {
  woods: readonly WoodRecord[];
  nameOf: (wood: string) => string;
}) => (
  <>
    <h3>{words.little}</h3>
    <p class="soft">{words.littleAbout}</p>
    <ul>
      {woods.map(({ wood, boxes, hardness }) => (
        <li key={wood}>
          <a href={hrefTo('woods', wood)}>{nameOf(wood)}</a>: {woodsWords.boxes(boxes)}
          {hardness !== null && `, ${words.newton(hardness)}`}
        </li>
      ))}
    </ul>
  </>
);
