import './drawings.css';

const HOURS = Array.from({ length: 12 }, (_, i) => i + 1);
const CENTRE = 90;

const at = (radius: number, hour: number): string => {
  const a = ((hour - 3) * Math.PI) / 6;
  return `${(CENTRE + radius * Math.cos(a)).toFixed(1)} ${(CENTRE + radius * Math.sin(a)).toFixed(1)}`;
};

const arc = (radius: number, hour: number): string =>
  `M${at(radius, hour - 0.46)}A${radius} ${radius} 0 0 1 ${at(radius, hour + 0.46)}`;

/** An hour that shuts is one bold arc; one that stands open shows its two edges with air between, and a dot. */
const seatSector = (hour: number, open: boolean): string =>
  open ? `${arc(66, hour)}M${at(78, hour - 0.46)}A78 78 0 0 1 ${at(78, hour + 0.46)}` : arc(70, hour);

/** The seat of the lid looked at from outside, 12 at the mark: where it stands open, by the hours of a clock. */
export const SeatClock = ({ open, label }: { open: readonly number[]; label: string }) => (
  <svg class="drawing" viewBox="0 0 180 180" role="img" aria-label={label} fill="none" stroke="var(--ink)">
    <circle cx={CENTRE} cy={CENTRE} r="58" fill="var(--wood)" stroke-width="2" />
    <path
      d="M86 64a34 30 0 1 0 14 2M84 74a22 20 0 1 0 14 2M84 84a10 9 0 1 0 10 2"
      stroke-width="1"
      stroke-linecap="round"
    />
    <path d={`M${CENTRE} 32v12`} stroke-width="3" />
    {HOURS.map((hour) => {
      const gapes = open.includes(hour);
      return (
        <g key={hour} data-hour={hour} data-open={gapes}>
          <path
            d={seatSector(hour, gapes)}
            stroke={gapes ? 'var(--blue)' : 'var(--ink)'}
            stroke-width={gapes ? 2.5 : 6}
          />
          {gapes && (
            <circle
              cx={at(72, hour).split(' ')[0]}
              cy={at(72, hour).split(' ')[1]}
              r="3.5"
              fill="var(--blue)"
              stroke="none"
            />
          )}
        </g>
      );
    })}
  </svg>
);
