import type { JointTable } from '../domain/findings/joint-row.ts';
import type { StepLinks } from '../domain/findings/step-links.ts';
import type { WoodsByPitch } from '../domain/findings/woods-by-pitch.ts';

/** Which logs to read. Several are pooled, each a source of its own. */
export interface FindingsQuestion {
  readonly logIds: readonly string[];
}

export type FindingsAnswer =
  | { readonly kind: 'progress'; readonly done: number; readonly of: number }
  | { readonly kind: 'found'; readonly findings: Findings }
  | { readonly kind: 'failed'; readonly reason: string };

export interface Findings {
  readonly table: JointTable;
  readonly links: StepLinks;
  readonly woods: WoodsByPitch;
}
