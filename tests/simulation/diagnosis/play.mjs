// Plays a simulated workshop and prints how the advice did:
//   node tests/simulation/diagnosis/play.mjs [boxes, 500 unless given] [seed, 1] [adviser] [everyday | worse] [way] [details]
// Advisers: engine, sees, wax, none, deepens. Ways: see WAYS in play.ts; "ways" plays them all. The order of the words does not matter.
import { bundled } from '../../bench/bundled.mjs';

const code = await bundled('../simulation/diagnosis/workshop-bundle.ts', 'workshop');
const workshop = new Function(`${code}; return workshop;`)();
const { WAYS, EVERYDAY, WORSE, playAll, tableOf, detailsOf } = workshop;

const words = process.argv.slice(2);
const numbers = words.filter((word) => /^\d+$/.test(word)).map(Number);
const [boxes = 500, seed = 1] = numbers;
const advisers = {
  engine: workshop.engine,
  sees: workshop.seeing,
  wax: workshop.waxOnly,
  none: workshop.silent,
  deepens: workshop.alwaysDeepens,
};
const chosen = Object.keys(advisers).filter((name) => words.includes(name));
const ways = words.includes('ways') ? WAYS : WAYS.filter((way) => words.includes(way));
const manners = words.includes('worse') ? WORSE : EVERYDAY;

for (const name of chosen.length > 0 ? chosen : Object.keys(advisers))
  for (const way of ways.length > 0 ? ways : ['as advised']) {
    const tally = playAll(advisers[name], { boxes, seed, manners, way });
    console.log(
      `\n${name}, ${words.includes('worse') ? 'worse' : 'everyday'} workshop, ${way}; ${boxes} boxes, seed ${seed}`,
    );
    console.log(tableOf(tally));
    if (words.includes('details')) console.log(detailsOf(tally));
  }
