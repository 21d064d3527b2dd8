interface Props {
  readonly before?: string;
  /** A figure with its unit: "2.474 in". */
  readonly text: string;
  readonly beside?: string;
}

/** The one number of a screen, as wide as the screen; its unit smaller, its tolerance below. */
export const BigAnswer = ({ before, text, beside }: Props) => {
  const [, number = text, unit = ''] = /^(.*\S)\s+(\S+)$/.exec(text) ?? [];
  return (
    <div class="big-answer">
      {before && <p>{before}</p>}
      <p class="number" style={{ '--signs': text.length }}>
        {number}
        <small> {unit}</small>
      </p>
      {beside && <p class="beside">{beside}</p>}
    </div>
  );
};
