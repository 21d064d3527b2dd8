import './switches.css';

interface Switch {
  readonly word: string;
  readonly on: boolean;
  readonly set: (on: boolean) => void;
}

/** Things that are on or off, as native check boxes a thumb wide. */
export const Switches = ({ switches }: { switches: readonly Switch[] }) => (
  <div class="switches">
    {switches.map(({ word, on, set }) => (
      <label key={word}>
        <input type="checkbox" checked={on} onChange={(event) => set(event.currentTarget.checked)} />
        {word}
      </label>
    ))}
  </div>
);
