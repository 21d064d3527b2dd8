import { seededRandom } from '../../src/domain/random.ts';
import type { Millimetres } from '../../src/domain/units/brands.ts';
import { type Colour, png } from './png.ts';
import type { BoxKind } from './scenario.ts';

/** What a picture of a box is drawn from: its sizes in mm, and its woods. */
export interface Sitter {
  readonly kind: BoxKind['name'];
  readonly outside: Millimetres;
  readonly height: Millimetres;
  readonly tenon: Millimetres;
  readonly pitch: Millimetres;
  readonly threads: number;
  readonly tenonIn: 'lid' | 'base';
  readonly lidWood: string;
  readonly baseWood: string;
}

/** Pixels each way. */
export const SIDE = 480;
/** Tones in a whole. Few, so that a picture stays small. */
const TONES = 32;

const WOODS: Readonly<Record<string, Colour>> = {
  'Maple, sugar': [224, 196, 152],
  'Cherry, black': [178, 108, 66],
  'Walnut, black': [98, 68, 48],
  'Beech, American': [208, 166, 122],
  'Holly, American': [232, 222, 200],
  'Boxwood, European': [220, 184, 104],
  Apple: [186, 126, 88],
  'hedge-pear': [204, 142, 108],
  'Yellow-poplar': [190, 184, 128],
};
const WALL: Colour = [206, 208, 202];
const BENCH: Colour = [128, 112, 94];
/** Where the bench begins, and where what stands on it stands, from the top. */
const EDGE = 0.62 * SIDE;
const FOOT = 0.9 * SIDE;

/** Half width of a piece, as a share of the widest, by the share of its height from the bottom. */
type Outline = (up: number) => number;
const round = (up: number, from: number): number =>
  up < from ? 1 : Math.sqrt(Math.max(0, 1 - ((up - from) / (1 - from)) ** 2));

/** Where a jar's knob begins on its lid. */
const KNOB = 0.62;

/** How each family is turned: body, lid, and the share of the height that is lid. */
const TURNED: Readonly<Record<BoxKind['name'], { lid: number; ofBase: Outline; ofLid: Outline }>> = {
  'Spice jar': {
    lid: 0.3,
    ofBase: (up) => 0.86 + 0.14 * Math.sin(Math.PI * (0.15 + 0.6 * up)),
    ofLid: (up) => (up > KNOB ? 0.2 * round(up, 0.8) : Math.max(0.12, 0.96 * round(up / KNOB, 0.15))),
  },
  'Tea caddy': {
    lid: 0.22,
    ofBase: (up) => 0.92 + 0.06 * up,
    ofLid: (up) => (up < 0.35 ? 1 : 0.98 * round((up - 0.35) / 0.65, 0.1)),
  },
  'Needle case': {
    lid: 0.36,
    ofBase: (up) => (up < 0.06 ? 0.8 + 3 * up : 0.98 - 0.1 * Math.sin(Math.PI * up)),
    ofLid: (up) => (up < 0.7 ? 0.98 - 0.12 * Math.sin(Math.PI * up) : 0.98 * round((up - 0.7) / 0.3, 0)),
  },
};

interface Piece {
  /** Of the axis, and of the foot; pixels. */
  readonly middle: number;
  readonly foot: number;
  readonly height: number;
  readonly halfWidth: number;
  readonly outline: Outline;
  readonly wood: Colour;
  /** Turns of thread that run round it, or none. */
  readonly grooves: number;
}

const toned = (colour: Colour, by: number): Colour =>
  colour.map((value) =>
    Math.max(0, Math.min(255, Math.round((value * Math.round(by * TONES)) / TONES))),
  ) as unknown as Colour;

/** Long grain runs up a box turned from end grain: streaks by the angle round the axis. */
const streaks = (seed: number): ((across: number) => number) => {
  const random = seededRandom(seed);
  const tones = Array.from({ length: 24 }, () => random.between(0.95, 1.05));
  return (across) =>
    tones[Math.floor(((Math.asin(across) / Math.PI + 0.5) * 0.999 * tones.length) % 24)] ?? 1;
};

/** The pieces as they stand: closed, or the lid beside the body with its thread to be seen. */
const piecesOf = (sitter: Sitter, lidOn: boolean): readonly Piece[] => {
  const { lid, ofBase, ofLid } = TURNED[sitter.kind];
  const { outside, height, tenon, threads, pitch } = sitter;
  const wide = lidOn ? outside : 2.4 * outside;
  const scale = Math.min((0.78 * SIDE) / height, (0.8 * SIDE) / wide);
  const at = lidOn ? [0.5, 0.5] : [0.5 - (0.28 * wide * scale) / SIDE, 0.5 + (0.28 * wide * scale) / SIDE];
  const [baseAt, lidAt] = at.map((share) => share * SIDE) as [number, number];
  const halfWidth = (outside * scale) / 2;
  const woodOf = (wood: string): Colour => WOODS[wood] ?? [190, 150, 110];
  const base: Piece = {
    ...{ middle: baseAt, foot: FOOT, height: (1 - lid) * height * scale, halfWidth, outline: ofBase },
    ...{ wood: woodOf(sitter.baseWood), grooves: 0 },
  };
  const threaded = threads * pitch * scale;
  const raised = lidOn ? base.height : sitter.tenonIn === 'lid' ? threaded : 0;
  const cover: Piece = {
    ...{ middle: lidAt, foot: FOOT - raised, height: lid * height * scale, halfWidth, outline: ofLid },
    ...{ wood: woodOf(sitter.lidWood), grooves: 0 },
  };
  if (lidOn) return [base, cover];
  const under = sitter.tenonIn === 'base' ? base : cover;
  const thread: Piece = {
    ...{ middle: under.middle, height: threaded, halfWidth: (tenon * scale) / 2, outline: () => 1 },
    ...{
      foot: sitter.tenonIn === 'base' ? base.foot - base.height : FOOT,
      wood: under.wood,
      grooves: threads,
    },
  };
  return [base, cover, thread];
};

/** The picture of a box on a bench by a window on the left, as PNG: with its lid on, or lid and body side by side. */
export const drawPhoto = (sitter: Sitter, lidOn: boolean): Uint8Array<ArrayBuffer> => {
  const pieces = piecesOf(sitter, lidOn);
  const grain = streaks(Math.round(sitter.outside * 100));
  const colourOf = (x: number, y: number): Colour => {
    for (const { middle, foot, height, halfWidth, outline, wood, grooves } of pieces) {
      const up = (foot - y) / height;
      if (up < 0 || up >= 1) continue;
      const across = (x - middle) / (halfWidth * outline(up));
      if (!(Math.abs(across) < 1)) continue;
      const light = 0.56 + 0.46 * Math.sqrt(1 - across * across) - 0.22 * across;
      const rim = up > 1 - 1.5 / height || up < 1.5 / height ? 0.8 : 1;
      const groove = grooves > 0 ? 0.82 + 0.18 * Math.cos(2 * Math.PI * (grooves * up + 0.25 * across)) : 1;
      return toned(wood, light * rim * groove * grain(across));
    }
    const shadow = pieces.some(({ middle, foot, halfWidth }) => {
      const [dx, dy] = [
        (x - middle - 0.35 * halfWidth) / (1.35 * halfWidth),
        (y - FOOT) / (0.3 * halfWidth + 4),
      ];
      return foot === FOOT && dx * dx + dy * dy < 1;
    });
    return y < EDGE ? WALL : toned(BENCH, shadow ? 0.6 : 1);
  };
  return png(SIDE, SIDE, colourOf);
};
