import { mixed } from '../random.ts';

const TABLE = 1024;

/**
 * Normal quantiles at (i + 1/2)/1024: dz/dp = 1/density(z) integrated from the middle outward by Runge-Kutta's fourth order. Against an
 * exact quantile they are within 1e-4, the outermost excepted (2e-3).
 */
const quantiles = (): Float64Array => {
  const table = new Float64Array(TABLE);
  const rate = (z: number): number => Math.sqrt(2 * Math.PI) * Math.exp((z * z) / 2);
  let z = 0;
  for (let i = TABLE / 2; i < TABLE; i++) {
    const h = (i === TABLE / 2 ? 0.5 : 1) / TABLE;
    const first = rate(z);
    const second = rate(z + (h / 2) * first);
    const third = rate(z + (h / 2) * second);
    z += (h / 6) * (first + 2 * second + 2 * third + rate(z + h * third));
    table[i] = z;
    table[TABLE - 1 - i] = -z;
  }
  return table;
};

const QUANTILES = quantiles();

/**
 * Chance for the joints of one diagnosis. Every joint has a stream of its own, so a joint is never stored: drawn again by its number, it
 * is the same. A counter through the finaliser of `log/random.ts`, normal numbers from a table: cheap enough for a phone.
 */
export class Draws {
  #counter = 0;
  readonly #seed: number;

  constructor(seed: number) {
    this.#seed = mixed(seed);
  }

  /** Start the stream of one joint. */
  restart(joint: number): void {
    this.#counter = mixed(this.#seed ^ Math.imul(joint + 1, 0x9e3779b9));
  }

  #next(): number {
    this.#counter = (this.#counter + 0x9e3779b9) | 0;
    return mixed(this.#counter);
  }

  /** In [0, 1). */
  unit(): number {
    return this.#next() / 2 ** 32;
  }

  between(min: number, max: number): number {
    return min + this.unit() * (max - min);
  }

  chance(probability: number): boolean {
    return this.unit() < probability;
  }

  normal(mean: number, deviation: number): number {
    return mean + deviation * (QUANTILES[this.#next() >>> 22] as number);
  }

  /** The size of a normal error around nothing. */
  half(deviation: number): number {
    return Math.abs(this.normal(0, deviation));
  }
}
