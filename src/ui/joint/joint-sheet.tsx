import { type Signal, useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { jointAsked } from '../../app/joint-asked.ts';
import { type Conditions, type JointSeen, jointUnder, type KnownPair } from '../../domain/box/joint-under.ts';
import { NoPlan } from '../bench/plan/no-plan.tsx';
import { JointNumbers } from './joint-numbers.tsx';
import { JointScale } from './joint-scale.tsx';
import { PlayNow } from './play-now.tsx';
import { WhatIf } from './what-if.tsx';
import { basisWords, jointWords as words } from './words.ts';

interface Props {
  readonly known: KnownPair;
  readonly pitch: string;
}

/** The joint as it is, and under whatever the sliders say. Nothing here is kept. */
export const JointSheet = ({ known, pitch }: Props) => {
  const changed = useSignal<Partial<Conditions>>({});
  const asItIs = useMemo(() => jointUnder(known, known.asItIs), [known]);
  return asItIs.ok ? (
    <Asked known={known} pitch={pitch} asItIs={asItIs.value} changed={changed} />
  ) : (
    <NoPlan refusal={asItIs.error} />
  );
};

interface AskedProps extends Props {
  readonly asItIs: JointSeen;
  readonly changed: Signal<Partial<Conditions>>;
}

/** Drawn anew as a whole only when what if begins or ends: a move of a slider is for the parts that show it. */
const Asked = ({ known, pitch, asItIs, changed }: AskedProps) => {
  const asked = useMemo(() => jointAsked(known, asItIs, changed), [known, asItIs, changed]);
  const { refusal, isWhatIf, seen } = asked;
  const whatIf = <WhatIf known={known} asked={asked} changed={changed} />;
  if (refusal.value)
    return (
      <>
        <NoPlan refusal={refusal.value} />
        {whatIf}
      </>
    );
  return (
    <>
      <p class="soft">{basisWords(known)}</p>
      <div class="at-hand">
        <div class={isWhatIf.value ? 'play-and-section what-if-now' : 'play-and-section'}>
          <PlayNow known={known} asItIs={asItIs} asked={asked} />
          <JointScale known={known} seen={seen} pitch={pitch} />
        </div>
        <p class="soft">{words.playInHand}</p>
        {whatIf}
      </div>
      <JointNumbers known={known} asItIs={asItIs} changed={changed} />
    </>
  );
};
