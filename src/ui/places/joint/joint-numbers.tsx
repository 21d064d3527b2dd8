import { type Conditions, type JointSeen, jointUnder, type KnownPair } from '../../../app/joint-view.ts';
import { settings } from '../../../app/session.ts';
import type { Part } from '../../../domain/setup/events.ts';
import { moisture } from '../../../domain/units/brands.ts';
import { grooveLeanWords, percentWords, jointWords as words } from '../../text/joint-words.ts';
import { amountWords, sizeWords } from '../../text/plan-words.ts';
import { type SizeRow, Sizes } from '../bench/plan-sizes.tsx';

interface Props {
  readonly known: KnownPair;
  readonly seen: JointSeen;
  readonly conditions: Conditions;
}

/** What the drawing shows, in numbers, and what each is in the hand. */
export const JointNumbers = ({ known, seen, conditions }: Props) => {
  const { leans } = known;
  const isRead = leans.recess !== null || leans.tenon !== null;
  return (
    <>
      <Sizes heading={words.numbers} rows={rowsOf(known, seen, conditions)} />
      <p class="soft">
        {isRead
          ? leans.isOneSetting
            ? words.leansKnown.oneSetting
            : words.leansKnown.worst
          : words.leansKnown.unread}
      </p>
    </>
  );
};

const rowsOf = (known: KnownPair, seen: JointSeen, conditions: Conditions): SizeRow[] => {
  const { unit } = settings.value;
  const { fit, clearance, eatenByLean } = seen;
  const amount = (length: number) => amountWords(length, unit);
  const gap = (name: string, length: number): SizeRow => ({
    name,
    value: amount(length),
    note: length < 0 ? words.crestsMeet : words.gapInHand,
  });
  const lean = (part: Part): SizeRow[] => {
    const read = known.leans[part];
    const isAsRead = conditions.lean[part] === known.asItIs.lean[part];
    return seen.lean[part] === 0 && !read
      ? []
      : [
          {
            name: words.leanOf[part],
            value: grooveLeanWords(seen.lean[part], isAsRead && read ? read.uncertainty : null),
          },
        ];
  };
  return [
    {
      name: words.clearance,
      value: amount(clearance),
      note: clearance < 0 ? words.clearanceMissing : words.clearanceInHand,
    },
    { name: words.engagement, value: percentWords(fit.percentOf75), note: words.by75 },
    {
      name: words.engagement,
      value: percentWords(fit.percentOf62),
      note: `${words.by62}. ${words.engagedInHand(sizeWords(fit.engagedHeight, unit))}`,
    },
    gap(words.tenonCrestGap, fit.tenonCrestGap),
    gap(words.recessCrestGap, fit.recessCrestGap),
    ...lean('recess'),
    ...lean('tenon'),
    ...(eatenByLean > 0.001
      ? [{ name: words.leanEats, value: amount(eatenByLean), note: words.leanEatsInHand }]
      : []),
    ...season(known, conditions),
  ];
};

/** The worse of drying and wetting by a season's swing. */
const season = (known: KnownPair, conditions: Conditions): SizeRow[] => {
  const left = [1, -1].flatMap((sign) => {
    const seen = jointUnder(known, { ...conditions, moisture: moisture(sign * known.swing) });
    return seen.ok ? [seen.value.clearance] : [];
  });
  if (left.length < 2) return [];
  const least = Math.min(...left);
  return [
    {
      name: words.season(known.swing),
      value: amountWords(least, settings.value.unit),
      note: least < 0 ? words.seasonBinds : words.seasonInHand,
    },
  ];
};
