import { askedOf } from '../../app/both-ways.ts';
import { boxById } from '../../app/boxes.ts';
import type { RunState } from '../../domain/setup/fold.ts';
import { useLive } from '../parts/use-live.ts';
import { lotAhead, lotAtStep } from '../text/lot-words.ts';

interface Props {
  readonly run: RunState;
  readonly stepKey: string;
  /** What "all done" would tick. */
  readonly stretch: readonly string[];
}

/** At the step that a trial varies: what the lot asks of this box; and before it, where one tap would pass what is to be skipped. */
export default ({ run, stepKey, stretch }: Props) => {
  const asked = useLive(
    async () => {
      const onHand = await boxById(run.boxId);
      return onHand && askedOf(onHand);
    },
    ['both-ways', 'box'],
    `${run.boxId} ${stepKey}`,
  ).value;
  if (!asked) return null;
  const { plan, lot } = asked;
  if (plan.step === stepKey) return <p class="lot">{lotAtStep[lot]}</p>;
  return lot === 'without' && stretch.includes(plan.step) ? <p class="lot">{lotAhead}</p> : null;
};
