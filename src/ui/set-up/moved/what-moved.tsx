import '../lists.css';
import { MOVEMENTS, type Movement } from '../../../domain/setup/procedure.ts';
import { movementShort, setUpWords as words } from '../words.ts';

interface Props {
  /** The level of heading that the screen around it leaves. */
  readonly heading: 'h1' | 'h2';
  readonly busy?: boolean;
  readonly onMoved: (what: Movement) => void;
  readonly onNothing: () => void;
}

/** Stop first; then what moved, on keys large enough for a glove. */
export const WhatMoved = ({ heading: Heading, busy = false, onMoved, onNothing }: Props) => (
  <>
    <Heading class="stop">{words.stopFirst}</Heading>
    <p>{words.whatMoved}</p>
    <ul class="choices">
      {MOVEMENTS.map((what) => (
        <li key={what}>
          <button type="button" disabled={busy} onClick={() => onMoved(what)}>
            {movementShort[what]}
          </button>
        </li>
      ))}
    </ul>
    <button type="button" onClick={onNothing}>
      {words.nothingMoved}
    </button>
  </>
);
