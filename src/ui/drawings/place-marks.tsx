/** The small drawings of the bottom bar, in the kit's own line: a word always stands beside them. */
const MARKS = {
  // The lathe from the side: headstock with chuck, tailstock with cone.
  bench: 'M2 22h24M5 22v4M23 22v4M3 22V4h7v18M10 7h4v8h-4M17 11l5-3v6zM26 22V6h-4v16',
  // A box with its lid lifted off the tenon.
  boxes: 'M4 2h20v7H4zM8 19v-6h12v6M10 19l2-6M14 19l2-6M4 19h20v7H4z',
  // The end of a log: rings about a pith that is not in the middle, and a check.
  woods: 'M14 2.5a11.5 11.5 0 1 0 .1 0zM13 7a7.5 7.5 0 1 0 .1 0zM12.5 11.5a3.5 3.5 0 1 0 .1 0zM16 14.5l9-3',
  // Intervals, each with a tooth at its estimate.
  findings: 'M2 8h16M7 8l3-5 3 5M9 17h17M15 17l3-5 3 5M4 26h14M8 26l3-5 3 5',
  // The jig from above: body on its post, lead-screw, crank.
  shop: 'M3 7h11v13H3zM8.5 13.5h.1M14 11h8v5h-8M17 16l1-5M20 16l1-5M22 9h3v16h-3z',
} as const;

type PlaceName = keyof typeof MARKS;

export const PlaceMark = ({ place }: { place: PlaceName }) => (
  <svg
    viewBox="0 0 28 28"
    width="28"
    height="28"
    fill="none"
    stroke="currentColor"
    stroke-width="2"
    stroke-linejoin="round"
    stroke-linecap="round"
    aria-hidden="true"
  >
    <path d={MARKS[place]} />
  </svg>
);
