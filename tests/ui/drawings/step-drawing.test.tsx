// @vitest-environment happy-dom
import { cleanup, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import table from '../../../shared/procedures.json';
import { DRAWING_KEYS, isDrawingKey } from '../../../src/ui/drawings/drawing-key.ts';
import { loadStepDrawing, StepDrawing } from '../../../src/ui/drawings/step-drawing.tsx';
import { DRAWING_LABELS, describeDrawing } from '../../../src/ui/drawings/words.ts';

afterEach(cleanup);

describe.each(DRAWING_KEYS)('the drawing of %s', (key) => {
  it('is one picture named by its sentence, with its labels in it', async () => {
    const Drawing = await loadStepDrawing(key);
    render(<Drawing />);
    const svg = screen.getByRole('img', { name: describeDrawing[key] });
    const words = [...svg.querySelectorAll('text')].map((t) => t.textContent);
    expect(words).toEqual([...DRAWING_LABELS[key]]);
  });

  it('keeps its name and its lines when the labels are hidden', async () => {
    const Drawing = await loadStepDrawing(key);
    const linesOf = (labelled: boolean) => {
      render(<Drawing labelled={labelled} />);
      const svg = screen.getByRole('img', { name: describeDrawing[key] });
      if (!labelled) expect(svg.querySelectorAll('text')).toHaveLength(0);
      const lines = [...svg.querySelectorAll('path, circle')].map((line) => line.outerHTML);
      cleanup();
      return lines;
    };
    expect(linesOf(false)).toEqual(linesOf(true));
  });

  it('shows what to look at in marking blue, and uses no colour but the palette', async () => {
    const Drawing = await loadStepDrawing(key);
    const { container } = render(<Drawing />);
    const colours = [...container.querySelectorAll('[fill],[stroke]')].flatMap((node) =>
      ['fill', 'stroke'].map((name) => node.getAttribute(name)).filter((value) => value !== null),
    );
    expect(colours).toContain('var(--blue)');
    for (const colour of colours)
      expect(colour).toMatch(/^(none|currentColor|var\(--(ink|sheet|ground|wood|blue|soft|line)\))$/);
  });
});

describe('the set of drawings', () => {
  it('has one for every step of the default procedures', () => {
    const named = Object.values(table.procedures).flatMap((p) => p.steps.map((s) => s.drawing));
    expect(named.length).toBeGreaterThan(20);
    expect(named.filter((name) => !isDrawingKey(name))).toEqual([]);
  });

  it('draws each step differently and says so differently', async () => {
    const drawn = await Promise.all(
      DRAWING_KEYS.map(async (key) => {
        const Drawing = await loadStepDrawing(key);
        const { container } = render(<Drawing labelled={false} />);
        return [...container.querySelectorAll('path')].map((p) => p.getAttribute('d')).join();
      }),
    );
    expect(new Set(drawn).size).toBe(DRAWING_KEYS.length);
    expect(new Set(Object.values(describeDrawing)).size).toBe(DRAWING_KEYS.length);
  });
});

describe('showing a drawing', () => {
  const frame = (container: Element) => container.querySelector('svg')?.getAttribute('viewBox');

  it('holds the place of the same size, silently, until the drawing is there', async () => {
    const { container } = render(<StepDrawing of="gap" />);
    const before = frame(container);
    expect(screen.queryByRole('img')).toBeNull();
    expect(await screen.findByRole('img', { name: describeDrawing.gap })).toBeTruthy();
    expect(frame(container)).toBe(before);
  });

  it('never shows the last step’s drawing under the next step’s words', async () => {
    const { rerender } = render(<StepDrawing of="gap" />);
    await screen.findByRole('img', { name: describeDrawing.gap });
    rerender(<StepDrawing of="cone" />);
    expect(screen.queryByRole('img', { name: describeDrawing.gap })).toBeNull();
    expect(await screen.findByRole('img', { name: describeDrawing.cone })).toBeTruthy();
  });

  it('ends with the last asked for, when two are asked for at once', async () => {
    const { rerender } = render(<StepDrawing of="gap" />);
    rerender(<StepDrawing of="cone" />);
    await screen.findByRole('img', { name: describeDrawing.cone });
    await new Promise((done) => setTimeout(done, 20));
    expect(screen.getAllByRole('img')).toHaveLength(1);
    expect(screen.getByRole('img', { name: describeDrawing.cone })).toBeTruthy();
  });

  it('leaves an empty sheet for a step of the turner’s own', async () => {
    for (const of of ['wipe the bed', 'constructor', null]) {
      const { container } = render(<StepDrawing of={of} />);
      await waitFor(() => expect(frame(container)).toBe('0 0 362 186'));
      expect(screen.queryByRole('img')).toBeNull();
      cleanup();
    }
  });
});
