import type { ReadonlySignal } from '@preact/signals';

interface Props {
  readonly before?: string;
  /** A figure with its unit: "2.474 in". */
  readonly text: string;
  readonly beside?: string;
}

/** The one number of a screen, as wide as the screen; its unit smaller, its tolerance below. */
export const BigAnswer = ({ before, text, beside }: Props) => (
  <div class="big-answer">
    {before && <p>{before}</p>}
    <BigFigure {...figureOf(text)} signs={text.length} />
    {beside && <p class="beside">{beside}</p>}
  </div>
);

/** Number and unit of a figure such as "2.474 in"; a text that is no figure is all number. */
export const figureOf = (text: string): { number: string; unit: string } => {
  const [, number = text, unit = ''] = /^(.*\S)\s+(\S+)$/.exec(text) ?? [];
  return { number, unit };
};

type Live<T> = T | ReadonlySignal<T>;

/** The figure alone, so large that as many signs go across. */
export const BigFigure = ({
  number,
  unit,
  signs,
}: {
  number: Live<string>;
  unit: Live<string>;
  signs: number;
}) => (
  <p class="number" style={{ '--signs': signs }}>
    {number}
    <small> {unit}</small>
  </p>
);
