/** How a piece is cranked past the cutter. */
interface Cranked {
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
 * Derived from surface velocities at the contact, with senses of rotation about the axis that points to the tailstock: the lathe running
 * forward turns forward; a right-hand screw turns the way it travels, so cranking out (toward the tailstock) is forward too. A tenon's contact lies between the two axes, so there equal senses of
 * rotation meet head on; in a recess both axes lie on the same side of it, so equal senses run along. Exact.
 */
export const cuttingSense = ({ part, hand, direction, lathe }: Cranked): 'climb' | 'conventional' => {
  const isWorkForward = (direction === 'out') === (hand === 'right');
  const turnAlike = isWorkForward === (lathe === 'forward');
  return turnAlike === (part === 'recess') ? 'climb' : 'conventional';
};
