import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import type { Conditions, KnownPair } from '../../../app/joint-view.ts';
import { settings } from '../../../app/session.ts';
import {
  degrees,
  degreesFromRad,
  MM_PER_INCH,
  mm,
  moisture,
  radFromDegrees,
} from '../../../domain/units/brands.ts';
import { Switches } from '../../parts/switches.tsx';
import { jigLeanWords, jointWords as words } from '../../text/joint-words.ts';
import { amountWords, sizeWords } from '../../text/plan-words.ts';

interface Props {
  readonly known: KnownPair;
  readonly conditions: Conditions;
  readonly clearance: number | null;
  readonly isChanged: boolean;
  readonly onChange: (change: Partial<Conditions>) => void;
  readonly onReset: () => void;
}

/** A thou, or two hundredths: what a caliper tells. */
const stepOf = (unit: 'in' | 'mm'): number => (unit === 'in' ? MM_PER_INCH / 1000 : 0.02);
/** Ends of the sliders, in steps, degrees and percent points. */
const [SLIMMER, SHALLOWER, DEEPER] = [16, 12, 20];
const [MOST_LEAN, LEAN_STEP] = [3, 0.25];
const [MOST_MOISTURE, MOISTURE_STEP] = [6, 0.5];

/** Sliders for clearance, depth, lean and moisture. They change what is drawn and nothing else. */
export const WhatIf = ({ known, conditions, clearance, isChanged, onChange, onReset }: Props) => {
  const { unit } = settings.value;
  const { slimmer, deeper, lean } = conditions;
  const isOneSetting = useSignal(known.leans.isOneSetting || known.leans.tenon === null);
  const step = stepOf(unit);
  const tenon = known.pair.tenon;
  const inDegrees = (part: 'recess' | 'tenon') => degreesFromRad(lean[part]);
  const leanSlider = (part: 'recess' | 'tenon', label: string) => (
    <Slider
      label={label}
      says={jigLeanWords(lean[part])}
      value={inDegrees(part)}
      least={-MOST_LEAN}
      most={MOST_LEAN}
      step={LEAN_STEP}
      onChange={(value) => {
        const angle = radFromDegrees(degrees(value));
        onChange({ lean: isOneSetting.value ? { recess: angle, tenon: angle } : { ...lean, [part]: angle } });
      }}
    />
  );
  return (
    <section class="what-if">
      <h2>{words.whatIf}</h2>
      <p class="soft">{words.whatIfNote}</p>
      <Slider
        label={words.sliders.slimmer}
        says={words.slimmerSays(
          clearance === null ? '—' : amountWords(clearance, unit),
          sizeWords(tenon.diameter - slimmer, unit),
        )}
        value={Math.round(slimmer / step)}
        least={-SLIMMER}
        most={SLIMMER}
        onChange={(count) => onChange({ slimmer: mm(count * step) })}
      />
      <Slider
        label={words.sliders.deeper}
        says={sizeWords(tenon.depth + deeper, unit)}
        value={Math.round(deeper / step)}
        least={-SHALLOWER}
        most={DEEPER}
        onChange={(count) => onChange({ deeper: mm(count * step) })}
      />
      {isOneSetting.value ? (
        leanSlider('tenon', words.sliders.both)
      ) : (
        <>
          {leanSlider('recess', words.sliders.recess)}
          {leanSlider('tenon', words.sliders.tenon)}
        </>
      )}
      <Switches
        switches={[
          {
            word: words.together,
            on: isOneSetting.value,
            set: (on) => {
              isOneSetting.value = on;
              if (on && lean.recess !== lean.tenon)
                onChange({ lean: { recess: lean.tenon, tenon: lean.tenon } });
            },
          },
        ]}
      />
      <p class="soft">{words.walls[known.leans.together]}</p>
      <Slider
        label={words.sliders.moisture}
        says={words.points(conditions.moisture)}
        value={conditions.moisture}
        least={-MOST_MOISTURE}
        most={MOST_MOISTURE}
        step={MOISTURE_STEP}
        onChange={(points) => onChange({ moisture: moisture(points) })}
      />
      <button type="button" disabled={!isChanged} onClick={onReset}>
        {words.reset}
      </button>
    </section>
  );
};

interface SliderProps {
  readonly label: string;
  /** Where it stands, in the turner's words. */
  readonly says: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly step?: number;
  readonly onChange: (value: number) => void;
}

const Slider = ({ label, says, value, least, most, step = 1, onChange }: SliderProps) => {
  const id = useId();
  return (
    <div class="slider">
      <label for={id}>
        <b>{label}</b> <span>{says}</span>
      </label>
      <input
        id={id}
        type="range"
        min={least}
        max={most}
        step={step}
        value={value}
        aria-valuetext={says}
        onInput={(event) => onChange(Number(event.currentTarget.value))}
      />
    </div>
  );
};
