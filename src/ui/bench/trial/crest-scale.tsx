import { settings } from '../../../app/session.ts';
import { mm } from '../../../domain/units/brands.ts';
import { stepWords } from '../../words/dial.ts';
import { questionWords as words } from './question-words.ts';

const THOU = 0.0254;
/** Widths to hold a crest beside. */
const WIDTHS = {
  mm: [0.1, 0.15, 0.2, 0.3, 0.4, 0.6],
  in: [4, 6, 8, 12, 16, 24].map((thou) => thou * THOU),
} as const;
/** What is assumed of a phone's glass where no card was laid on it, CSS px to the mm. */
const ASSUMED = 160 / 25.4;

/** Bars as wide as a crest flat may be, at true size on this glass; a tap takes the width over. */
export const CrestScale = ({ onPick }: { onPick: (text: string) => void }) => {
  const { unit, pxPerMm } = settings.value;
  return (
    <>
      <div class="crest-scale">
        {WIDTHS[unit].map((width) => {
          const text = unit === 'in' ? stepWords(mm(width), unit) : `${width} mm`;
          const drawn = width * (pxPerMm ?? ASSUMED);
          return (
            <button key={width} type="button" onClick={() => onPick(text)}>
              <svg width="16" height="44" viewBox="0 0 16 44" aria-hidden="true">
                <rect x={8 - drawn / 2} width={drawn} height="44" fill="currentColor" />
              </svg>
              {text}
            </button>
          );
        })}
      </div>
      {pxPerMm === null && <p class="soft">{words.scaleAssumed}</p>}
    </>
  );
};
