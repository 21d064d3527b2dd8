import type { PowerAt } from '../domain/experiment/experiment-power.ts';
import type { ExperimentStatus } from '../domain/experiment/experiment-status.ts';
import type { Findings } from '../domain/findings/answers/findings.ts';
import type { LastAlike } from '../domain/findings/answers/last-alike.ts';
import type { WoodFacts } from '../domain/findings/rows/rows-from-log.ts';

/** Which logs to read (several are pooled, each a source of its own), and what the tables say of woods: the page has them already. */
interface OfLogs {
  readonly logIds: readonly string[];
  readonly woods: Readonly<Record<string, WoodFacts>>;
}

/** `known` names what the asker has already: where it still holds, nothing is reckoned again. */
export interface FindingsQuestion extends OfLogs {
  readonly want: 'findings';
  readonly known: string | null;
}

/** The rows behind the findings, or what their columns hold, as CSV. */
export interface SheetQuestion extends OfLogs {
  readonly want: 'rows' | 'columns';
}

export interface Found extends Findings {
  /** Names the rows and experiments that it was reckoned from. */
  readonly from: string;
  readonly lastAlike: LastAlike | null;
  /** By their ids. */
  readonly experiments: Readonly<Record<string, ExperimentStatus>>;
  readonly power: readonly PowerAt[];
}

export type FindingsAnswer =
  | { readonly kind: 'progress'; readonly share: number }
  /** What was found last time, at once; whether it still holds is being looked into. */
  | { readonly kind: 'last'; readonly found: Found; readonly at: number }
  | { readonly kind: 'found'; readonly found: Found }
  | { readonly kind: 'unchanged' }
  | { readonly kind: 'sheet'; readonly text: string }
  | { readonly kind: 'failed'; readonly reason: string };
