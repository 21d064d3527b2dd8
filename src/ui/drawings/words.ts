import type { DrawingKey } from './drawing-key.ts';

/** What each step drawing shows, for who cannot see it. */
export const describeDrawing: Readonly<Record<DrawingKey, string>> = {
  isolate: 'The plug is pulled out of the wall socket. The collet is empty; the cutter lies on the bed.',
  protect:
    'A head with the face shield down and hair tied back, a bare forearm with the sleeve rolled up, a glove and a ring struck out.',
  board: 'From the side: a board stands flat against the faceplate, its lower edge down on the bed.',
  cone: 'From above: the tailstock cone presses the end of the screw, so the jig lies flat against the board. The crank handle lies aside.',
  'square-banjo':
    'From above: a square with its stock along the bed and its blade along the side of the banjo; the clamp lever is turned tight.',
  'lock-post':
    'From the side: the collar on the post goes down onto the banjo, and the lock lever is turned tight.',
  gap: 'From above: the cone is backed off. A card is tried at the corners between board and jig.',
  'seat-chuck':
    'From above: the jig is pulled back. A cloth wipes nose and shoulder; the chuck goes on until it meets the shoulder.',
  cutter: 'The board is away. The cutter goes into the collet, collet nut and draw-bar are turned tight.',
  'banjo-back':
    'From above: the banjo, with jig, chuck and work, comes back until its side meets the same square, and is clamped.',
  shake:
    'From above, the plug out of the wall: one finger pushes and pulls at the chuck to feel whether anything gives.',
  'pick-up': 'In section, large: the tip of the cutter stands in the old groove and touches neither side.',
  'touch-off':
    'From above, the plug out of the wall: the cutter, turned by hand, just touches the work; the dial is set to zero.',
  'dry-run':
    'From above: the plug is out of the wall. The crank is turned and counted while the work travels past the cutter until its relief is there.',
  clear:
    'From above: chuck key and spindle pin are drawn out; one hand on the crank and one on the jig, both behind the line of the chuck.',
  'bar-grip': 'From above: one straight bar is held in the collet and in the chuck of the jig.',
  'bar-lock':
    'From the side: with the bar held at both ends, the collar goes down onto the banjo and the lock lever is turned tight.',
  'bar-slide': 'From above: the jaws of the chuck are slackened and the bar slides to and fro.',
  'power-on':
    'From above: the turner stands to the side of the line in which the cutter turns; the speed is at its slowest.',
  cranking:
    'From above: one hand turns the crank, the other lies on the body of the jig; neither goes past the chuck.',
};

/** The words inside each drawing, in the order in which the drawing places them; a number says what comes first where it matters. */
export const DRAWING_LABELS: Readonly<Record<DrawingKey, readonly string[]>> = {
  isolate: ['plug out', 'spindle still', 'cutter out'],
  protect: ['shield on', 'hair back', 'sleeve up', 'gloves, rings off'],
  board: ['flat', 'edge on the bed', 'faceplate'],
  cone: ['2 flat', '3 nip', '1 handle off'],
  'square-banjo': ['1 no gap', '2 clamp', 'bed'],
  'lock-post': ['1 collar down', '2 lock', 'banjo'],
  gap: ['2 card in here?', '1 off', '3 and here?'],
  'seat-chuck': ['3 chuck seated', '2 wipe', '1 jig pulled back'],
  cutter: ['2 cutter in', '3 draw-bar tight', '3 collet tight', '1 board out'],
  'banjo-back': ['same square', '1 bring it back', '2 clamp'],
  shake: ['does it give?', 'one finger'],
  'pick-up': ['free', 'free', 'old groove', 'cutter tip'],
  'touch-off': ['2 tick', '1 by hand', '3 zero'],
  'dry-run': ['power off', 'count', 'to the relief'],
  clear: ['hands this side', 'key out', 'pin out'],
  'bar-grip': ['gripped', 'gripped', 'one true bar'],
  'bar-lock': ['1 collar down', '2 lock', 'bar'],
  'bar-slide': ['1 slackened', '2 still slides?'],
  'power-on': ['cutter’s line', 'slowest', 'stand here'],
  cranking: ['crank', 'on the body', 'never past'],
};
