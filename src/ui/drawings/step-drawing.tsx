import './drawings.css';
import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { type DrawingKey, isDrawingKey } from './drawing-key.ts';
import type { StepDrawingProps } from './kit/sheet.tsx';

type Drawing = ComponentType<StepDrawingProps>;

/** Each drawing is a chunk of its own; the map is static so that the bundler and the precache see them all. */
const STEPS: Readonly<Record<DrawingKey, () => Promise<{ default: Drawing }>>> = {
  isolate: () => import('./steps/isolate.tsx'),
  protect: () => import('./steps/protect.tsx'),
  board: () => import('./steps/board.tsx'),
  cone: () => import('./steps/cone.tsx'),
  'square-banjo': () => import('./steps/square-banjo.tsx'),
  'lock-post': () => import('./steps/lock-post.tsx'),
  gap: () => import('./steps/gap.tsx'),
  'seat-chuck': () => import('./steps/seat-chuck.tsx'),
  cutter: () => import('./steps/cutter.tsx'),
  'banjo-back': () => import('./steps/banjo-back.tsx'),
  shake: () => import('./steps/shake.tsx'),
  'pick-up': () => import('./steps/pick-up.tsx'),
  'touch-off': () => import('./steps/touch-off.tsx'),
  'dry-run': () => import('./steps/dry-run.tsx'),
  clear: () => import('./steps/clear.tsx'),
  'bar-grip': () => import('./steps/bar-grip.tsx'),
  'bar-lock': () => import('./steps/bar-lock.tsx'),
  'bar-slide': () => import('./steps/bar-slide.tsx'),
  'power-on': () => import('./steps/power-on.tsx'),
  cranking: () => import('./steps/cranking.tsx'),
};

export const loadStepDrawing = async (key: DrawingKey): Promise<Drawing> => (await STEPS[key]()).default;

/**
 * The drawing that a step of a procedure names; an empty sheet of the same size until it is there, if it cannot be had,
 * and for a step of the turner's own that has none.
 */
export const StepDrawing = ({ of, labelled }: StepDrawingProps & { of: string | null }) => {
  const [shown, show] = useState<{ key: string; Drawing: Drawing } | null>(null);
  useEffect(() => {
    if (of === null || !isDrawingKey(of)) return;
    let wanted = true;
    loadStepDrawing(of).then(
      (Drawing) => wanted && show({ key: of, Drawing }),
      () => wanted && show(null),
    );
    return () => {
      wanted = false;
    };
  }, [of]);
  if (!shown || shown.key !== of) return <svg class="drawing" viewBox="0 0 362 186" aria-hidden="true" />;
  return <shown.Drawing labelled={labelled} />;
};
