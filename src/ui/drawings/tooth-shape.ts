/** The tooth of a step in the thread strip. Every state has a shape of its own; colour only repeats it. */
export type ToothState =
  | 'passed'
  | 'failed'
  | 'skipped'
  | 'carried'
  | 'reopened'
  | 'closed'
  | 'not-needed'
  | 'now'
  | 'to-come';

interface ToothShape {
  readonly d: string;
  /** Inside: solid colour, the sheet showing through an outline, or nothing. */
  readonly fill: 'solid' | 'sheet' | 'none';
  readonly colour: string;
  readonly stroke: number;
}

/** Height of a 60 degree tooth on a base of 1. */
const RISE = Math.sqrt(3) / 2;

const COLOUR: Readonly<Record<ToothState, string>> = {
  passed: 'var(--right)',
  carried: 'var(--right)',
  failed: 'var(--chipped)',
  skipped: 'var(--missing)',
  closed: 'var(--missing)',
  reopened: 'var(--ink)',
  now: 'var(--blue)',
  'not-needed': 'var(--line)',
  'to-come': 'var(--line)',
};

const round = (value: number): string => String(Math.round(value * 100) / 100);

/** A path through points given in the tooth's own frame: `u` across its base from 0 to 1, `v` up from its root to 1 at the point. */
const through =
  (left: number, base: number, width: number) =>
  (...points: readonly (readonly [u: number, v: number])[]): string =>
    points
      .map(([u, v], i) => `${i ? 'L' : 'M'}${round(left + u * width)} ${round(base - v * RISE * width)}`)
      .join('');

/** The tooth of one step: `width` is its pitch, `left` and `base` its root on the left, both in px. */
export const toothShape = (state: ToothState, left: number, base: number, width: number): ToothShape => {
  const path = through(left, base, width);
  const colour = COLOUR[state];
  switch (state) {
    case 'passed':
      return { d: `${path([0, 0], [0.5, 1], [1, 0])}Z`, fill: 'solid', colour, stroke: 2 };
    case 'carried':
      return {
        d: `${path([0.36, 0.72], [0.5, 1], [0.64, 0.72])}Z${path([0.2, 0.4], [0.3, 0.6], [0.7, 0.6], [0.8, 0.4])}Z${path([0, 0], [0.14, 0.28], [0.86, 0.28], [1, 0])}Z`,
        fill: 'solid',
        colour,
        stroke: 0,
      };
    case 'failed':
      return {
        d: `${path([0, 0], [0.32, 0.64], [0.5, 0.26], [0.68, 0.64], [1, 0])}Z`,
        fill: 'solid',
        colour,
        stroke: 2,
      };
    case 'reopened':
      return {
        d: `${path([0.06, 0.06], [0.29, 0.56], [0.71, 0.56], [0.94, 0.06])}Z`,
        fill: 'sheet',
        colour,
        stroke: 3,
      };
    case 'now':
      return { d: `${path([-0.04, 0], [0.5, 1.55], [1.04, 0])}Z`, fill: 'sheet', colour, stroke: 4 };
    case 'skipped':
      return { d: path([0.04, 0.06], [0.96, 0.06]), fill: 'none', colour, stroke: 5 };
    case 'closed':
      return {
        d: path([0.08, 0.06], [0.36, 0.06]) + path([0.64, 0.06], [0.92, 0.06]),
        fill: 'none',
        colour,
        stroke: 5,
      };
    case 'not-needed':
      return { d: path([0, 0], [1, 0]), fill: 'none', colour, stroke: 2 };
    case 'to-come':
      return { d: path([0, 0], [0.5, 1], [1, 0]), fill: 'none', colour, stroke: 2 };
  }
};
