import { settings } from '../../app/session.ts';
import type { CalculatedBox } from '../../domain/box/calculate.ts';
import { pairToBe } from '../../domain/box/pair.ts';
import { fitOf } from '../../domain/joint/fit.ts';
import { HALF_ANGLE } from '../../domain/joint/profile.ts';
import { amountWords, sizeWords } from '../bench/plan/words.ts';
import { JointSection } from '../drawings/joint-section/joint-section.tsx';
import { jointWords as words } from './words.ts';

interface Props {
  readonly calculated: CalculatedBox;
  readonly pitch: string;
}

/** The section of the joint that the plan and what is measured so far will make, without lean or season; nothing for a pair that has no thread. */
const JointGlance = ({ calculated, pitch }: Props) => {
  const { unit } = settings.value;
  const pair = pairToBe(calculated);
  const fit = pair.ok ? fitOf(pair.value) : pair;
  if (!pair.ok || !fit.ok || fit.value.engagedHeight <= 0) return null;
  const { recess, tenon } = pair.value;
  const [bore, peg] = [sizeWords(recess.diameter, unit), sizeWords(tenon.diameter, unit)];
  const play = amountWords(fit.value.endPlay, unit);
  return (
    <JointSection
      threads={3}
      pitch={pair.value.pitch}
      halfAngle={HALF_ANGLE}
      recess={recess}
      tenon={tenon}
      pose="home"
      label={words.glance(bore, peg, play)}
      labels={{
        pitch,
        recess: words.boreLabel(bore),
        tenon: words.tenonLabel(peg),
        recessDepth: words.depthLabel(sizeWords(recess.depth, unit)),
        tenonDepth: words.depthLabel(sizeWords(tenon.depth, unit)),
        play: words.playLabel(play),
      }}
    />
  );
};

export default JointGlance;
