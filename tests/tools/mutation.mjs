// Mutation testing of the joint's geometry: `node tests/tools/mutation.mjs [name ...]`, for instance `fit sizes`;
// without names, every file of src/domain/joint. Not part of `npm test`, and Stryker is not part of the install:
// it is put, with the versions below, into a directory of its own ($MUTATION_DIR, or one in the temporary directory),
// beside a copy of what it needs, and run there by npx. Brought by npx alone it would load a second vitest.
import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const DIR = process.env.MUTATION_DIR ?? join(tmpdir(), 'lidwright-mutation');
const JOINT = 'src/domain/joint';

const VERSIONS = {
  '@stryker-mutator/core': '9.6.1',
  '@stryker-mutator/vitest-runner': '9.6.1',
  vitest: '4.1.12',
  vite: '8.3.8',
  'fast-check': '4.10.2',
};

const COPIED = ['src/domain', 'shared', 'tests/domain/joint', 'tests/reference'];

/** Which tests judge which files: all of them at every mutant would take hours. The first that fits judges. */
const IN = 'tests/domain/joint';
const JUDGES = [
  { by: 'plan', of: /^plan/, tests: [`${IN}/{plan,plan-clearance,refusals,conflicts}.test.ts`] },
  {
    by: 'geometry',
    of: /./,
    tests: [`${IN}/!(plan*|no-nan).test.ts`, 'tests/reference/{joint-vectors,thread-tables}.test.ts'],
  },
];
const judgeOf = (name) => JUDGES.find(({ of }) => of.test(name));

const files = readdirSync(join(ROOT, JOINT)).map((file) => file.replace(/\.ts$/, ''));
const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !files.includes(name));
if (unknown.length > 0) throw new Error(`not in ${JOINT}: ${unknown.join(', ')}`);
const names = asked.length > 0 ? asked : files;

const write = (name, text) => writeFileSync(join(DIR, name), text);

const run = (command, ...args) => {
  const { status } = spawnSync(command, args, { cwd: DIR, stdio: 'inherit' });
  if (status !== 0) process.exit(status ?? 1);
};

mkdirSync(DIR, { recursive: true });
for (const path of COPIED) {
  rmSync(join(DIR, path), { recursive: true, force: true });
  mkdirSync(dirname(join(DIR, path)), { recursive: true });
  // The domain's tsconfig extends one that is not copied; vite would look for it.
  cpSync(join(ROOT, path), join(DIR, path), {
    recursive: true,
    filter: (from) => !from.endsWith('tsconfig.json'),
  });
}
write('package.json', JSON.stringify({ private: true, type: 'module', dependencies: VERSIONS }));
if (!existsSync(join(DIR, 'node_modules/@stryker-mutator/core')))
  run('npm', 'install', '--no-audit', '--no-fund');
// Every mutant meets its tests again: fewer draws of each law, so the score is if anything too low.
write('fewer-runs.ts', "import fc from 'fast-check';\nfc.configureGlobal({ numRuns: 20 });\n");

for (const judge of JUDGES) {
  const { by, tests } = judge;
  const mutated = names.filter((name) => judgeOf(name) === judge);
  if (mutated.length === 0) continue;
  const report = `mutation-${by}.json`;
  // Nothing in the domain keeps state, so its modules need not be loaded anew for every file of tests.
  const test = { include: tests, testTimeout: 60_000, setupFiles: ['fewer-runs.ts'], isolate: false };
  write('vitest.config.ts', `export default { test: ${JSON.stringify(test)} };\n`);
  write(
    'stryker.config.json',
    JSON.stringify({
      testRunner: 'vitest',
      // The judges are named: no need to look up, at every mutant, which tests import it.
      vitest: { related: false },
      mutate: mutated.map((name) => `${JOINT}/${name}.ts`),
      // No such file: Stryker 9 cannot read one with the TypeScript 7 that it may find.
      tsconfigFile: 'no-tsconfig.json',
      coverageAnalysis: 'perTest',
      // A mutant in a constant is met by every test at once and would cost the whole suite each.
      ignoreStatic: true,
      concurrency: 1,
      timeoutMS: 30_000,
      timeoutFactor: 4,
      reporters: ['progress-append-only', 'clear-text', 'json'],
      clearTextReporter: { allowColor: false, reportTests: false },
      jsonReporter: { fileName: report },
      thresholds: { high: 90, low: 85, break: asked.length > 0 ? null : 85 },
    }),
  );
  run('npx', '--no-install', 'stryker', 'run');
  console.log(`report: ${join(DIR, report)}`);
}
