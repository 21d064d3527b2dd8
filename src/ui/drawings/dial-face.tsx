import './drawings.css';

interface Props {
  /** Marks round the dial; null draws it bare. */
  readonly marks: number | null;
  /** The mark that stands at the index tooth. */
  readonly at: number;
  /** Which way it is turned to get there; null where the rig does not say. */
  readonly way: 'clockwise' | 'anticlockwise' | null;
}

const R = 60;
const C = 74;
const round = (value: number): number => Math.round(value * 100) / 100;
/** A point on a circle round the middle, degrees clockwise from the top. */
const onCircle = (radius: number, degrees: number): readonly [number, number] => {
  const angle = (degrees * Math.PI) / 180;
  return [round(C + radius * Math.sin(angle)), round(C + 6 - radius * Math.cos(angle))];
};

const NUMBERS = 5;

/** The dial from the front as the turner sees it, set where it is to stop, its index tooth on top. */
export const DialFace = ({ marks, at, way }: Props) => {
  const turn = marks ?? 0;
  const every = turn > 60 ? Math.ceil(turn / 50) : 1;
  const numbered = turn > 0 ? Math.max(1, Math.round(turn / NUMBERS)) : 0;
  // Numbers grow against the way it is turned, so that turning brings the greater ones to the index.
  const sense = way === 'anticlockwise' ? 1 : -1;
  const bearing = (mark: number): number => (sense * (mark - at) * 360) / turn;
  const ticks = turn > 0 ? Array.from({ length: Math.floor(turn / every) }, (_, i) => i * every) : [];
  const from = onCircle(R + 9, -sense * 25);
  const to = onCircle(R + 9, -sense * 105);
  return (
    <svg class="drawing dial-face" viewBox="0 0 148 148" aria-hidden="true">
      <circle cx={C} cy={C + 6} r={R} fill="var(--sheet)" stroke="var(--ink)" stroke-width="3" />
      <path
        d={ticks
          .map((mark) => {
            const [x1, y1] = onCircle(R - 2, bearing(mark));
            const [x2, y2] = onCircle(R - (numbered && mark % numbered === 0 ? 13 : 7), bearing(mark));
            return `M${x1} ${y1}L${x2} ${y2}`;
          })
          .join('')}
        stroke="var(--ink)"
        stroke-width="1.5"
      />
      {numbered > 0 &&
        Array.from({ length: Math.floor(turn / numbered) }, (_, i) => i * numbered).map((mark) => {
          const [x, y] = onCircle(R - 25, bearing(mark));
          return (
            <text
              key={mark}
              x={x}
              y={y + 6}
              text-anchor="middle"
              fill="var(--ink)"
              paint-order="normal"
              stroke="none"
            >
              {mark}
            </text>
          );
        })}
      <path d={`M${C - 9} 2h18l-9 18z`} fill="var(--blue)" />
      {way && (
        <g fill="none" stroke="var(--blue)" stroke-width="4" stroke-linecap="round" stroke-linejoin="round">
          <path d={`M${from[0]} ${from[1]}A${R + 9} ${R + 9} 0 0 ${sense < 0 ? 1 : 0} ${to[0]} ${to[1]}`} />
          <path d={`M${to[0]} ${to[1]}l-7 -9m7 9l9 -7`} />
        </g>
      )}
    </svg>
  );
};
