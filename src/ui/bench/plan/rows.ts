import type { CalculatedBox } from '../../../domain/box/calculate.ts';
import type { Plan } from '../../../domain/box/records.ts';
import type { PlannedPass } from '../../../domain/joint/plan.ts';
import type { PlanLengths } from '../../../domain/joint/plan-lengths.ts';
import { writeTurns } from '../../../domain/units/write-quantity.ts';
import type { BoxFeature } from '../../drawings/box-section/box-features.ts';
import type { SizeRow } from './sizes.tsx';
import { amountWords, roughWords, sizeWords, planWords as words } from './words.ts';

type Unit = 'in' | 'mm';

/** The letters by which list and drawing speak of the same place. */
export const LETTERS = {
  recess: 'A',
  recessDepth: 'B',
  recessRelief: 'C',
  recessChamfer: 'D',
  tenon: 'E',
  tenonLength: 'F',
  tenonRelief: 'G',
  tenonChamfer: 'H',
} as const satisfies Partial<Record<BoxFeature, string>>;

const reliefNote = ({ reliefWidth, reliefDepth }: PlanLengths, unit: Unit): string =>
  words.pastRoot(roughWords(reliefWidth, unit), sizeWords(reliefDepth, unit));

export const recessRows = ({ plan }: CalculatedBox, { opening }: Plan, unit: Unit): SizeRow[] => {
  const { lengths } = plan;
  return [
    { letter: LETTERS.recess, name: words.recessDiameter, value: opening.text },
    { letter: LETTERS.recessDepth, name: words.floorDepth, value: roughWords(lengths.recessDepth, unit) },
    {
      letter: LETTERS.recessRelief,
      name: words.floorRelief,
      value: sizeWords(lengths.recessReliefDiameter, unit),
      note: reliefNote(lengths, unit),
    },
    {
      letter: LETTERS.recessChamfer,
      name: words.mouthChamfer,
      value: sizeWords(lengths.recessChamferDiameter, unit),
      note: words.toRoot,
    },
  ];
};

export const tenonRows = ({ plan, target, isBoreMeasured }: CalculatedBox, unit: Unit): SizeRow[] => {
  const { lengths } = plan;
  return [
    {
      letter: LETTERS.tenon,
      name: words.tenonDiameter,
      value: sizeWords(target.tenon, unit),
      note: `${words.allowance(sizeWords(target.allowance, unit))}, ${isBoreMeasured ? words.tenonFromBore : words.tenonFromPlan}`,
    },
    { letter: LETTERS.tenonLength, name: words.tenonLength, value: roughWords(lengths.tenonLength, unit) },
    {
      letter: LETTERS.tenonRelief,
      name: words.shoulderRelief,
      value: sizeWords(lengths.tenonReliefDiameter, unit),
      note: reliefNote(lengths, unit),
    },
    {
      letter: LETTERS.tenonChamfer,
      name: words.endChamfer,
      value: sizeWords(lengths.tenonChamferDiameter, unit),
      note: words.toRoot,
    },
  ];
};

export const dialWords = ({ dial }: PlannedPass): string | null =>
  dial && words.dialTurns(dial.wholeTurns, dial.marks, writeTurns(dial.turns, { places: 2 }));

export const threadRows = ({ plan }: CalculatedBox, { pitch, threads }: Plan, unit: Unit): SizeRow[] => {
  const { lengths, sizes, passes, fit, clearance } = plan;
  return [
    {
      name: words.threadLength,
      value: roughWords(lengths.thread, unit),
      note: words.threads(threads, pitch.text),
    },
    {
      name: words.threadDepth,
      value: sizeWords(sizes.depth, unit),
      note: words.passes(
        passes.map((pass) => words.pass(sizeWords(pass.depth, unit), dialWords(pass))).join(words.passJoin),
      ),
    },
    {
      name: words.crank,
      value: words.crankOf(writeTurns(lengths.recessTurns), writeTurns(lengths.tenonTurns)),
      note: words.crankNote,
    },
    {
      name: words.clearance,
      value: amountWords(clearance.clearance, unit),
      note: words.clearanceFrom[clearance.from],
    },
    { name: words.season, value: amountWords(clearance.budget.oval, unit), note: words.seasonOf },
    ...(clearance.budget.mismatch > 0
      ? [{ name: words.lean, value: amountWords(clearance.budget.mismatch, unit), note: words.leanOf }]
      : []),
    { name: words.endPlay, value: amountWords(fit.endPlay, unit) },
    {
      name: words.engagement,
      value: words.engagementOf(sizes.percentOf75),
      note: words.engagementBasis,
    },
  ];
};

export const blankRows = ({ plan }: CalculatedBox, unit: Unit): SizeRow[] => {
  const { blank, recessReliefDiameter } = plan.lengths;
  const { wall, least } = plan.wall;
  const cost: SizeRow = {
    name: words.blankCost,
    value: roughWords(blank.cost, unit),
    note: words.blankParts(roughWords(blank.tenon, unit), roughWords(blank.kerfs, unit)),
  };
  return wall === null
    ? [
        cost,
        {
          name: words.outsideLeast,
          value: roughWords(recessReliefDiameter + 2 * least, unit),
          note: words.outsideWhy(roughWords(least, unit)),
        },
      ]
    : [
        cost,
        { name: words.wall, value: roughWords(wall, unit), note: words.wallLeast(roughWords(least, unit)) },
      ];
};

export const slideRows = ({ plan: { places } }: CalculatedBox, unit: Unit): SizeRow[] => [
  { name: words.tenonPlace, value: roughWords(places.tenon, unit), note: words.placeNote },
  { name: words.recessPlace, value: roughWords(places.recess, unit) },
  places.travel === null
    ? { name: words.travel, value: '—', note: words.travelUnknown }
    : { name: words.travel, value: roughWords(places.travel, unit) },
];
