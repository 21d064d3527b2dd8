import { movementTable } from '../domain/wood/movement-table.ts';
import { newestBoxes } from './boxes.ts';
import { listBodies } from './keep.ts';

/** A wood as a plan keeps it and as it is called. */
interface WoodName {
  readonly key: string;
  readonly name: string;
}

export interface WoodsToChoose {
  /** Every wood known, the ones used last first. */
  readonly all: readonly WoodName[];
  /** How many of those were used before. */
  readonly used: number;
}

/** Boxes whose woods are offered first. */
const LAST_BOXES = 200;

/** The woods of the last boxes, newest first, then the user's own, then the tables'. */
export const woodsToChoose = async (): Promise<WoodsToChoose> => {
  const own = (await listBodies('wood')).map(({ id, body }) => ({ key: id, name: body.name }));
  const names = new Map([...movementTable, ...own].map(({ key, name }) => [key, name]));
  const used = new Set(
    (await newestBoxes(LAST_BOXES)).flatMap(({ box: { plan } }) =>
      [plan.lid, plan.base, plan.insert].flatMap((use) => (use ? [use.wood] : [])),
    ),
  );
  const rest = [...own, ...movementTable].flatMap(({ key }) => (used.has(key) ? [] : [key]));
  return { all: [...used, ...rest].map((key) => ({ key, name: names.get(key) ?? key })), used: used.size };
};

/** The wood of that name, or null: a name that is no wood's is kept as it was typed. */
export const woodNamed = ({ all }: WoodsToChoose, typed: string): WoodName | null => {
  const wanted = typed.trim().toLowerCase();
  return all.find(({ name }) => name.toLowerCase() === wanted) ?? null;
};

/** Woods whose name holds every word typed, in any order, at most `most`; with nothing typed, those used before. */
export const woodsLike = ({ all, used }: WoodsToChoose, typed: string, most: number): readonly WoodName[] => {
  const words = typed
    .toLowerCase()
    .split(/[\s,]+/)
    .filter(Boolean);
  const among = words.length === 0 ? all.slice(0, used) : all;
  return among.filter(({ name }) => words.every((word) => name.toLowerCase().includes(word))).slice(0, most);
};
