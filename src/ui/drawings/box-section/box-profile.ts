/** A screw-lidded box as plain sizes, mm. */
export interface BoxSizes {
  readonly outside: number;
  /** Overall height of each piece, its tenon not counted. */
  readonly lidHeight: number;
  readonly baseHeight: number;
  readonly recessIn: 'lid' | 'base';
  /** Bore of the box inside, and the wood left at floor and top. */
  readonly opening: number;
  readonly floor: number;
  readonly pitch: number;
  readonly depth: number;
  readonly recess: number;
  readonly recessDepth: number;
  readonly recessReliefDiameter: number;
  readonly recessChamferDiameter: number;
  readonly tenon: number;
  readonly tenonLength: number;
  readonly tenonReliefDiameter: number;
  readonly tenonChamferDiameter: number;
  readonly reliefWidth: number;
  /** Outside diameter of a ring of a third wood that carries the recess, or none. */
  readonly insert: number | null;
}

/** Out from the axis, and from the mouth or shoulder: into the recess's piece for it, towards the mate for the tenon's. */
export type Point = readonly [r: number, s: number];

/** Grooves down a turned face from `from` to `to`: `way` 1 cuts outward, -1 inward. The other half of a section is half a turn on. */
const grooves = (
  face: number,
  from: number,
  to: number,
  { pitch, depth }: BoxSizes,
  way: 1 | -1,
  turn: 0 | 0.5,
): Point[] => {
  const half = Math.min(pitch / 2, depth * Math.tan(Math.PI / 6));
  const points: Point[] = [];
  for (let s = from + pitch * (0.5 + turn); s + half <= to + 1e-9; s += pitch)
    points.push([face, s - half], [face + way * depth, s], [face, s + half]);
  return points;
};

/** A half from the axis at its floor, by the inside, the mouth and the outside, to the axis at its foot. */
const round = (fromMouth: readonly Point[], outer: number, foot: number): Point[] => [
  ...[...fromMouth].reverse(),
  [outer, 0],
  [outer, foot],
  [0, foot],
];

/** Half of the piece with the recess. */
export const recessHalf = (box: BoxSizes, turn: 0 | 0.5): Point[] => {
  const [outer, bore, hollow] = [box.outside / 2, box.recess / 2, box.opening / 2];
  const [chamfer, relief] = [box.recessChamferDiameter / 2, box.recessReliefDiameter / 2];
  const height = box.recessIn === 'lid' ? box.lidHeight : box.baseHeight;
  const runOut = box.recessDepth - box.reliefWidth;
  const inside = height - box.floor;
  const floor: Point[] =
    inside > box.recessDepth && hollow < relief
      ? [
          [hollow, box.recessDepth],
          [hollow, inside],
          [0, inside],
        ]
      : [[0, box.recessDepth]];
  const fromMouth: Point[] = [
    [chamfer, 0],
    [bore, chamfer - bore],
    ...grooves(bore, chamfer - bore, runOut, box, 1, turn),
    [bore, runOut],
    [relief, runOut],
    [relief, box.recessDepth],
    ...floor,
  ];
  return round(fromMouth, outer, height);
};

/** Half of the piece with the tenon; s towards the mate. */
export const tenonHalf = (box: BoxSizes, turn: 0 | 0.5): Point[] => {
  const [outer, face, hollow] = [box.outside / 2, box.tenon / 2, box.opening / 2];
  const [chamfer, relief] = [box.tenonChamferDiameter / 2, box.tenonReliefDiameter / 2];
  const height = box.recessIn === 'lid' ? box.baseHeight : box.lidHeight;
  const inside = height - box.floor;
  const end = box.tenonLength - (face - chamfer);
  const fromShoulder: Point[] = [
    [relief, 0],
    [relief, box.reliefWidth],
    [face, box.reliefWidth],
    ...grooves(face, box.reliefWidth, end, box, -1, turn),
    [face, end],
    [chamfer, box.tenonLength],
    [hollow, box.tenonLength],
    [hollow, -inside],
    [0, -inside],
  ];
  return round(fromShoulder, outer, -height);
};
