import { settings } from '../../../app/session.ts';
import type { CalculatedBox } from '../../../domain/box/calculate.ts';
import type { Plan } from '../../../domain/box/records.ts';
import { BoxSection } from '../../drawings/box-section/box-section.tsx';
import { LETTERS } from './rows.ts';
import { sizeWords, planWords as words } from './words.ts';

/** Floor, body and hollow are the turner's own affair: these only make the picture look like a box. */
const FLOOR_PITCHES = 2.5;
const BODY_PER_OUTSIDE = 0.5;
const HOLLOW_OF_TENON = 0.8;

/** The box in section, its joint to scale. */
export const PlanSection = ({ calculated, plan }: { calculated: CalculatedBox; plan: Plan }) => {
  const { input, plan: joint, target } = calculated;
  const { lengths, wall, sizes } = joint;
  const { unit } = settings.value;
  const outside = plan.outside?.mm ?? lengths.recessReliefDiameter + 2 * wall.least;
  const floor = FLOOR_PITCHES * input.pitch;
  const withRecess = lengths.recessDepth + floor;
  const withTenon = BODY_PER_OUTSIDE * outside + floor;
  const lidHasRecess = plan.recessIn === 'lid';
  const hasRing = plan.insert?.in === plan.recessIn;
  return (
    <BoxSection
      label={words.drawing(sizeWords(input.recess, unit), sizeWords(target.tenon, unit))}
      letters={LETTERS}
      box={{
        outside,
        floor,
        lidHeight: lidHasRecess ? withRecess : withTenon / 2,
        baseHeight: lidHasRecess ? withTenon : withTenon / 2 + withRecess,
        recessIn: plan.recessIn,
        opening: HOLLOW_OF_TENON * lengths.tenonReliefDiameter,
        pitch: input.pitch,
        depth: sizes.depth,
        recess: input.recess,
        recessDepth: lengths.recessDepth,
        recessReliefDiameter: lengths.recessReliefDiameter,
        recessChamferDiameter: lengths.recessChamferDiameter,
        tenon: target.tenon,
        tenonLength: lengths.tenonLength,
        tenonReliefDiameter: lengths.tenonReliefDiameter,
        tenonChamferDiameter: lengths.tenonChamferDiameter,
        reliefWidth: lengths.reliefWidth,
        insert: hasRing ? (outside + lengths.recessReliefDiameter) / 2 : null,
      }}
    />
  );
};
