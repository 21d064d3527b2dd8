import { computed, type ReadonlySignal, useSignal } from '@preact/signals';
import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { settings } from '../../app/session.ts';
import type { JointSeen, KnownPair } from '../../domain/box/joint-under.ts';
import { HALF_ANGLE } from '../../domain/joint/profile.ts';
import type { Part } from '../../domain/setup/events.ts';
import { amountWords, sizeWords } from '../bench/plan/words.ts';
import { type JointSectionProps, LiveSection } from '../drawings/joint-section/joint-section.tsx';
import type { SectionLabels } from '../drawings/joint-section/section-figure.ts';
import type { ThreadedPiece } from '../drawings/joint-section/thread-profile.ts';
import { Choice } from '../parts/choice.tsx';
import { hrefTo } from '../shell/route.ts';
import { type Magnified, magnifiedTo, sectionScale, TO_FIT } from './section-scale.ts';
import { goingOf, sectionWords, jointWords as words } from './words.ts';

interface Props {
  readonly known: KnownPair;
  readonly seen: ReadonlySignal<JointSeen>;
  readonly pitch: string;
}

/** The section as wide as the screen and lettered, or as large as life or a number of times that, once the screen is measured. */
export const JointScale = ({ known, seen, pitch }: Props) => {
  const { pxPerMm } = settings.value;
  const figure = useRef<HTMLElement>(null);
  const width = useSignal(0);
  const times = useSignal<string>('fit');
  useLayoutEffect(() => {
    const element = figure.current;
    if (!element) return undefined;
    const measure = () => {
      width.value = element.clientWidth;
    };
    measure();
    const watcher = new ResizeObserver(measure);
    watcher.observe(element);
    return () => watcher.disconnect();
  }, []);

  const enlarged = pxPerMm === null ? [] : magnifiedTo(known.pair.pitch, pxPerMm, width.value);
  const chosen = enlarged.find((each) => String(each.times) === times.value) ?? null;
  const threads = (chosen ?? TO_FIT).threads;
  const isLettered = chosen === null;
  const of = useMemo(
    () => computed(() => sectionOf(seen.value, known, pitch, threads, isLettered)),
    [seen, known, pitch, threads, isLettered],
  );
  return (
    <figure ref={figure} class="section">
      <div
        style={chosen ? { width: `${chosen.width}px` } : undefined}
        class={chosen ? `enlarged times-${chosen.times}` : undefined}
      >
        <LiveSection of={of} />
      </div>
      <figcaption class={pxPerMm === null ? 'soft uncalibrated' : 'soft'}>
        {pxPerMm === null ? (
          <>
            {words.notCalibrated} <a href={hrefTo('shop', 'reading')}>{words.calibrate}</a>
          </>
        ) : (
          says(chosen, known.pair.pitch, pxPerMm, width.value)
        )}
      </figcaption>
      {enlarged.length > 0 && (
        <Choice
          legend={words.scale}
          options={[
            { value: 'fit', word: words.fitWidth },
            ...enlarged.map((each) => ({
              value: String(each.times),
              word: each.times === 1 ? words.lifeSize : words.times(each.times),
            })),
          ]}
          chosen={chosen ? times.value : 'fit'}
          onChoose={(value) => {
            times.value = value;
          }}
        />
      )}
    </figure>
  );
};

const says = (chosen: Magnified | null, pitch: number, pxPerMm: number, width: number): string =>
  chosen
    ? words.magnifiedExactly(chosen.times)
    : words.magnified(sectionScale(TO_FIT, pitch, width) / pxPerMm);

const sectionOf = (
  seen: JointSeen,
  known: KnownPair,
  pitch: string,
  threads: number,
  isLettered: boolean,
): JointSectionProps => {
  const { unit } = settings.value;
  return {
    threads,
    pitch: seen.pair.pitch,
    halfAngle: HALF_ANGLE,
    recess: pieceOf(seen, 'recess'),
    tenon: pieceOf(seen, 'tenon'),
    pose: 'home',
    label: sectionWords(seen, pitch, goingOf(seen, known), unit),
    ...(isLettered ? { labels: labelsOf(seen, pitch, unit) } : {}),
  };
};

/** The helix widens a groove as a wider tip would. */
const pieceOf = ({ pair, lean, strain }: JointSeen, part: Part): ThreadedPiece => {
  const { diameter, depth, tipFlat, flankShift } = pair[part];
  return {
    diameter,
    depth,
    tipFlat: tipFlat + 2 * (flankShift ?? 0),
    lean: lean[part],
    strain: strain[part],
  };
};

const labelsOf = ({ pair, fit, endPlay }: JointSeen, pitch: string, unit: 'in' | 'mm'): SectionLabels => {
  const depth = (part: Part) => words.depthLabel(sizeWords(pair[part].depth, unit));
  const gap = (length: number) => words.gapLabel(amountWords(length, unit));
  return {
    pitch,
    recess: words.boreLabel(sizeWords(pair.recess.diameter, unit)),
    tenon: words.tenonLabel(sizeWords(pair.tenon.diameter, unit)),
    recessDepth: depth('recess'),
    tenonDepth: depth('tenon'),
    ...(fit.engagedHeight > 0
      ? { play: endPlay < 0 ? words.flanksMeetLabel : words.playLabel(amountWords(endPlay, unit)) }
      : {}),
    tenonCrestGap: gap(fit.tenonCrestGap),
    recessCrestGap: gap(fit.recessCrestGap),
  };
};
