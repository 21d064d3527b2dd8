const OUTLINE = {
  fill: 'var(--wood)',
  stroke: 'var(--ink)',
  'stroke-width': 2,
  'stroke-linejoin': 'round',
} as const;
/** Three teeth of 60 degrees one after another, pointing `dx`, going `dy`. */
const teeth = (dx: number, dy: number) => `l${dx} ${dy}l${-dx} ${dy}`.repeat(3);

/** The box that all of it is for: its lid lifted off the tenon, the recess seen through. */
export const LidOff = () => (
  <svg class="drawing" viewBox="0 0 362 168" aria-hidden="true">
    <path {...OUTLINE} d="M97 66V34Q97 10 181 10T265 34V66z" />
    <path
      {...OUTLINE}
      d={`M97 112V150Q97 160 107 160H255Q265 160 265 150V112H244V109${teeth(-6, -3.5)}V86H118V88${teeth(6, 3.5)}V112z`}
    />
    <path
      d={`M112 66v-2${teeth(6, -3.5)}V38H250V43${teeth(-6, 3.5)}V66M118 112H244`}
      fill="none"
      stroke="var(--soft)"
      stroke-width="1.5"
      stroke-dasharray="5 4"
    />
    <path
      d="M110 30Q181 20 252 30M104 126Q181 120 258 126M104 143Q181 136 258 143"
      fill="none"
      stroke="var(--line)"
      stroke-width="1.5"
    />
    <path d="M181 2V166" stroke="var(--blue)" stroke-width="1.5" stroke-dasharray="14 4 3 4" />
  </svg>
);
