import type { Confidence } from '../../../domain/diagnosis/diagnosis.ts';
import { toothShape } from '../../drawings/tooth-shape.ts';
import { confidenceWord } from './advice-words.ts';

const TEETH: Readonly<Record<Confidence, number>> = { likely: 3, possibly: 2, 'hard-to-say': 1 };

/** How likely the first cause is: a word, and one to three teeth. */
export const Likelihood = ({ of }: { of: Confidence }) => (
  <p class="likelihood">
    {confidenceWord[of]}
    <svg width={TEETH[of] * 20} height="18" viewBox={`0 0 ${TEETH[of] * 20} 18`} aria-hidden="true">
      {Array.from({ length: TEETH[of] }, (_, at) => (
        <path key={at} d={toothShape('passed', at * 20, 18, 19).d} fill="var(--ink)" />
      ))}
    </svg>
  </p>
);
