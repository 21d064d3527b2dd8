import './field.css';
import { useId } from 'preact/hooks';

interface Props<T extends string> {
  readonly legend: string;
  readonly options: readonly { readonly value: T; readonly word: string }[];
  /** None is when it is no option's. */
  readonly chosen: string | null;
  readonly onChoose: (value: T) => void;
}

/** One of a few, as large native radio buttons. */
export const Choice = <T extends string>({ legend, options, chosen, onChoose }: Props<T>) => {
  const name = useId();
  return (
    <fieldset class="choice">
      <legend>{legend}</legend>
      <div class="options">
        {options.map(({ value, word }) => (
          <label key={value}>
            <input
              type="radio"
              class="unseen"
              name={name}
              checked={value === chosen}
              onChange={() => onChoose(value)}
            />
            <span>{word}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
};
