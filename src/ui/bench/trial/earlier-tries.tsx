interface Props {
  readonly title: string;
  readonly lines: readonly { readonly id: string; readonly line: string }[];
}

/** The tries before, one line each, oldest first. */
export const EarlierTries = ({ title, lines }: Props) =>
  lines.length > 0 ? (
    <section>
      <h3>{title}</h3>
      <ol>
        {lines.map(({ id, line }) => (
          <li key={id}>{line}</li>
        ))}
      </ol>
    </section>
  ) : null;

/** Takes the last try back: it was not so. */
export const TakeBack = ({ word, onTap }: { word: string; onTap: () => void }) => (
  <button type="button" class="plain" onClick={onTap}>
    {word}
  </button>
);
