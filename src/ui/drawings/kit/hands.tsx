/** Hands in outline. Each takes an SVG transform; the tip or the grip is at 0, 0. */

/** One finger out, pointing left; the cuff is on the right. */
export const PointingHand = ({ at }: { at: string }) => (
  <g transform={at} fill="var(--sheet)">
    <path d="M84-14h18v42h-18z" />
    <path d="M5-6a6 6 0 0 0 0 12l27 1c-6 2-6 9 0 10c-4 3-2 9 4 9c-1 4 2 8 8 7l18-5l22 0v-38l-20-1c-10 0-16 4-24 4z" />
    <path d="M32 7l10 1M32 17l9 1M36 26l8 0M64-4c-8 0-14 4-18 4l-14 1" stroke-width="1.5" />
  </g>
);

/** A closed hand seen on its back, arm to the right; it covers a knob about 0, 0. */
export const Fist = ({ at }: { at: string }) => (
  <g transform={at} fill="var(--sheet)">
    <path d="M36-14h14v28h-14z" />
    <path d="M-14-11a6 6 0 0 1 6-7h14c8 0 10 3 16 5h14v26h-14c-6 2-8 5-16 5h-14a6 6 0 0 1-6-7z" />
    <path d="M-14-8h11M-14 0h12M-14 8h11M-3-16v32" stroke-width="1.5" />
  </g>
);

/** An open hand laid flat, fingers to the left, arm to the right; the fingertips are at x 0. */
export const FlatHand = ({ at }: { at: string }) => (
  <g transform={at} fill="var(--sheet)">
    <path d="M66-12h16v30h-16z" />
    <path d="M8-19h24c8 0 18 4 34 8v28h-14c-8 6-16 14-24 13c-5-1-4-7 0-8l6-5l-28-1a4.5 4.5 0 0 1 0-9h-3a4.5 4.5 0 0 1 0-9h1a4.5 4.5 0 0 1 0-9h3a4.5 4.5 0 0 1 1-0z" />
    <path d="M6 7h24M3-2h26M4-10h26" stroke-width="1.5" />
  </g>
);
