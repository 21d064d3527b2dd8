import './field.css';

interface Props<T extends string> {
  readonly legend: string;
  readonly options: readonly { readonly value: T; readonly word: string }[];
  readonly chosen: readonly string[];
  readonly onChange: (chosen: readonly T[]) => void;
}

/** Any number of a few, as large native check boxes. */
export const Choices = <T extends string>({ legend, options, chosen, onChange }: Props<T>) => (
  <fieldset class="choice">
    <legend>{legend}</legend>
    <div class="options">
      {options.map(({ value, word }) => (
        <label key={value}>
          <input
            type="checkbox"
            class="unseen"
            checked={chosen.includes(value)}
            onChange={() =>
              onChange(
                options
                  .map((option) => option.value)
                  .filter((option) => (option === value) !== chosen.includes(option)),
              )
            }
          />
          <span>{word}</span>
        </label>
      ))}
    </div>
  </fieldset>
);
