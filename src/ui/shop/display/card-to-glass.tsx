import { useSignal } from '@preact/signals';
import { changeSettings, settings } from '../../../app/session.ts';
import { shopWords } from '../words.ts';

const words = shopWords.reading;

/** Long side of a bank card, mm: ISO/IEC 7810 ID-1. */
const CARD_MM = 85.6;
/** What is assumed of a phone's glass: 160 CSS px to the inch. */
const ASSUMED = 160 / 25.4;

/** Learns how many CSS pixels a millimetre of this glass has, by laying a bank card on it. */
export const CardToGlass = () => {
  const px = useSignal(Math.round(CARD_MM * (settings.value.pxPerMm ?? ASSUMED)));
  return (
    <details>
      <summary>{words.card}</summary>
      <p>{words.cardHow}</p>
      <div class="card" style={{ width: `${px.value}px` }} />
      <label>
        <span class="hidden-words">{words.card}</span>
        <input
          type="range"
          min="200"
          max="900"
          value={px.value}
          onInput={(event) => {
            px.value = Number(event.currentTarget.value);
          }}
        />
      </label>
      <div class="row">
        <button type="button" onClick={() => changeSettings({ pxPerMm: px.value / CARD_MM })}>
          {words.cardUse}
        </button>
        {settings.value.pxPerMm !== null && (
          <button type="button" onClick={() => changeSettings({ pxPerMm: null })}>
            {words.cardForget}
          </button>
        )}
      </div>
    </details>
  );
};
