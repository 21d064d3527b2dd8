import type { Findings } from '../domain/findings/findings.ts';

/** Which logs to read. Several are pooled, each a source of its own. */
export interface FindingsQuestion {
  readonly logIds: readonly string[];
}

export type FindingsAnswer =
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'found'; readonly findings: Findings }
  | { readonly kind: 'failed'; readonly reason: string };
