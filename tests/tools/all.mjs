// `npm test`: types, style, unit tests, build, browser tests; one closing line. With --every-engine also Firefox and WebKit.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const isCi = Boolean(process.env.CI);
const everyEngine = process.argv.includes('--every-engine');
const totals = { passed: 0, failed: 0, skipped: 0 };

const run = (name, file, ...args) => {
  const began = Date.now();
  const { status } = spawnSync(process.execPath, [`node_modules/${file}`, ...args], {
    cwd: root,
    stdio: 'inherit',
  });
  console.log(`${status === 0 ? 'ok' : 'FAILED'}: ${name}, ${((Date.now() - began) / 1000).toFixed(1)} s\n`);
  return status === 0;
};

/** A step that is right or wrong as a whole: only a failure is counted. */
const check = (name, file, ...args) => {
  const isRight = run(name, file, ...args);
  if (!isRight) totals.failed += 1;
  return isRight;
};

/** A vitest run, counted test by test. A file that could not run, or a run that left no count, is a failure too. */
const tests = (name, ...args) => {
  const report = `reports/${name}.json`;
  rmSync(`${root}${report}`, { force: true });
  const isRight = run(
    `${name} tests`,
    'vitest/vitest.mjs',
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
    ...args,
  );
  if (!existsSync(`${root}${report}`)) {
    totals.failed += 1;
    return;
  }
  const found = JSON.parse(readFileSync(`${root}${report}`, 'utf8'));
  const unrun = found.testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.length === 0,
  );
  const failed = found.numFailedTests + unrun.length;
  totals.passed += found.numPassedTests;
  totals.failed += failed || (isRight ? 0 : 1);
  totals.skipped += found.numPendingTests + found.numTodoTests;
  if (found.numTotalTests === 0) totals.failed += 1;
};

mkdirSync(`${root}reports`, { recursive: true });
check('types', 'typescript/bin/tsc', '-b');
check('style', '@biomejs/biome/bin/biome', 'check', '.');
tests('unit');
if (check('build', 'vite/bin/vite.js', 'build')) {
  tests('browser', '--config', 'tests/browser/vitest.config.ts');
  if (everyEngine) tests('engines', '--config', 'tests/browser/engines/vitest.config.ts');
} else {
  console.log('browser tests not run: there is nothing to run them on\n');
}

const { passed, failed, skipped } = totals;
console.log(`${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`);
process.exitCode = failed > 0 || passed === 0 || (isCi && skipped > 0) ? 1 : 0;
