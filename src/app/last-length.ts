import type { SetUpEvent } from '../domain/setup/events.ts';
import { eventsOfLog } from '../storage/events.ts';
import { logId } from './session.ts';

const isRead = (event: { readonly kind: string }): event is SetUpEvent & { kind: 'read' } =>
  event.kind === 'read';

/** The length that the last gap was read over, or the arm of the last sweep, as it was typed; null before the first. */
export const lastLength = async (kind: 'gap' | 'sweep'): Promise<string | null> => {
  const last = (await eventsOfLog(logId.value))
    .filter(isRead)
    .filter(({ reading }) => reading.kind === kind)
    .reduce<(SetUpEvent & { kind: 'read' }) | null>((a, b) => (a && a.at > b.at ? a : b), null)?.reading;
  if (last?.kind === 'gap') return last.over.text;
  return last?.kind === 'sweep' ? last.radius.text : null;
};
