import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import { settings } from '../../../app/session.ts';
import { turnsToStop } from '../../../domain/box/cuts.ts';
import type { Hand } from '../../../domain/box/records.ts';
import { cuttingSense } from '../../../domain/joint/cutting-sense.ts';
import type { DialTarget } from '../../../domain/joint/dial.ts';
import type { RunState } from '../../../domain/setup/fold.ts';
import type { Millimetres } from '../../../domain/units/brands.ts';
import { turns } from '../../../domain/units/brands.ts';
import { writeLength, writeTurns } from '../../../domain/units/write-quantity.ts';
import { StepDrawing } from '../../drawings/step-drawing.tsx';
import { useAct } from '../../parts/use-act.ts';
import { useAtTheLathe, useSpoken } from '../../set-up/use-at-the-lathe.ts';
import { dialTargetWords } from '../../words/dial.ts';
import { CutTurns } from './turns.tsx';
import { cutWords as words } from './words.ts';

/** A second tap within this time is the same tap of a trembling hand: no pass is cut so soon. */
const DEAF_MS = 2000;

interface Props {
  /** The whole of it for a screen reader, the least of it for a far eye. */
  readonly title: string;
  readonly short: string;
  readonly run: RunState;
  readonly hand: Hand;
  /** Where this pass stops, radial from touch-off. */
  readonly depth: Millimetres;
  readonly dial: DialTarget | null;
  /** Said before the cut. */
  readonly before: string;
  /** What is said by tapping, and the same for a narrow glass or a far eye. */
  readonly act: string;
  readonly actShort: string;
  /** Given the id of the pass, the same in a retry. */
  readonly onCut: (id: string) => Promise<boolean>;
  readonly onMoved: () => void;
  readonly onUndo: (() => void) | null;
  readonly onList: () => void;
  readonly children?: ComponentChildren;
}

/** What must be read before the cutter turns, by size of what matters: the stop, the dial, what the crank will do. */
export const CutScreen = (props: Props) => {
  const {
    title,
    short,
    run,
    hand,
    depth,
    dial,
    before,
    act,
    actShort,
    onCut,
    onMoved,
    onUndo,
    onList,
    children,
  } = props;
  const { unit } = settings.value;
  const deafUntil = useRef(0);
  useAtTheLathe();

  const stop = turnsToStop(run);
  const stopWords = stop === null ? null : writeTurns(turns(stop));
  const target = dial ? dialTargetWords(dial) : writeLength(depth, unit);
  useSpoken(`${words.stopSpoken(stopWords)} ${words.dialSpoken(target)}`);
  const sense = cuttingSense({ part: run.part, hand, direction: 'in', lathe: 'forward' });

  const { busy, act: cut } = useAct(async (id) => {
    if (performance.now() < deafUntil.current) return false;
    deafUntil.current = performance.now() + DEAF_MS;
    const saved = await onCut(id);
    if (!saved) deafUntil.current = 0;
    return saved;
  });

  return (
    <section class="set-up cutting with-depth" aria-label={title}>
      <header>
        <button type="button" disabled={!onUndo} onClick={() => onUndo?.()}>
          {words.undo}
        </button>
        <b aria-hidden="true">{short}</b>
        <button type="button" onClick={onList}>
          {words.list}
        </button>
      </header>
      {stopWords === null ? (
        <CutTurns run={run} />
      ) : (
        <p class="stop-at">
          <span class="at">{words.stopAt}</span> <b>{stopWords}</b> <span>{words.turns}</span>
        </p>
      )}
      <p class="dial-at">
        <span class="what">{dial ? words.dialAndDepth(writeLength(depth, unit)) : words.depth}</span>{' '}
        <b>{target}</b>
      </p>
      {children}
      <div class="mind">
        <p class="sense">{words.sense[sense]}</p>
        <p class="before">{before}</p>
      </div>
      <div class="drawing-slot">
        <StepDrawing of="cranking" />
      </div>
      <div class="acts">
        <button
          type="button"
          class="go"
          disabled={busy}
          data-pressed={busy ? true : undefined}
          aria-label={act}
          onClick={() => cut()}
        >
          <span class="long">{act}</span>
          <span class="short">{actShort}</span>
        </button>
        <button type="button" class="moved" aria-label={words.moved} onClick={onMoved}>
          <span class="long">{words.moved}</span>
          <span class="short">{words.movedShort}</span>
        </button>
      </div>
    </section>
  );
};
