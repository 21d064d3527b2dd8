import type { PowerAt } from '../domain/experiment/experiment-power.ts';
import type { ExperimentStatus } from '../domain/experiment/experiment-status.ts';
import type { Findings } from '../domain/findings/answers/findings.ts';
import type { LastAlike } from '../domain/findings/answers/last-alike.ts';
import type { WoodFacts } from '../domain/findings/rows/rows-from-log.ts';

/** The logs to read (several are pooled, each as its own source), and the wood tables, which the page has loaded already. */
interface OfLogs {
  readonly logIds: readonly string[];
  readonly woods: Readonly<Record<string, WoodFacts>>;
}

/** `known` is the `from` of the answer that the page already shows, or null: while it is current, the answer is `unchanged`. */
export interface FindingsQuestion extends OfLogs {
  readonly want: 'findings';
  readonly known: string | null;
}

/** The rows behind the findings, or the description of their columns, as CSV. */
export interface SheetQuestion extends OfLogs {
  readonly want: 'rows' | 'columns';
}

export interface Found extends Findings {
  /** Hash of the rows and experiments that it was computed from. */
  readonly from: string;
  readonly lastAlike: LastAlike | null;
  /** By their ids. */
  readonly experiments: Readonly<Record<string, ExperimentStatus>>;
  readonly power: readonly PowerAt[];
}

export type FindingsAnswer =
  | { readonly kind: 'progress'; readonly share: number }
  /** The last answer, sent at once while the worker checks whether it is still current. */
  | { readonly kind: 'last'; readonly found: Found; readonly at: number }
  | { readonly kind: 'found'; readonly found: Found }
  | { readonly kind: 'unchanged' }
  | { readonly kind: 'sheet'; readonly text: string }
  | { readonly kind: 'failed'; readonly reason: string };
