import { checkEvent, type Misfit } from '../../domain/log/validate.ts';
import { ok, type Result, refuse } from '../../domain/result.ts';
import type { ForeignEvent, SetUpEvent } from '../../domain/setup/events.ts';
import type { Procedure } from '../../domain/setup/procedure.ts';

type AnyEvent = SetUpEvent | ForeignEvent;

/** Lists each procedure once and puts its place in that list into the starts of set-ups, because their copies are most of a log's size. */
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

/** A placeholder while the rest of a start is checked; the procedure itself is checked only once. */
const PLACEHOLDER: Procedure = { name: 'placeholder', version: 1, steps: [] };

const hasPlace = (input: unknown): input is { readonly procedure: number } =>
  typeof input === 'object' &&
  input !== null &&
  'kind' in input &&
  input.kind === 'started' &&
  'procedure' in input &&
  typeof input.procedure === 'number';

/** Checks an event as `proceduresApart` writes it and puts the procedure back. Starts that name the same place share one object. */
export const checkLeanEvent =
  (procedures: readonly Procedure[]) =>
  (input: unknown): Result<AnyEvent, Misfit> => {
    if (!hasPlace(input)) return checkEvent(input);
    const procedure = procedures[input.procedure];
    if (!procedure)
      return refuse({ at: 'procedure', expected: 'place of a procedure', found: String(input.procedure) });
    const answer = checkEvent({ ...input, procedure: PLACEHOLDER });
    return answer.ok ? ok({ ...answer.value, procedure } as AnyEvent) : answer;
  };
