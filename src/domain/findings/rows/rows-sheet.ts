import type { Part } from '../../setup/events.ts';
import { inTimeOrder, type JointRow, type JointTable } from './joint-row.ts';

/** A column of the export: its name, what it holds, and its unit where it has one. */
interface Column {
  readonly name: string;
  readonly holds: string;
  readonly unit: string;
}

interface RowColumn extends Column {
  readonly of: (row: JointRow) => string | number | boolean | null;
}

const COLUMNS: readonly RowColumn[] = [
  { name: 'id', holds: 'joint, one a box', unit: '', of: (r) => r.id },
  { name: 'log', holds: 'log it came from', unit: '', of: (r) => r.log },
  { name: 'box', holds: 'number of the box in its log', unit: '', of: (r) => r.boxNumber },
  { name: 'day', holds: 'day it was started', unit: 'yyyy-mm-dd', of: (r) => r.day },
  { name: 'cluster', holds: 'boxes that share a day or a set-up run', unit: '', of: (r) => r.cluster },
  { name: 'rig', holds: 'rig', unit: '', of: (r) => r.rig },
  {
    name: 'experience',
    holds: 'joints cut in this log, this one included',
    unit: 'joints',
    of: (r) => r.experience,
  },
  { name: 'wood', holds: 'wood that carries the weaker thread', unit: '', of: (r) => r.wood },
  { name: 'wood_group', holds: 'group of that wood', unit: '', of: (r) => r.woodGroup },
  {
    name: 'hardness',
    holds: 'side hardness of that wood; empty: no table has it',
    unit: 'N',
    of: (r) => r.hardness,
  },
  { name: 'pitch', holds: 'pitch of the thread', unit: 'mm', of: (r) => r.pitch },
  { name: 'hardener', holds: 'none, thin-ca, sealer or wax', unit: '', of: (r) => r.hardener },
  {
    name: 'insert_ring',
    holds: 'a ring carries the thread of one piece',
    unit: 'yes/no',
    of: (r) => r.insertRing,
  },
  { name: 'first_try', holds: 'right, eased, failed, scrapped or unknown', unit: '', of: (r) => r.firstTry },
  {
    name: 'symptoms',
    holds: 'what the first trial showed, joined by blanks',
    unit: '',
    of: (r) => r.symptoms.join(' '),
  },
  {
    name: 'clearance_trials',
    holds: 'clearance and feel of each trial that speaks of size, fit by fit',
    unit: 'mm',
    of: (r) => r.clearanceTrials.map((t) => `${t.fit}:${t.clearance.toFixed(3)}:${t.felt}`).join(' '),
  },
  {
    name: 'tip_flat_known',
    holds: 'no: clearances assume a 0.2 mm tip',
    unit: 'yes/no',
    of: (r) => r.tipFlatKnown,
  },
];

const PARTS: readonly Part[] = ['recess', 'tenon'];

const columnsOf = (table: JointTable): readonly RowColumn[] => [
  ...COLUMNS,
  ...table.steps.flatMap(({ key }) =>
    PARTS.flatMap((part): RowColumn[] => [
      {
        name: `${key}.${part}`,
        holds: `step ${key} when the ${part} was cut: done, skipped, left-failing, not-needed or not-recorded; + carried over`,
        unit: '',
        of: (row) => {
          const step = row.steps[part][key];
          return step ? `${step.outcome}${step.carriedOver ? '+' : ''}` : 'not-recorded';
        },
      },
      {
        name: `${key}.${part}.ms`,
        holds: `time of step ${key} for the ${part}, where it is known exactly`,
        unit: 'ms',
        of: (row) => row.steps[part][key]?.exactMs ?? null,
      },
    ]),
  ),
];

/** A cell of a sheet; null is an empty one. The code that writes the file escapes it. */
type SheetCell = string | number | null;

/** The rows as a sheet, oldest first, under a heading of column names. */
export const rowsSheet = (table: JointTable): readonly (readonly SheetCell[])[] => {
  const fields = columnsOf(table);
  return [
    fields.map(({ name }) => name),
    ...inTimeOrder(table.rows).map((row) => fields.map(({ of }) => written(of(row)))),
  ];
};

/** What each column holds, as a sheet to lie beside the rows. */
export const dictionarySheet = (table: JointTable): readonly (readonly SheetCell[])[] => [
  ['column', 'holds', 'unit'],
  ...columnsOf(table).map(({ name, holds, unit }) => [name, holds, unit]),
];

const written = (value: SheetCell | boolean): SheetCell =>
  typeof value === 'boolean' ? (value ? 'yes' : 'no') : value;
