import type { Together } from '../../domain/alignment/walls.ts';
import type { JointSeen, KnownPair } from '../../domain/box/joint-under.ts';
import type { Part } from '../../domain/setup/events.ts';
import { degreesFromRad, type Radians, rad } from '../../domain/units/brands.ts';
import { writeDegrees, writePercent } from '../../domain/units/write-quantity.ts';
import { amountWords, sizeWords } from '../bench/plan/words.ts';

type Unit = 'in' | 'mm';

/** How the pair would go together, worst first. */
type Going = 'no-thread' | 'flanks-meet' | 'crests-meet' | 'stiff' | 'right' | 'slack';

export const goingOf = ({ fit, clearance }: JointSeen, { target }: Pick<KnownPair, 'target'>): Going => {
  if (fit.engagedHeight <= 0) return 'no-thread';
  if (clearance <= 0) return 'flanks-meet';
  if (Math.min(fit.tenonCrestGap, fit.recessCrestGap) < 0) return 'crests-meet';
  if (clearance < target.least) return 'stiff';
  return clearance > target.most ? 'slack' : 'right';
};

export const goingWords: Readonly<Record<Going, string>> = {
  'no-thread': 'No thread: the tenon is no bigger than the recess.',
  'flanks-meet': 'It will not go on: the flanks meet.',
  'crests-meet': 'It binds: the crests meet before the flanks do.',
  stiff: 'Stiff.',
  right: 'It goes on easily.',
  slack: 'Slack: it will rock.',
};

const figureName = {
  recess: { diameter: 'bore', depth: 'recess’s cut' },
  tenon: { diameter: 'tenon', depth: 'tenon’s cut' },
} as const;

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** What is measured and what is only planned. */
export const basisWords = ({ isReal }: Pick<KnownPair, 'isReal'>): string => {
  const figures = (['recess', 'tenon'] as const).flatMap((part) =>
    (['diameter', 'depth'] as const).map((what) => ({
      name: figureName[part][what],
      real: isReal[part][what],
    })),
  );
  const [real, planned] = [true, false].map((is) =>
    figures.filter((figure) => figure.real === is).map(({ name }) => name),
  );
  if (!planned?.length) return 'As measured and cut.';
  if (!real?.length) return 'As planned: nothing is measured yet.';
  return `As measured: ${listed(real)}. As planned: ${listed(planned)}.`;
};

export const jointWords = {
  title: 'The joint',
  ofBox: (number: number, name: string) => `Box ${number}${name ? ` ${name}` : ''}`,
  backToBox: 'Back to the box',
  backToBench: 'Back to the bench',
  noBox: 'There is no box on the bench.',
  endPlay: 'End play',
  none: 'none',
  whatIfPlay: (before: string) => `What if. As it is: ${before}`,
  playInHand: 'Push and pull the lid half a turn off its seat: that is what you feel.',
  boreLabel: (size: string) => `bore ${size}`,
  tenonLabel: (size: string) => `tenon ${size}`,
  depthLabel: (depth: string) => `${depth} deep`,
  gapLabel: (gap: string) => `gap ${gap}`,
  playLabel: (play: string) => `play ${play}`,
  glance: (recess: string, tenon: string, play: string) =>
    `Section of the joint to be cut: recess ${recess}, tenon ${tenon}, end play ${play}.`,
  numbers: 'In numbers',
  clearance: 'Clearance',
  clearanceInHand: 'across the diameter, at the tightest place: the lid shifts sideways by so much',
  clearanceMissing:
    'the flanks overlap by so much: deepen either part by half of it, and by half of what shall be free',
  flanksMeetLabel: 'flanks meet',
  engagement: 'Engagement',
  by75: 'of 0.75 H (American National)',
  by62: 'of 0.625 H (Unified, ISO)',
  engaged: 'The teeth reach into each other',
  engagedInHand: 'H is the height of the sharp V',
  tenonCrestGap: 'Gap over the tenon’s crests',
  recessCrestGap: 'Gap under the recess’s crests',
  gapInHand: 'room for fuzz and finish at the tips',
  crestsMeet: 'they meet by so much: shiny tips, ease those',
  leanOf: { recess: 'Lean of the recess’s grooves', tenon: 'Lean of the tenon’s grooves' },
  leanEats: 'The leans eat',
  leanEatsInHand: 'of end play; they never make a taper',
  season: (swing: number) => `With ${swing} points of moisture more or less`,
  seasonInHand: 'clearance left in the worst season, at the tightest place, however the grain lies',
  seasonBinds: 'it binds in the worst season, where the grain lies crossed',
  leansKnown: {
    unread: 'No gap was read in the set-ups: drawn without lean.',
    worst: 'Which way each set-up leaned is not noted: drawn at its worst.',
    oneSetting: 'Both pieces were cut in one setting.',
  },
  walls: {
    cancels: 'On this rig equal leans cancel: the recess is cut on the other wall.',
    doubles: 'On this rig equal leans double: both are cut on the same wall.',
    'worst-case':
      'It is not known which way the dial goes in the recess, so equal leans are taken to double.',
  } satisfies Record<Together, string>,
  whatIf: 'What if',
  whatIfNote: 'Only to look. The record of the box stays as it is.',
  reset: 'Back to how it is',
  sliders: {
    slimmer: 'Clearance, by the tenon’s diameter',
    deeper: 'Depth of the tenon’s cut',
    both: 'Lean of the jig',
    recess: 'Lean of the jig, recess',
    tenon: 'Lean of the jig, tenon',
    moisture: 'Moisture since it was cut',
  },
  together: 'One setting for both pieces',
  slimmerSays: (clearance: string, tenon: string) => `${clearance}: tenon ${tenon}`,
  moistureSays: (points: number, inLine: string, crossed: string) =>
    points === 0
      ? 'as cut'
      : `${Math.abs(points)} ${points > 0 ? 'damper' : 'drier'}: ${inLine}, at 90° ${crossed}`,
  upright: 'square',
  scale: 'Drawn',
  fitWidth: 'To fit',
  lifeSize: 'Life-size',
  times: (count: number) => `${count} times`,
  magnified: (times: number) => `About ${times.toFixed(1)} times life.`,
  magnifiedExactly: (times: number) =>
    times === 1 ? 'Life-size on this screen.' : `${times} times life on this screen.`,
  notCalibrated: 'To see it life-size, hold a card to the glass once.',
  calibrate: 'Reading distance',
  card: {
    title: 'Job card',
    print: 'Print',
    back: 'Back to the joint',
    stop: 'Stop at',
    stopOf: (turns: string) => `${turns} turns`,
    stopNote: 'turns of the crank, about; the dry run counts them',
    stopCounted: 'turns of the crank, as the dry run counted them',
    pass: (at: number, depth: string) => `Pass ${at}, to ${depth}`,
    noDial: 'Tell the rig its cross-slide, and the dial stands here.',
    passesOf: (part: string) => `Passes, ${part.toLowerCase()}: dial from touch-off`,
    blank: '________________',
    measured: 'Measured',
    bore: 'Bore',
    tenon: 'Tenon',
    by: 'CalculatedBox by Lidwright. Geometry and handbook averages, not a guarantee.',
    cautions:
      'Off at the wall while you set up. Face shield on; gloves, rings off. Nobody in the cutter’s line. Slowest speed first. One hand on the crank, one on the jig body, never past the chuck. Never reverse with a screwed-on collet chuck.',
    lidOn: {
      right: 'Lid on: never run in reverse, it unscrews.',
      left: 'Lid on: never run forward, a left-hand thread unscrews.',
    },
  },
} as const;

/** "0.5°", with which end of the jig's axis lies to the rear. */
export const jigLeanWords = (lean: number): string =>
  lean === 0
    ? jointWords.upright
    : `${degrees(Math.abs(lean))}, ${lean > 0 ? 'tailstock' : 'headstock'} end to the rear`;

const degrees = (angle: number): string => writeDegrees(degreesFromRad(rad(angle)), { places: 2 });

/** The lean of a groove, and how well it is known. */
export const grooveLeanWords = (lean: Radians, uncertainty: Radians | null): string =>
  `${degrees(Math.abs(lean))}${uncertainty === null ? '' : ` ± ${degrees(uncertainty)}`}`;

export const percentWords = (percent: number): string => writePercent(percent);

const meets = (gap: number, unit: Unit): string =>
  gap < 0 ? `meeting by ${amountWords(-gap, unit)}` : `of ${amountWords(gap, unit)}`;

/** The whole section in words, for who cannot see it. */
export const sectionWords = (seen: JointSeen, pitch: string, going: Going, unit: Unit): string => {
  const { pair, fit, lean, endPlay } = seen;
  const part = (name: Part): string =>
    `${name} ${sizeWords(pair[name].diameter, unit)}, cut ${sizeWords(pair[name].depth, unit)} deep${
      lean[name] === 0 ? '' : `, its grooves leaning ${degrees(Math.abs(lean[name]))}`
    }`;
  const flanks =
    going === 'no-thread'
      ? ''
      : ` Pulled home, one flank bears over ${sizeWords(fit.engagedHeight, unit)} of height and the end play of ${amountWords(Math.max(0, endPlay), unit)} is at the other.`;
  return `Section of the joint to scale, ${pitch}: ${part('recess')}; ${part('tenon')}. ${goingWords[going]}${flanks} Gap over the tenon’s crests ${meets(fit.tenonCrestGap, unit)}, under the recess’s crests ${meets(fit.recessCrestGap, unit)}.`;
};
