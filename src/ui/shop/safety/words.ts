/** The usual cautions. Short, and the same wherever they are shown. */
export const safetyWords = {
  lidOn: {
    right: 'With a lid on a right-hand thread, never run in reverse: it unscrews.',
    left: 'With a lid on a left-hand thread, never run forward: it unscrews.',
  },
  title: 'Safety',
  first:
    'Follow the instructions of the makers of your lathe, cutter and jig, and your local rules. If you are unsure, ask a qualified instructor. This app’s figures are geometry and handbook averages, not a guarantee.',
  parts: [
    {
      title: 'The cutter',
      rules: [
        'It turns at thousands of revolutions a minute beside your hand. One hand on the crank, the other on the jig body, never past the chuck.',
        'Never above the speed marked on the cutter. Start at the slowest speed, standing out of its line.',
        'Set up with the lathe off at the wall, not only at the switch.',
        'Never reverse with a collet chuck that is only screwed on.',
        'Tighten the draw-bar or collet before every start, and take keys and the spindle pin out.',
      ],
    },
    {
      title: 'You',
      rules: [
        'Face shield. Gloves and rings off. Sleeves and hair back. No corded earphones near a spindle.',
        'Let the spindle stop before you measure, brush or reach.',
        'No tap on this phone is ever wanted while a cutter turns.',
      ],
    },
    {
      title: 'Dust, woods and glue',
      rules: [
        'Thread cutting makes fine dust: extraction and a mask that fits.',
        'Some woods sensitise skin and lungs, tropical ones above all. Stop at the first sign, and ask a doctor.',
        'Thin CA gives off fumes: ventilate, keep it off skin and eyes, let it cure fully before cutting again.',
        'Rags with oil finish can catch fire by themselves: lay them flat to dry outdoors.',
      ],
    },
  ],
} as const;
