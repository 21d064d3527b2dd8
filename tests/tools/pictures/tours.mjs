import { bench } from './tour-bench.mjs';
import { oddBoxes } from './tour-odd-boxes.mjs';
import { setUp } from './tour-set-up.mjs';
import { shop } from './tour-shop.mjs';
import { workshop } from './tour-workshop.mjs';

/** Every walk through the app; each begins with an empty log of its own. The longest come first. */
export const TOURS = { bench, 'set-up': setUp, workshop, shop, 'odd-boxes': oddBoxes };
