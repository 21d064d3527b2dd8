// How long a trial fit's answer takes:  node tests/bench/diagnosis.mjs [rounds, 2]
import { bundled } from './bundled.mjs';

const [rounds = 2] = process.argv.slice(2).map(Number);
const code = await bundled('./diagnosis-answers.ts', 'bench');
const { answerTimes } = new Function(`${code}; return bench;`)();
const before = process.cpuUsage();
const times = answerTimes(rounds);
const { user } = process.cpuUsage(before);
const at = (share) => times[Math.floor(share * (times.length - 1))].toFixed(1);
console.log(`${times.length} answers, ms: median ${at(0.5)}, 95 in 100 under ${at(0.95)}`);
console.log(
  `processor time an answer, warm-up counted: ${(user / 1000 / (times.length * (1 + 1 / rounds))).toFixed(1)} ms`,
);
