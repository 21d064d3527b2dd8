// @vitest-environment happy-dom
import { render, screen } from '@testing-library/preact';
import { expect, it, vi } from 'vitest';
import { loadStepDrawing, StepDrawing } from '../../../src/ui/drawings/step-drawing.tsx';
import { describeDrawing } from '../../../src/ui/drawings/words.ts';

const gate = vi.hoisted(() => {
  let open = (): void => {};
  const opened = new Promise<void>((done) => {
    open = done;
  });
  return { open: () => open(), opened };
});

vi.mock('../../../src/ui/drawings/steps/shake.tsx', async (original) => {
  await gate.opened;
  return original();
});

it('is not put out by an earlier step’s drawing that comes in late', async () => {
  await loadStepDrawing('cone');
  const { rerender } = render(<StepDrawing of="shake" />);
  rerender(<StepDrawing of="cone" />);
  await screen.findByRole('img', { name: describeDrawing.cone });
  gate.open();
  await import('../../../src/ui/drawings/steps/shake.tsx');
  await new Promise((done) => setTimeout(done, 20));
  expect(screen.getByRole('img', { name: describeDrawing.cone })).toBeTruthy();
});
