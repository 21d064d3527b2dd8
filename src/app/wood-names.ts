import { tradeName } from '../domain/wood/trade-name.ts';
import { listRecords } from '../storage/records.ts';
import { logId } from './session.ts';

/** What each wood is called: the user's own by their names, the tables' as the trade says them. */
export const woodNames = async (): Promise<(key: string) => string> => {
  const own = new Map(
    (await listRecords(logId.value, 'wood')).flatMap(({ id, body }) =>
      body ? [[id, body.name] as const] : [],
    ),
  );
  return (key) => own.get(key) ?? tradeName(key);
};
