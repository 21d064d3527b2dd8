import { computed, type ReadonlySignal } from '@preact/signals';
import { useMemo, useRef } from 'preact/hooks';
import { type JointAsked, jointAsked } from '../../app/joint-asked.ts';
import { settings } from '../../app/session.ts';
import { type Conditions, type JointSeen, jointUnder, type KnownPair } from '../../domain/box/joint-under.ts';
import type { Part } from '../../domain/setup/events.ts';
import { moisture } from '../../domain/units/brands.ts';
import { type SizeRow, Sizes } from '../bench/plan/sizes.tsx';
import { amountWords, sizeWords } from '../bench/plan/words.ts';
import { usePicked } from '../parts/use-picked.ts';
import { useWhenSeen } from '../parts/use-when-seen.ts';
import { grooveLeanWords, percentWords, jointWords as words } from './words.ts';

interface Props {
  readonly known: KnownPair;
  readonly asItIs: JointSeen;
  readonly changed: ReadonlySignal<Partial<Conditions>>;
}

/**
 * What the drawing shows, in numbers, and what each is in the hand. A move of a slider writes the figures that it changes; those
 * that lie below the glass are written when it rests.
 */
export const JointNumbers = ({ known, asItIs, changed }: Props) => {
  const whole = useRef<HTMLDivElement>(null);
  const seen = useWhenSeen(changed, whole);
  const asked = useMemo(() => jointAsked(known, asItIs, seen), [known, asItIs, seen]);
  const { leans } = known;
  const isRead = leans.recess !== null || leans.tenon !== null;
  const figures = useMemo(() => figuresOf(asked), [asked]);
  const season = useMemo(() => seasonOf(known, asked), [known, asked]);
  const isEaten = usePicked(asked.seen, ({ eatenByLean }) => eatenByLean > 0.001).value;
  const hasSeason = usePicked(season.clearance, (clearance) => clearance !== null).value;
  return (
    <div ref={whole} class="joint-numbers">
      <Sizes
        heading={words.numbers}
        rows={[
          ...figures.ofFit,
          ...useLean('recess', known, asked),
          ...useLean('tenon', known, asked),
          ...(isEaten ? [figures.eaten] : []),
          ...(hasSeason ? [season.row] : []),
        ]}
      />
      <p class="soft">
        {isRead
          ? leans.isOneSetting
            ? words.leansKnown.oneSetting
            : words.leansKnown.worst
          : words.leansKnown.unread}
      </p>
    </div>
  );
};

const amount = (length: number): string => amountWords(length, settings.value.unit);

const figuresOf = ({ seen }: JointAsked) => {
  const written = (write: (seen: JointSeen) => string) => computed(() => write(seen.value));
  const gap = (name: string, which: 'tenonCrestGap' | 'recessCrestGap'): SizeRow => ({
    name,
    value: written(({ fit }) => amount(fit[which])),
    note: written(({ fit }) => (fit[which] < 0 ? words.crestsMeet : words.gapInHand)),
  });
  return {
    ofFit: [
      {
        name: words.clearance,
        value: written(({ clearance }) => amount(clearance)),
        note: written(({ clearance }) => (clearance < 0 ? words.clearanceMissing : words.clearanceInHand)),
      },
      {
        name: words.engagement,
        value: written(({ fit }) => percentWords(fit.percentOf75)),
        note: words.by75,
      },
      {
        name: words.engagement,
        value: written(({ fit }) => percentWords(fit.percentOf62)),
        note: words.by62,
      },
      {
        name: words.engaged,
        value: written(({ fit }) => sizeWords(fit.engagedHeight, settings.value.unit)),
        note: words.engagedInHand,
      },
      gap(words.tenonCrestGap, 'tenonCrestGap'),
      gap(words.recessCrestGap, 'recessCrestGap'),
    ],
    eaten: {
      name: words.leanEats,
      value: written(({ eatenByLean }) => amount(eatenByLean)),
      note: words.leanEatsInHand,
    },
  };
};

/** The lean of a groove, where it leans or was read. */
const useLean = (part: Part, known: KnownPair, { seen, conditions }: JointAsked): SizeRow[] => {
  const read = known.leans[part];
  const value = usePicked(seen, ({ lean }) => {
    const isAsRead = conditions.value.lean[part] === known.asItIs.lean[part];
    return lean[part] === 0 && !read
      ? null
      : grooveLeanWords(lean[part], isAsRead && read ? read.uncertainty : null);
  }).value;
  return value === null ? [] : [{ name: words.leanOf[part], value }];
};

/** The worse of drying and wetting by a season's swing. */
const seasonOf = (known: KnownPair, { conditions }: JointAsked) => {
  const clearance = computed(() => {
    const left = [1, -1].flatMap((sign) => {
      const seen = jointUnder(known, { ...conditions.value, moisture: moisture(sign * known.swing) });
      return seen.ok ? [seen.value.clearance] : [];
    });
    return left.length < 2 ? null : Math.min(...left);
  });
  const row: SizeRow = {
    name: words.season(known.swing),
    value: computed(() => amount(clearance.value ?? 0)),
    note: computed(() => ((clearance.value ?? 0) < 0 ? words.seasonBinds : words.seasonInHand)),
  };
  return { clearance, row };
};
