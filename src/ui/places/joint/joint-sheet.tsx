import { useSignal } from '@preact/signals';
import { type Conditions, jointUnder, type KnownPair } from '../../../app/joint-view.ts';
import { settings } from '../../../app/session.ts';
import { basisWords, goingOf, goingWords, jointWords as words } from '../../text/joint-words.ts';
import { amountWords } from '../../text/plan-words.ts';
import { BigAnswer } from '../bench/plan-big-answer.tsx';
import { NoPlan } from '../bench/plan-no-plan.tsx';
import { JointNumbers } from './joint-numbers.tsx';
import { JointScale } from './joint-scale.tsx';
import { WhatIf } from './what-if.tsx';

interface Props {
  readonly known: KnownPair;
  readonly pitch: string;
}

/** The joint as it is, and under whatever the sliders say. Nothing here is kept. */
export const JointSheet = ({ known, pitch }: Props) => {
  const { unit } = settings.value;
  const changed = useSignal<Partial<Conditions>>({});
  const conditions = { ...known.asItIs, ...changed.value };
  const isWhatIf = Object.keys(changed.value).length > 0;
  const asItIs = jointUnder(known, known.asItIs);
  const seen = isWhatIf ? jointUnder(known, conditions) : asItIs;
  if (!asItIs.ok) return <NoPlan refusal={asItIs.error} />;
  const whatIf = (
    <WhatIf
      known={known}
      conditions={conditions}
      clearance={seen.ok ? seen.value.clearance : null}
      isChanged={isWhatIf}
      onChange={(change) => {
        changed.value = { ...changed.value, ...change };
      }}
      onReset={() => {
        changed.value = {};
      }}
    />
  );
  if (!seen.ok)
    return (
      <>
        <NoPlan refusal={seen.error} />
        {whatIf}
      </>
    );
  const going = goingOf(seen.value, known);
  const play = (length: number): string => (length > 0 ? amountWords(length, unit) : words.none);
  return (
    <>
      <p class="soft">{basisWords(known)}</p>
      <div class="live">
        <div class={isWhatIf ? 'answer what-if-now' : 'answer'}>
          <div class="play">
            <BigAnswer
              before={isWhatIf ? words.whatIfPlay(play(asItIs.value.endPlay)) : words.endPlay}
              text={play(seen.value.endPlay)}
            />
            <p class={`going ${going}`} role="status">
              {goingWords[going]}
            </p>
          </div>
          <JointScale seen={seen.value} pitch={pitch} going={going} />
        </div>
        <p class="soft">{words.playInHand}</p>
        {whatIf}
      </div>
      <JointNumbers known={known} seen={seen.value} conditions={conditions} />
    </>
  );
};
