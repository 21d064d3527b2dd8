export { engine } from './engine-adviser.ts';
export { WAYS } from './play.ts';
export { seeing } from './seeing-adviser.ts';
export { alwaysDeepens, silent, waxOnly } from './simple-advisers.ts';
export { detailsOf, tableOf } from './table.ts';
export { playAll } from './tally.ts';
export { EVERYDAY, WORSE } from './turner.ts';
