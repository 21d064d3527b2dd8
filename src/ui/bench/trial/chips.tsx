import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

interface Option<T extends string> {
  readonly value: T;
  readonly word: string;
  readonly picture?: ComponentChildren;
}

interface Props<T extends string> {
  readonly legend: string;
  readonly hint?: string;
  readonly options: readonly Option<T>[];
  readonly chosen: readonly T[];
  readonly onTap: (value: T) => void;
  readonly children?: ComponentChildren;
}

/** Short answers under a heading, each a target of its own; what is chosen is filled, and another tap takes it back. */
export const Chips = <T extends string>({ legend, hint, options, chosen, onTap, children }: Props<T>) => {
  const id = useId();
  return (
    <fieldset class={options.length === 5 ? 'chips five' : 'chips'} aria-describedby={hint ? id : undefined}>
      <legend>{legend}</legend>
      {hint && (
        <span id={id} class="soft">
          {hint}
        </span>
      )}
      <div class="options">
        {options.map(({ value, word, picture }) => (
          <label key={value}>
            <input type="checkbox" checked={chosen.includes(value)} onChange={() => onTap(value)} />
            <span>
              {picture}
              {word}
            </span>
          </label>
        ))}
        {children}
      </div>
    </fieldset>
  );
};
