import '../../parts/field.css';
import { SeatClock } from '../../drawings/seat-clock.tsx';
import { seatWords as words } from './words.ts';

/** 12 on top, then clockwise. */
const HOURS = [12, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11] as const;
/** Of the face's width, from its middle. */
const RADIUS = 0.42;

interface Props {
  readonly open: readonly number[];
  readonly onChange: (open: readonly number[]) => void;
}

/** The lid seen from outside as a clock: a check box an hour, a thumb wide, where it stands open. */
export const SeatFace = ({ open, onChange }: Props) => (
  <fieldset class="seat-face">
    <legend>{words.open}</legend>
    <p class="soft">{words.openHint}</p>
    <div class="face">
      <SeatClock open={open} label={words.faceSays(open)} />
      {HOURS.map((hour) => {
        const angle = (hour / 12) * 2 * Math.PI;
        return (
          <label
            key={hour}
            data-open={open.includes(hour) ? '' : undefined}
            style={{
              left: `${50 + 100 * RADIUS * Math.sin(angle)}%`,
              top: `${50 - 100 * RADIUS * Math.cos(angle)}%`,
            }}
          >
            <input
              type="checkbox"
              class="unseen"
              aria-label={words.hour(hour)}
              checked={open.includes(hour)}
              onChange={() =>
                onChange(
                  open.includes(hour)
                    ? open.filter((other) => other !== hour)
                    : [...open, hour].sort((a, b) => a - b),
                )
              }
            />
            {hour}
          </label>
        );
      })}
    </div>
    <p role="status">{words.faceSays(open)}</p>
  </fieldset>
);
