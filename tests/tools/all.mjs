// `npm test`: types, style, unit tests, build, browser tests. With --browsers only what another browser could change, on what is
// already built: the browser tests again, then Firefox and WebKit. The last line is the count.
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const onlyBrowsers = process.argv.includes('--browsers');
const count = { passed: 0, failed: 0 };
/** Test files that a step ran, as paths from the root. */
const ran = new Set();
const notRun = [];

// Everything runs with a temporary folder of its own, to see what is left in it. A short name: a browser's socket lies in there, and
// the path of a socket may have about a hundred characters.
const temp = mkdtempSync(join(tmpdir(), 'lw-'));
process.on('exit', () => rmSync(temp, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 }));
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => process.exit(1));
// Node's own cache of compiled code would be left there by design.
const env = { ...process.env, TMPDIR: temp, TMP: temp, TEMP: temp, NODE_DISABLE_COMPILE_CACHE: '1' };

const run = async (name, file, ...args) => {
  const began = Date.now();
  const status = await new Promise((resolve) =>
    spawn(process.execPath, [`node_modules/${file}`, ...args], { cwd: root, stdio: 'inherit', env })
      .on('error', resolve)
      .on('close', resolve),
  );
  console.log(`${status === 0 ? 'ok' : 'FAILED'}: ${name}, ${((Date.now() - began) / 1000).toFixed(1)} s\n`);
  const left = readdirSync(temp);
  if (left.length > 0) {
    console.log(`FAILED: ${name} left in the temporary folder: ${left.join(', ')}\n`);
    count.failed += 1;
    for (const entry of left) rmSync(join(temp, entry), { recursive: true, force: true });
  }
  return status === 0;
};

/** A step that is right or wrong as a whole: only a failure is counted. */
const check = async (name, file, ...args) => {
  const isRight = await run(name, file, ...args);
  if (!isRight) count.failed += 1;
  return isRight;
};

/** A vitest run, counted test by test. A test that was skipped, a file that could not run or a run that left no count is a failure. */
const tests = async (name, ...args) => {
  const report = join(root, 'reports', `${name}.json`);
  rmSync(report, { force: true });
  const isRight = await run(
    `${name} tests`,
    'vitest/vitest.mjs',
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
    ...args,
  );
  if (!existsSync(report)) {
    count.failed += 1;
    return;
  }
  const found = JSON.parse(readFileSync(report, 'utf8'));
  let failed = found.numFailedTests;
  for (const { name: file, status, assertionResults } of found.testResults) {
    ran.add(relative(root, file).split(sep).join('/'));
    if (status === 'failed' && assertionResults.length === 0) failed += 1;
    for (const { status, fullName } of assertionResults)
      if (!['passed', 'failed'].includes(status)) notRun.push(fullName);
  }
  count.passed += found.numPassedTests;
  count.failed += failed || (isRight ? 0 : 1);
};

/** The test files that this run should have run. */
const expected = () =>
  readdirSync(join(root, 'tests'), { recursive: true })
    .map((file) => `tests/${file.split(sep).join('/')}`)
    .filter((file) => /\.test\.tsx?$/.test(file))
    .filter((file) =>
      onlyBrowsers ? /^tests\/(browser|faults)\//.test(file) : !file.startsWith('tests/browser/engines/'),
    );

const DIST = join(root, 'dist');
mkdirSync(join(root, 'reports'), { recursive: true });
if (!onlyBrowsers) {
  await check('types', 'typescript/bin/tsc', '-b');
  await check('style', '@biomejs/biome/bin/biome', 'check', '.');
  await tests('unit');
  // So that a failed build is not tested as it was before.
  rmSync(DIST, { recursive: true, force: true });
  await check('build', 'vite/bin/vite.js', 'build');
}
if (existsSync(DIST)) {
  await tests('browser', '--config', 'tests/browser/vitest.config.ts');
  if (onlyBrowsers) await tests('engines', '--config', 'tests/browser/engines/vitest.config.ts');
} else {
  console.log('no browser tests: there is no build to run them on\n');
}

notRun.push(...expected().filter((file) => !ran.has(file)));
count.failed += notRun.length;
if (notRun.length > 0) console.log(`not run, so failed: ${notRun.join('; ')}`);
console.log(`${count.passed} passed, ${count.failed} failed`);
process.exitCode = count.failed > 0 || count.passed === 0 ? 1 : 0;
