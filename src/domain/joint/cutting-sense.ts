/** How a piece is cranked past the cutter. */
export interface Cranked {
  readonly part: 'recess' | 'tenon';
  /** Hand of the jig's lead screw, and so of the thread. */
  readonly hand: 'right' | 'left';
  /** In: toward the headstock, the cutter going deeper into the piece. */
  readonly direction: 'in' | 'out';
  /** Forward: the top of the spindle comes toward the turner. */
  readonly lathe: 'forward' | 'reverse';
}

/**
 * Whether the tooth climbs (moves along with the surface: it pulls the crank) or cuts conventionally (moves against it: it pushes back).
 * Derived from surface velocities at the contact, about the axis that points to the tailstock: forward turns +1; a right-hand screw turns the
 * way it travels, so cranking in (toward the headstock) is -1. A tenon's contact lies between the two axes, so there equal senses of
 * rotation meet head on; in a recess both axes lie on the same side of it, so equal senses run along. Exact.
 */
export const cuttingSense = ({ part, hand, direction, lathe }: Cranked): 'climb' | 'conventional' => {
  const travel = direction === 'in' ? -1 : 1;
  const work = hand === 'right' ? travel : -travel;
  const cutter = lathe === 'forward' ? 1 : -1;
  const cutterSide = part === 'tenon' ? -1 : 1;
  return work * cutter * cutterSide > 0 ? 'climb' : 'conventional';
};
