import type { ReadonlySignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { usePicked } from '../parts/use-picked.ts';

interface Props<T> {
  readonly label: string;
  /** What its words and its place are picked of. */
  readonly of: ReadonlySignal<T>;
  /** Where it stands, in the turner's words. */
  readonly says: (of: T) => string;
  readonly value: (of: T) => number;
  readonly least: number;
  readonly most: number;
  readonly step?: number;
  readonly onChange: (value: number) => void;
}

/** One slider with its name and its words, written anew only where they change. */
export const Slider = <T,>({ label, of, says, value, least, most, step = 1, onChange }: Props<T>) => {
  const id = useId();
  const said = usePicked(of, says);
  return (
    <div class="slider">
      <label for={id}>
        <b>{label}</b> <span>{said}</span>
      </label>
      <input
        id={id}
        type="range"
        min={least}
        max={most}
        step={step}
        value={usePicked(of, value)}
        aria-valuetext={said}
        onInput={(event) => onChange(Number(event.currentTarget.value))}
      />
    </div>
  );
};
