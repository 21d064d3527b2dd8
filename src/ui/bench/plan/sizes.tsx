import type { ReadonlySignal } from '@preact/signals';

/** One size of a list: its letter in the drawing, what it is, the figure, and a word about it. */
export interface SizeRow {
  readonly letter?: string;
  readonly name: string;
  /** A signal where it changes while it is looked at. */
  readonly value: string | ReadonlySignal<string>;
  readonly note?: string | ReadonlySignal<string>;
}

/** Sizes under a heading, numbers at the right where the eye finds them. */
export const Sizes = ({ heading, rows }: { heading: string; rows: readonly SizeRow[] }) => (
  <section>
    <h3>{heading}</h3>
    <dl class="sizes">
      {rows.map(({ letter, name, value, note }) => (
        <div key={name}>
          {letter && (
            <dt class="letter" aria-hidden="true">
              {letter}
            </dt>
          )}
          <dt>{name}</dt>
          <dd class="value">{typeof value === 'string' ? value : <span class="live">{value}</span>}</dd>
          {note && <dd class="note">{note}</dd>}
        </div>
      ))}
    </dl>
  </section>
);
