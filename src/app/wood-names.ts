import { tradeName } from '../domain/wood/trade-name.ts';
import { listBodies } from './keep.ts';

/** What each wood is called: the user's own by their names, the tables' as the trade says them. */
export const woodNames = async (): Promise<(key: string) => string> => {
  const own = new Map((await listBodies('wood')).map(({ id, body }) => [id, body.name]));
  return (key) => own.get(key) ?? tradeName(key);
};
