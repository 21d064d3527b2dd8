/** Small symmetric positive definite matrices, row by row in one array of size n * n. */

/** Lower factor L with L L' = A, or null when A is not safely positive definite (a pivot under `tolerance` of its diagonal). */
export const cholesky = (a: Float64Array, n: number, tolerance = 1e-12): Float64Array | null => {
  const l = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let sum = a[i * n + j] as number;
      for (let k = 0; k < j; k++) sum -= (l[i * n + k] as number) * (l[j * n + k] as number);
      if (i !== j) l[i * n + j] = sum / (l[j * n + j] as number);
      else if (!(sum > tolerance * (a[i * n + i] as number))) return null;
      else l[i * n + i] = Math.sqrt(sum);
    }
  return l;
};

/** x with L L' x = b. */
export const solve = (l: Float64Array, n: number, b: Float64Array): Float64Array => {
  const x = b.slice();
  for (let i = 0; i < n; i++) {
    let sum = x[i] as number;
    for (let k = 0; k < i; k++) sum -= (l[i * n + k] as number) * (x[k] as number);
    x[i] = sum / (l[i * n + i] as number);
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = x[i] as number;
    for (let k = i + 1; k < n; k++) sum -= (l[k * n + i] as number) * (x[k] as number);
    x[i] = sum / (l[i * n + i] as number);
  }
  return x;
};

/** The inverse of L L', in full. */
export const inverse = (l: Float64Array, n: number): Float64Array => {
  const answer = new Float64Array(n * n);
  for (let j = 0; j < n; j++) {
    const unit = new Float64Array(n);
    unit[j] = 1;
    answer.set(solve(l, n, unit), j * n);
  }
  return answer;
};

export const logDeterminant = (l: Float64Array, n: number): number => {
  let sum = 0;
  for (let i = 0; i < n; i++) sum += 2 * Math.log(l[i * n + i] as number);
  return sum;
};

/** The matrix without row and column j. */
export const without = (a: Float64Array, n: number, j: number): Float64Array => {
  const smaller = new Float64Array((n - 1) * (n - 1));
  let at = 0;
  for (let r = 0; r < n; r++)
    for (let c = 0; c < n; c++) if (r !== j && c !== j) smaller[at++] = a[r * n + c] as number;
  return smaller;
};
