import type { DiagnosisView, MoveMade } from '../../../src/domain/diagnosis/view.ts';
import type { Question } from './telling.ts';
import type { TrueCause } from './truth.ts';
import type { Bench } from './workshop.ts';

/** A move as an adviser gives it. */
export interface AdvisedMove extends MoveMade {
  /** The piece is to be set up and picked up first. */
  readonly reset: boolean;
  /** Of making the lid right; null when the adviser says none. */
  readonly chance: number | null;
}

export interface NamedCause {
  /** By the workshop's names; one name of an adviser may stand for several. */
  readonly means: readonly TrueCause[];
  readonly share: number;
}

export interface Advice {
  /** Likeliest first. */
  readonly causes: readonly NamedCause[];
  /** The first is said to be likely, not only possible. */
  readonly likely: boolean;
  readonly move: AdvisedMove | null;
  /** What would come after it. */
  readonly next: AdvisedMove | null;
  readonly ask: Question | null;
}

export interface Adviser {
  readonly name: string;
  /** `asked`: what was asked about the last trial already, answered or not. */
  readonly advise: (view: DiagnosisView, asked: readonly Question[]) => Advice;
}

/** An adviser for one box. Only one that is meant to see the truth looks at the bench. */
export type AdviserFor = (unseen: () => Bench) => Adviser;
