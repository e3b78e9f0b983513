// npm test: installs what is needed and runs everything that CI runs. Ends with `N passed, N failed`.
// `npm test -- unit` (or types, lint, loops, e2e) runs a part.
import { spawnSync } from 'node:child_process';
import { chmodSync, chownSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureBrowser, ensureBuilt, ensureInstalled, root } from './ensure.mjs';

ensureInstalled();

const reports = join(root, '.cache', 'reports');
rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });

/** The unprivileged account of Linux. */
const NOBODY = 65534;

const bin = (name) => join(root, 'node_modules', '.bin', name);
const run = (command, args, env = {}) =>
  spawnSync(command, args, { cwd: root, stdio: 'inherit', env: { ...process.env, ...env } }).status ?? 1;

/** A step that is one check: its command ends with 0 or not. */
const check = (command, args) => () =>
  run(command, args) === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };

/** Unit and property tests, and the API on an embedded, a shared and an in-memory PostgreSQL. */
function unit() {
  const report = join(reports, 'unit.json');
  const status = run(bin('vitest'), [
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
  ]);
  return counted(report, status);
}

/**
 * The API and the database again as an ordinary user, where this is root: PostgreSQL then runs as the very account of
 * the program. An ordinary user has run them so already.
 */
function ordinary() {
  if (process.getuid?.() !== 0 || process.platform !== 'linux') return { passed: 0, failed: 0 };
  const home = mkdtempSync(join(tmpdir(), 'evenfall-ordinary-'));
  chownSync(home, NOBODY, NOBODY);
  chmodSync(home, 0o755);
  const report = join(home, 'ordinary.json');
  const inside = spawnSync('test', ['-r', join(root, 'package.json')], { uid: NOBODY, gid: NOBODY });
  if (inside.status !== 0) {
    console.log('Not run: this checkout lies in a folder that an ordinary user may not enter.');
    return { passed: 0, failed: 0 };
  }
  const args = ['run', '--configLoader=runner', '--no-cache', '--reporter=dot', '--reporter=json'];
  const folders = [
    'packages/server/src/http/away.test.ts',
    'packages/server/src/database/',
    'packages/server/src/keeping/backup.test.ts',
  ];
  const { status } = spawnSync(bin('vitest'), [...args, `--outputFile.json=${report}`, ...folders], {
    cwd: root,
    stdio: 'inherit',
    uid: NOBODY,
    gid: NOBODY,
    env: { ...process.env, HOME: home, TMPDIR: home },
  });
  return counted(report, status);
}

function counted(report, status) {
  const { numPassedTests: passed, numFailedTests: failed } = JSON.parse(readFileSync(report, 'utf8'));
  return { passed, failed: status === 0 ? failed : Math.max(1, failed) };
}

/** The heavy loops of `npm run prove`, short. */
function loops() {
  const results = [
    ['packages/server/prove/kill.mjs', '2'],
    ['packages/server/prove/fuzz.mjs', '1500'],
    ['packages/exchange/prove/series.mjs', '5000'],
  ].map(([script, times]) => check(process.execPath, [join(root, script), times])());
  return results.reduce(added);
}

/** The whole program in a real browser. */
async function e2e() {
  const report = join(reports, 'e2e.json');
  const env = { CHROME_PATH: await ensureBrowser(), PLAYWRIGHT_JSON_OUTPUT_NAME: report };
  const status = run(
    bin('playwright'),
    ['test', '--config=e2e/playwright.config.ts', '--reporter=list,json'],
    env,
  );
  const { expected: passed, unexpected, flaky } = JSON.parse(readFileSync(report, 'utf8')).stats;
  return { passed, failed: status === 0 ? unexpected + flaky : Math.max(1, unexpected + flaky) };
}

function added(a, b) {
  return { passed: a.passed + b.passed, failed: a.failed + b.failed };
}

const STEPS = {
  types: check(bin('tsc'), ['-b']),
  'types of the tests': check(bin('tsc'), ['-p', 'tsconfig.tests.json']),
  lint: check(bin('biome'), ['ci', '--colors=off', '--error-on-warnings', '.']),
  build: () => {
    ensureBuilt();
    return { passed: 1, failed: 0 };
  },
  unit,
  'unit as an ordinary user': ordinary,
  loops,
  e2e,
};

const wanted = process.argv.slice(2);
let total = { passed: 0, failed: 0 };
for (const [name, step] of Object.entries(STEPS)) {
  if (wanted.length > 0 && !wanted.some((word) => name.startsWith(word))) continue;
  console.log(`\n# ${name}`);
  const began = Date.now();
  let result;
  try {
    result = await step();
  } catch (error) {
    console.error(error);
    result = { passed: 0, failed: 1 };
  }
  console.log(
    `# ${name}: ${result.passed} passed, ${result.failed} failed, ${Math.round((Date.now() - began) / 1000)} s`,
  );
  total = added(total, result);
}
console.log(`\n${total.passed} passed, ${total.failed} failed`);
process.exit(total.failed === 0 && total.passed > 0 ? 0 : 1);
