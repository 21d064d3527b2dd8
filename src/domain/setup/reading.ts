import type { Length } from '../units/length.ts';

/** A measurement taken at a step. Lengths keep the words they were typed in. */
export type Reading =
  /** A feeler, card or paper that just goes in (`gap`) somewhere over a length (`over`). */
  | {
      readonly kind: 'gap';
      readonly gap: Length;
      readonly over: Length;
      readonly plane: 'lean' | 'tilt' | 'either';
    }
  /** Crank turns from first cut to the stop. */
  | { readonly kind: 'turns'; readonly turns: number }
  /** An indicator on an arm of radius `radius`, swept over a face: difference across the sweep. */
  | {
      readonly kind: 'sweep';
      readonly difference: Length;
      readonly radius: Length;
      readonly plane: 'lean' | 'tilt';
    };
