import type { Movement, Procedure } from './procedure.ts';
import type { Reading } from './reading.ts';

/** The piece a set-up is for. Two pieces threaded in one setting are two runs; the second carries over every step that still holds. */
export type Part = 'recess' | 'tenon';
export type Verdict = 'pass' | 'fail' | 'skip';

/** Names one event inside its run. */
export interface EventRef {
  readonly n: number;
  readonly writer: string;
}

/** A step that still holds from an earlier set-up, and the wall time since when (epoch ms). */
export interface Carried {
  readonly key: string;
  readonly since: number;
}

export type Happening =
  | {
      readonly kind: 'started';
      readonly boxId: string;
      readonly part: Part;
      readonly procedureId: string;
      readonly procedure: Procedure;
      readonly inherited: readonly Carried[];
      readonly fromRun: string | null;
      /** The piece already carries a groove, so it must be picked up. */
      readonly groove: boolean;
    }
  | { readonly kind: 'ticked'; readonly steps: readonly string[]; readonly verdict: Verdict }
  | { readonly kind: 'read'; readonly step: string; readonly reading: Reading }
  | {
      readonly kind: 'moved';
      readonly what: Movement;
      /** The piece had a groove by then, so its place along the thread must be picked up again. */
      readonly groove?: boolean;
    }
  | { readonly kind: 'paused' }
  | { readonly kind: 'resumed' }
  | { readonly kind: 'undone'; readonly target: EventRef }
  | { readonly kind: 'closed'; readonly how: 'cut' | 'abandoned' };

/** The clocks at a tap. Events are ordered by `n`, never by a clock. */
export interface Stamp {
  /** Wall clock, epoch ms. */
  readonly at: number;
  /** Monotonic ms since this page load. */
  readonly mono: number;
  /** Ms this page has been hidden so far in this page load. */
  readonly hid: number;
  /** One id per page load. */
  readonly session: string;
}

/** One durable fact of a set-up, keyed [logId, runId, n, writer], added once and never changed. */
export type SetUpEvent = Stamp & EventRef & { readonly logId: string; readonly runId: string } & Happening;

/** An event of a kind that only a newer version of the app knows: it is stored and listed, and its run is read-only. */
export type ForeignEvent = Stamp &
  EventRef & { readonly logId: string; readonly runId: string; readonly kind: string };

const KINDS: readonly string[] = [
  'started',
  'ticked',
  'read',
  'moved',
  'paused',
  'resumed',
  'undone',
  'closed',
] satisfies readonly Happening['kind'][];

/** Whether this version knows that kind of event. */
export const isKnownKind = (kind: string): boolean => KINDS.includes(kind);

/** Whether an event is one that this version understands. */
export const isKnown = (event: SetUpEvent | ForeignEvent): event is SetUpEvent => isKnownKind(event.kind);
