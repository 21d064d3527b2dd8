import type { Signal } from '@preact/signals';
import { useId } from 'preact/hooks';
import type { BoxOnHand } from '../../app/boxes.ts';
import { ANY_BOX, type BoxFilter, type Standing, woodsOf } from '../../domain/box/story.ts';
import { standingWord, boxesWords as words } from './words.ts';

/** Find by words; narrow by wood, pitch and how the box stands. */
export const Filter = ({
  boxes,
  filter,
  nameOf,
}: {
  boxes: readonly BoxOnHand[];
  filter: Signal<BoxFilter>;
  nameOf: (wood: string) => string;
}) => {
  const id = useId();
  const narrow = (change: Partial<BoxFilter>) => {
    filter.value = { ...filter.value, ...change };
  };
  const woods = [...new Set(boxes.flatMap(({ box }) => woodsOf(box)))].sort();
  const pitches = [...new Set(boxes.map(({ box }) => box.plan.pitch.text))].sort();
  const { text, wood, pitch, standing } = filter.value;
  return (
    <search class="filter">
      <label for={id}>{words.find}</label>
      <input
        id={id}
        type="search"
        value={text}
        onInput={(event) => narrow({ text: event.currentTarget.value })}
      />
      <div class="row">
        <Narrow
          label={words.wood}
          any={words.anyWood}
          value={wood}
          options={woods}
          nameOf={nameOf}
          onPick={(w) => narrow({ wood: w })}
        />
        <Narrow
          label={words.pitch}
          any={words.anyPitch}
          value={pitch}
          options={pitches}
          onPick={(p) => narrow({ pitch: p })}
        />
        <Narrow
          label={words.standing}
          any={words.anyStanding}
          value={standing}
          options={Object.keys(standingWord)}
          nameOf={(key) => standingWord[key as Standing]}
          onPick={(s) => narrow({ standing: s as Standing | null })}
        />
      </div>
      {filter.value !== ANY_BOX && (
        <button
          type="button"
          class="plain"
          onClick={() => {
            filter.value = ANY_BOX;
          }}
        >
          {words.showAll}
        </button>
      )}
    </search>
  );
};

interface NarrowProps {
  readonly label: string;
  readonly any: string;
  readonly value: string | null;
  readonly options: readonly string[];
  readonly nameOf?: (key: string) => string;
  readonly onPick: (value: string | null) => void;
}

const Narrow = ({ label, any, value, options, nameOf = (key) => key, onPick }: NarrowProps) => (
  <label class="narrow">
    <span class="hidden-words">{label}</span>
    <select value={value ?? ''} onChange={(event) => onPick(event.currentTarget.value || null)}>
      <option value="">{any}</option>
      {options.map((option) => (
        <option key={option} value={option}>
          {nameOf(option)}
        </option>
      ))}
    </select>
  </label>
);
