// npm test: installs what is needed and runs everything that CI runs. Ends with `N passed, N failed`.
// `npm test -- unit` (or types, lint, loops, e2e) runs a part.
import { spawn, spawnSync } from 'node:child_process';
import { chmodSync, chownSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statfsSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureBrowser, ensureBuilt, ensureInstalled, root } from './ensure.mjs';

ensureInstalled();

const reports = join(root, '.cache', 'reports');
rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });

/** The unprivileged account of Linux. */
const NOBODY = 65534;

/** The file system in memory that Linux has, and how much room there must be in it; bytes. */
const MEMORY = '/dev/shm';
const LEAST_ROOM = 8e9;

/**
 * Where what the tests make lies: in memory where there is room, since a database writes a lot to a disk that nobody keeps (a fifth of
 * the time of all tests). Elsewhere the folder of the system for that.
 */
function scratchFolder() {
  try {
    const { bavail, bsize } = statfsSync(MEMORY);
    const mounted = readFileSync('/proc/mounts', 'utf8').split('\n');
    const mayRun = mounted.some((line) => line.includes(` ${MEMORY} `) && !/\bnoexec\b/.test(line));
    if (!mayRun || bavail * bsize < LEAST_ROOM) return tmpdir();
    const folder = mkdtempSync(join(MEMORY, 'evenfall-'));
    chmodSync(folder, 0o1777);
    process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
    // Broken off by hand it would stay in memory.
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => process.exit(1));
    return folder;
  } catch {
    return tmpdir();
  }
}
const scratch = scratchFolder();

const bin = (name) => join(root, 'node_modules', '.bin', name);

/** Runs a command to its end: its status, and all that it said where that is to be kept together. */
function ran(command, args, { keepsTogether = false, ...options } = {}) {
  const stdio = keepsTogether ? ['ignore', 'pipe', 'pipe'] : 'inherit';
  return new Promise((resolve) => {
    const env = { ...process.env, TMPDIR: scratch };
    const child = spawn(command, args, { cwd: root, stdio, env, ...options });
    let said = '';
    for (const stream of [child.stdout, child.stderr]) {
      stream?.setEncoding('utf8').on('data', (text) => {
        said += text;
      });
    }
    child.on('error', (error) => resolve({ status: 1, said: `${said}${error}\n` }));
    child.on('close', (status) => resolve({ status: status ?? 1, said }));
  });
}
const run = async (command, args, env = {}) =>
  (await ran(command, args, { env: { ...process.env, TMPDIR: scratch, ...env } })).status;

/** A step that is one check: its command ends with 0 or not. What it says stays together, beside others. */
const check = (command, args) => async () => {
  const { status, said } = await ran(command, args, { keepsTogether: true });
  return { passed: status === 0 ? 1 : 0, failed: status === 0 ? 0 : 1, said };
};

/** Unit and property tests, and the API on an embedded, a shared and an in-memory PostgreSQL. */
async function unit() {
  const report = join(reports, 'unit.json');
  const status = await run(bin('vitest'), [
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
  ]);
  return counted(report, status);
}

/**
 * The folder, the programs, the cluster, its keeper and what is killed of them again as an ordinary user, where this is root:
 * PostgreSQL then runs as the very account of the program, which may stop and read what it owns and nothing else. What is asked
 * of PostgreSQL by SQL (the API, backups) is the same whoever runs it, and so are a database in memory and one that is shared.
 * An ordinary user has run them so already.
 */
async function ordinary() {
  if (process.getuid?.() !== 0 || process.platform !== 'linux') return { passed: 0, failed: 0 };
  const home = mkdtempSync(join(scratch, 'evenfall-ordinary-'));
  chownSync(home, NOBODY, NOBODY);
  chmodSync(home, 0o755);
  const report = join(home, 'ordinary.json');
  const inside = spawnSync('test', ['-r', join(root, 'package.json')], { uid: NOBODY, gid: NOBODY });
  if (inside.status !== 0) {
    const said = 'Not run: this checkout lies in a folder that an ordinary user may not enter.\n';
    return { passed: 0, failed: 0, said };
  }
  const args = ['run', '--configLoader=runner', '--no-cache', '--reporter=dot', '--reporter=json'];
  const asked = ['packages/server/src/database/', "--testNamePattern=^(?!'(memory|shared)')"];
  const { status, said } = await ran(bin('vitest'), [...args, `--outputFile.json=${report}`, ...asked], {
    keepsTogether: true,
    uid: NOBODY,
    gid: NOBODY,
    env: { ...process.env, HOME: home, TMPDIR: home },
  });
  return { ...counted(report, status), said };
}

function counted(report, status) {
  const { numPassedTests: passed, numFailedTests: failed } = JSON.parse(readFileSync(report, 'utf8'));
  return { passed, failed: status === 0 ? failed : Math.max(1, failed) };
}

/** The heavy loops of `npm run prove`, short. */
async function loops() {
  const scripts = [
    ['packages/server/prove/kill.mjs', '2'],
    ['packages/server/prove/fuzz.mjs', '500'],
    ['packages/exchange/prove/series.mjs', '2000'],
  ];
  let total = { passed: 0, failed: 0, said: '' };
  for (const [script, times] of scripts) {
    const one = await check(process.execPath, [join(root, script), times])();
    total = { ...added(total, one), said: total.said + one.said };
  }
  return total;
}

/** The whole program in a real browser. */
async function e2e() {
  const report = join(reports, 'e2e.json');
  const env = { CHROME_PATH: await ensureBrowser(), PLAYWRIGHT_JSON_OUTPUT_NAME: report };
  const status = await run(
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
  lint: check(bin('biome'), ['ci', '--colors=off', '--error-on-warnings', '.']),
  'types of the tests': check(bin('tsc'), ['-p', 'tsconfig.tests.json']),
  build: async () => {
    ensureBuilt();
    return { passed: 1, failed: 0 };
  },
  unit,
  'unit as an ordinary user': ordinary,
  loops,
  e2e,
};

/**
 * Which steps run beside each other, group after group. The browser leaves a third of two processors idle, for its
 * specs wait for clocks of the wall: what else takes its time runs beside it.
 */
const GROUPS = [
  ['types', 'lint'],
  ['types of the tests', 'build'],
  ['unit'],
  ['e2e', 'loops', 'unit as an ordinary user'],
];

const wanted = process.argv.slice(2);
const isWanted = (name) => wanted.length === 0 || wanted.some((word) => name.startsWith(word));

async function counting(name) {
  const began = Date.now();
  console.log(`\n# ${name}`);
  let result;
  try {
    result = await STEPS[name]();
  } catch (error) {
    console.error(error);
    result = { passed: 0, failed: 1 };
  }
  const seconds = Math.round((Date.now() - began) / 1000);
  console.log(
    `${result.said ?? ''}# ${name}: ${result.passed} passed, ${result.failed} failed, ${seconds} s`,
  );
  return result;
}

let total = { passed: 0, failed: 0 };
for (const group of GROUPS) {
  const results = await Promise.all(group.filter(isWanted).map(counting));
  total = results.reduce(added, total);
}
console.log(`\n${total.passed} passed, ${total.failed} failed`);
process.exit(total.failed === 0 && total.passed > 0 ? 0 : 1);
