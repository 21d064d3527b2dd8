import type { ForeignEvent, SetUpEvent } from '../../domain/setup/events.ts';
import type { Procedure } from '../../domain/setup/procedure.ts';

type AnyEvent = SetUpEvent | ForeignEvent;

/** Each procedure once and, where a set-up's start carries it, its place in that list: most of a log's weight is their copies. */
export const proceduresApart = (
  events: readonly AnyEvent[],
): { readonly events: readonly object[]; readonly procedures: readonly Procedure[] } => {
  const places = new Map<string, number>();
  const procedures: Procedure[] = [];
  const lean = events.map((event) => {
    if (event.kind !== 'started' || !('procedure' in event)) return event;
    const text = JSON.stringify(event.procedure);
    const place = places.get(text) ?? procedures.push(event.procedure) - 1;
    places.set(text, place);
    return { ...event, procedure: place };
  });
  return { events: lean, procedures };
};

/**
 * The events as they were: a place is replaced by the procedure that stands there. Whatever is not as `proceduresApart` writes it
 * is left for the check of each event to find.
 */
export const proceduresBack = (events: unknown, procedures: unknown): unknown => {
  if (!Array.isArray(events) || !Array.isArray(procedures)) return events;
  return events.map((event: { readonly kind?: unknown; readonly procedure?: unknown } | null) =>
    event?.kind === 'started' && typeof event.procedure === 'number'
      ? { ...event, procedure: procedures[event.procedure] }
      : event,
  );
};
