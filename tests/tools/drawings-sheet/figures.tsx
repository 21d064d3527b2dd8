import { BoxSection } from '../../../src/ui/drawings/box-section/box-section.tsx';
import { JointSection } from '../../../src/ui/drawings/joint-section/joint-section.tsx';
import { PlaceMark } from '../../../src/ui/drawings/place-marks.tsx';
import { SeatClock } from '../../../src/ui/drawings/seat-clock.tsx';
import { ToothMark } from '../../../src/ui/drawings/tooth-marks.tsx';
import type { ToothState } from '../../../src/ui/drawings/tooth-shape.ts';
import { ToothStrip } from '../../../src/ui/drawings/tooth-strip.tsx';

const A = Math.PI / 6;
const degrees = (n: number) => (n * Math.PI) / 180;
const recess = { diameter: 40, depth: 1.595, tipFlat: 0.2 };
const tenon = { diameter: 42.475, depth: 1.595, tipFlat: 0.2 };
const labels = {
  pitch: '10 TPI',
  recess: 'recess 1.575 in',
  tenon: 'tenon 1.672 in',
  recessDepth: 'deep 0.063',
  tenonDepth: 'deep 0.063',
  play: 'play 0.0045',
  tenonCrestGap: 'clear 0.014',
  recessCrestGap: 'clear 0.014',
};
const pair = { pitch: 2.54, halfAngle: A, threads: 3, label: 'section' } as const;

const STATES: ToothState[] = [
  'passed',
  'carried',
  'failed',
  'skipped',
  'closed',
  'reopened',
  'not-needed',
  'now',
  'to-come',
];
const teeth = (count: number) =>
  Array.from({ length: count }, (_, i) => ({
    key: String(i),
    state: STATES[i % STATES.length] as ToothState,
    hold: i % 3 === 0,
  }));

const box = {
  outside: 58,
  lidHeight: 24,
  baseHeight: 44,
  recessIn: 'lid',
  opening: 34,
  floor: 6,
  pitch: 2.54,
  depth: 1.6,
  recess: 40,
  recessDepth: 15.5,
  recessReliefDiameter: 43.7,
  recessChamferDiameter: 43.2,
  tenon: 42.5,
  tenonLength: 11.6,
  tenonReliefDiameter: 38.8,
  tenonChamferDiameter: 39.3,
  reliefWidth: 4,
  insert: null,
} as const;
const letters = {
  recess: 'a',
  recessDepth: 'b',
  recessRelief: 'c',
  recessChamfer: 'd',
  insert: 'e',
  tenon: 'f',
  tenonLength: 'g',
  tenonRelief: 'h',
  tenonChamfer: 'k',
  outside: 'm',
  opening: 'n',
};

export const figures = [
  <ToothStrip teeth={teeth(15)} label="strip" />,
  <ToothStrip teeth={teeth(9)} label="strip" />,
  <div>
    {(['pass', 'fail', 'skip', 'reopened', 'now'] as const).map((kind) => (
      <ToothMark kind={kind} />
    ))}
    {(['bench', 'boxes', 'woods', 'findings', 'shop'] as const).map((place) => (
      <PlaceMark place={place} />
    ))}
  </div>,
  <JointSection {...pair} recess={recess} tenon={tenon} pose="home" labels={labels} />,
  <JointSection {...pair} recess={recess} tenon={tenon} pose="centred" />,
  <JointSection
    {...pair}
    recess={{ ...recess, lean: degrees(6) }}
    tenon={{ ...tenon, lean: degrees(6), diameter: 42.2 }}
    pose="home"
    labels={{ play: 'leans 6 each' }}
  />,
  <JointSection
    {...pair}
    recess={recess}
    tenon={{ ...tenon, strain: 0.012 }}
    pose="home"
    labels={{ tenon: 'swollen' }}
  />,
  <JointSection
    {...pair}
    recess={{ ...recess, depth: 2.4 }}
    tenon={{ ...tenon, depth: 2.4 }}
    pose="home"
    labels={{ tenon: 'cut past the V' }}
  />,
  <SeatClock open={[1, 2, 3]} label="open from 1 to 3" />,
  <BoxSection box={box} letters={letters} label="box" />,
  <BoxSection box={{ ...box, recessIn: 'base', insert: 50 }} letters={letters} label="box" />,
];
