import { type Signal, useSignal } from '@preact/signals';
import type { JointAsked } from '../../app/joint-asked.ts';
import { settings } from '../../app/session.ts';
import type { Conditions, KnownPair } from '../../domain/box/joint-under.ts';
import type { Part } from '../../domain/setup/events.ts';
import {
  degrees,
  degreesFromRad,
  MM_PER_INCH,
  mm,
  moisture,
  radFromDegrees,
} from '../../domain/units/brands.ts';
import { amountWords, sizeWords } from '../bench/plan/words.ts';
import { Switches } from '../parts/switches.tsx';
import { usePicked } from '../parts/use-picked.ts';
import { Slider } from './slider.tsx';
import { jigLeanWords, jointWords as words } from './words.ts';

interface Props {
  readonly known: KnownPair;
  readonly asked: JointAsked;
  readonly changed: Signal<Partial<Conditions>>;
}

const unit = (): 'in' | 'mm' => settings.value.unit;
/** A thou, or two hundredths: what a caliper tells. */
const step = (): number => (unit() === 'in' ? MM_PER_INCH / 1000 : 0.02);
/** Ends of the sliders, in steps, degrees and percent points. */
const [SLIMMER, SHALLOWER, DEEPER] = [16, 12, 20];
const [MOST_LEAN, LEAN_STEP] = [3, 0.25];
const [MOST_MOISTURE, MOISTURE_STEP] = [6, 0.5];

/** Sliders for clearance, depth, lean and moisture. They change what is drawn and nothing else. */
export const WhatIf = ({ known, asked, changed }: Props) => {
  const { conditions, seen, refusal } = asked;
  const isOneSetting = useSignal(known.leans.isOneSetting || known.leans.tenon === null);
  const { tenon } = known.pair;
  const change = (to: Partial<Conditions>) => {
    changed.value = { ...changed.value, ...to };
  };
  const leanSlider = (part: Part, label: string) => (
    <Slider
      key={part}
      label={label}
      of={conditions}
      says={({ lean }) => jigLeanWords(lean[part])}
      value={({ lean }) => degreesFromRad(lean[part])}
      least={-MOST_LEAN}
      most={MOST_LEAN}
      step={LEAN_STEP}
      onChange={(value) => {
        const angle = radFromDegrees(degrees(value));
        change({
          lean: isOneSetting.value
            ? { recess: angle, tenon: angle }
            : { ...conditions.value.lean, [part]: angle },
        });
      }}
    />
  );
  return (
    <section class="what-if">
      <h2>{words.whatIf}</h2>
      <p class="soft">{words.whatIfNote}</p>
      <Slider
        label={words.sliders.slimmer}
        of={conditions}
        says={({ slimmer }) =>
          words.slimmerSays(
            refusal.value ? '—' : amountWords(seen.value.clearance, unit()),
            sizeWords(tenon.diameter - slimmer, unit()),
          )
        }
        value={({ slimmer }) => Math.round(slimmer / step())}
        least={-SLIMMER}
        most={SLIMMER}
        onChange={(count) => change({ slimmer: mm(count * step()) })}
      />
      <Slider
        label={words.sliders.deeper}
        of={conditions}
        says={({ deeper }) => sizeWords(tenon.depth + deeper, unit())}
        value={({ deeper }) => Math.round(deeper / step())}
        least={-SHALLOWER}
        most={DEEPER}
        onChange={(count) => change({ deeper: mm(count * step()) })}
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
              const { lean } = conditions.value;
              if (on && lean.recess !== lean.tenon)
                change({ lean: { recess: lean.tenon, tenon: lean.tenon } });
            },
          },
        ]}
      />
      <p class="soft">{words.walls[known.leans.together]}</p>
      <Slider
        label={words.sliders.moisture}
        of={conditions}
        says={({ moisture: points }) =>
          words.moistureSays(
            points,
            refusal.value ? '—' : amountWords(seen.value.clearanceInLine, unit()),
            refusal.value ? '—' : amountWords(seen.value.fit.clearance, unit()),
          )
        }
        value={({ moisture: points }) => points}
        least={-MOST_MOISTURE}
        most={MOST_MOISTURE}
        step={MOISTURE_STEP}
        onChange={(points) => change({ moisture: moisture(points) })}
      />
      <button
        type="button"
        disabled={usePicked(asked.isWhatIf, (is) => !is)}
        onClick={() => {
          changed.value = {};
        }}
      >
        {words.reset}
      </button>
    </section>
  );
};
