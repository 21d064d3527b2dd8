import { toothShape } from './tooth-shape.ts';

const MARKED = { pass: 'passed', fail: 'failed', skip: 'skipped', reopened: 'reopened', now: 'now' } as const;

/** The tooth that a button makes, beside its word: it takes the button's colour and says nothing by itself. */
export const ToothMark = ({ kind, size = 34 }: { kind: keyof typeof MARKED; size?: number }) => {
  const shape = toothShape(MARKED[kind], 3, 30, 28);
  const outlined = kind !== 'pass';
  return (
    <svg viewBox="0 0 34 34" width={size} height={size} aria-hidden="true" data-mark={kind}>
      <path
        d={kind === 'now' ? toothShape('now', 8, 30, 18).d : shape.d}
        fill={outlined ? 'none' : 'currentColor'}
        stroke="currentColor"
        stroke-width={outlined ? 4 : 2}
        stroke-linejoin="round"
      />
    </svg>
  );
};
