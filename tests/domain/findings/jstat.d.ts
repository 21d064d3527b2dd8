/** The few functions of jstat that the tests compare with; it ships no types. */
declare module 'jstat' {
  const jstat: {
    readonly studentt: { cdf(x: number, df: number): number };
    readonly chisquare: { cdf(x: number, df: number): number };
    readonly normal: { inv(p: number, mean: number, deviation: number): number };
    readonly hypgeom: { pdf(k: number, N: number, m: number, n: number): number };
    readonly binomial: { pdf(k: number, n: number, p: number): number };
  };
  export default jstat;
}
