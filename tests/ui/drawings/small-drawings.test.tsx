// @vitest-environment happy-dom
import { readFileSync } from 'node:fs';
import { cleanup, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { PlaceMark } from '../../../src/ui/drawings/place-marks.tsx';
import { SeatClock } from '../../../src/ui/drawings/seat-clock.tsx';

afterEach(cleanup);

describe('the seat clock', () => {
  it('is one picture named by its sentence, open where it is told', () => {
    render(<SeatClock open={[1, 2, 12]} label="Open from 12 to 2" />);
    const svg = screen.getByRole('img', { name: 'Open from 12 to 2' });
    const open = [...svg.querySelectorAll('[data-open="true"]')].map((g) => g.getAttribute('data-hour'));
    expect(open).toEqual(['1', '2', '12']);
    expect(svg.querySelectorAll('[data-hour]')).toHaveLength(12);
  });

  it('shows an open hour by its shape: two edges and a dot, not one', () => {
    render(<SeatClock open={[3]} label="Open at 3" />);
    const hour = (n: number) => screen.getByRole('img').querySelector(`[data-hour="${n}"]`);
    const edges = (n: number) => hour(n)?.querySelector('path')?.getAttribute('d')?.match(/M/g)?.length;
    expect(edges(3)).toBe(2);
    expect(edges(4)).toBe(1);
    expect(hour(3)?.querySelector('circle')).toBeTruthy();
    expect(hour(4)?.querySelector('circle')).toBeNull();
  });

  it('has 12 on top and 3 on the right', () => {
    render(<SeatClock open={[12, 3]} label="clock" />);
    const dot = (n: number) => {
      const circle = screen.getByRole('img').querySelector(`[data-hour="${n}"] circle`);
      return [Number(circle?.getAttribute('cx')), Number(circle?.getAttribute('cy'))];
    };
    expect(dot(12)).toEqual([90, 18]);
    expect(dot(3)).toEqual([162, 90]);
  });
});

describe('the place marks', () => {
  it('differ, and leave the speaking to the word beside them', () => {
    const places = ['bench', 'boxes', 'woods', 'findings', 'shop'] as const;
    const { container } = render(
      <div>
        {places.map((place) => (
          <PlaceMark key={place} place={place} />
        ))}
      </div>,
    );
    expect(screen.queryByRole('img')).toBeNull();
    expect(new Set([...container.querySelectorAll('path')].map((p) => p.getAttribute('d'))).size).toBe(5);
  });
});

describe('the icons', () => {
  // PNG: width and height are the two big-endian words that open IHDR, at byte 16 (ISO/IEC 15948, from memory).
  const sizeOf = (name: string) => {
    const png = readFileSync(`public/${name}`);
    expect(png.subarray(1, 4).toString()).toBe('PNG');
    return [png.readUInt32BE(16), png.readUInt32BE(20)];
  };

  it.each([
    ['icon-192.png', 192],
    ['icon-512.png', 512],
    ['icon-maskable-512.png', 512],
    ['apple-touch-icon.png', 180],
  ])('%s is square, of the size its name says', (name, size) => {
    expect(sizeOf(name)).toEqual([size, size]);
  });

  it('keep the mark inside the circle that a mask may cut: radius 40 % of the width', () => {
    // The safe zone of a maskable icon: W3C Web Application Manifest, "maskable" purpose, from memory.
    const svg = readFileSync('public/icon.svg', 'utf8');
    const mark = svg.slice(svg.indexOf('<g'));
    let [x, y, seen] = [256, 256, 0];
    for (const [, command, rest] of mark.matchAll(/([MLHV])([\d. ]+)/g)) {
      const numbers = (rest ?? '').trim().split(/ +/).map(Number);
      if (command === 'H') x = numbers[0] ?? x;
      else if (command === 'V') y = numbers[0] ?? y;
      else [x = 0, y = 0] = numbers;
      seen++;
      expect(Math.hypot(x - 256, y - 256)).toBeLessThanOrEqual(0.4 * 512);
    }
    expect(seen).toBeGreaterThan(20);
  });
});
