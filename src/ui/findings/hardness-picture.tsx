import { type ByHardness, onLine } from '../../domain/findings/answers/hardness-lines.ts';
import type { WoodRecord } from '../../domain/findings/answers/woods-by-pitch.ts';
import { writePitch } from '../../domain/units/write-quantity.ts';
import { HardnessCurve } from '../drawings/hardness-curve.tsx';
import { woodFigureWords as words } from './figure-words.ts';
import { linkWords } from './link-words.ts';

/** Newtons at which the table behind the picture reads it; the sentence takes a soft and a hard one. */
const READ_AT = [1500, 2500, 4000, 6000, 10_000];
const [SOFT, HARD] = [2500, 6000];

/** What hardness says of a wood not yet tried, at the pitch tried most. */
export const HardnessPicture = ({ found, woods }: { found: ByHardness; woods: readonly WoodRecord[] }) => {
  const [line] = found.lines;
  const [soft, hard] = [SOFT, HARD].map((hardness) => line && onLine(line, hardness));
  if (!line || !soft || !hard) return null;
  const pitch = writePitch(line.pitch, 'tpi');
  const inHundred = (share: number) => Math.round(100 * share);
  return (
    <>
      <h3>{words.hardness}</h3>
      <p>{words.hardnessSentence(pitch, soft, hard)}</p>
      <HardnessCurve
        points={line.points}
        woods={woods.flatMap(({ hardness }) => hardness ?? [])}
        label={words.hardnessPicture(pitch)}
        newton={words.newton}
      />
      <p class="soft">{words.hardnessAbout(found.joints, found.woods, found.silent)}</p>
      <details>
        <summary>{linkWords.numbers}</summary>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.sideHardness}</th>
              <th scope="col">{words.held}</th>
              <th scope="col">{words.between}</th>
            </tr>
          </thead>
          <tbody>
            {READ_AT.flatMap((hardness) => onLine(line, hardness) ?? []).map((at) => (
              <tr key={at.hardness}>
                <th scope="row">{words.newton(at.hardness)}</th>
                <td>{inHundred(at.value)}</td>
                <td>{`${inHundred(at.low)} to ${inHundred(at.high)}`}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </>
  );
};
