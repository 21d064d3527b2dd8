import { useSignal } from '@preact/signals';
import { measureWords as words } from '../measure-words.ts';

interface Props<R extends { readonly id: string }> {
  readonly readings: readonly R[];
  readonly say: (reading: R) => string;
  /** A word beside a reading that no longer counts. */
  readonly aside?: (reading: R) => string | null;
  /** Each resolves to whether it is on disk. */
  readonly onRemove: (reading: R) => Promise<boolean>;
  readonly onPutBack: (reading: R, at: number) => Promise<boolean>;
}

/** What was read, newest last; one removed by mistake comes back to its place with one tap. */
export const ReadingList = <R extends { readonly id: string }>({
  readings,
  say,
  aside,
  onRemove,
  onPutBack,
}: Props<R>) => {
  const removed = useSignal<{ readonly reading: R; readonly at: number } | null>(null);
  const remove = async (reading: R, at: number) => {
    if (await onRemove(reading)) removed.value = { reading, at };
  };
  const putBack = async () => {
    const back = removed.value;
    if (back && (await onPutBack(back.reading, back.at))) removed.value = null;
  };
  if (readings.length === 0 && !removed.value) return null;
  return (
    <section>
      <h3>{words.readings}</h3>
      <ul class="readings">
        {readings.map((reading, at) => {
          const note = aside?.(reading);
          return (
            <li key={reading.id}>
              <span>
                {note ? <s>{say(reading)}</s> : say(reading)}
                {note && <small class="soft"> {note}</small>}
              </span>
              <button
                type="button"
                class="plain"
                aria-label={words.removeOf(say(reading))}
                onClick={() => remove(reading, at)}
              >
                {words.remove}
              </button>
            </li>
          );
        })}
      </ul>
      {removed.value && (
        <p class="row" role="status">
          {words.removed(say(removed.value.reading))}
          <button type="button" onClick={putBack}>
            {words.undo}
          </button>
        </p>
      )}
    </section>
  );
};

/** The list with one put back where it was. */
export const withAt = <T,>(list: readonly T[], item: T, at: number): readonly T[] => [
  ...list.slice(0, at),
  item,
  ...list.slice(at),
];
