// Node built-ins only: this runs before anything is installed.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Node 20.19 or newer is needed; this is ${process.version}.`);
  process.exit(1);
}

/** Runs npm with its own script, so that no shell is needed. Ends this process where npm fails. */
export function npm(...args) {
  const script = process.env.npm_execpath;
  const [command, before, shell] = script
    ? [process.execPath, [script], false]
    : ['npm', [], process.platform === 'win32'];
  // Standard output stays free for answers (`npx evenfall count --json`).
  const ran = spawnSync(command, [...before, ...args], { cwd: root, stdio: ['inherit', 2, 2], shell });
  if (ran.status !== 0) process.exit(ran.status ?? 1);
}

/** Installs what the lock file says, once for each lock file and kind of machine. */
export function ensureInstalled() {
  const stamp = join(root, 'node_modules', '.ready');
  const wanted = createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .update(process.versions.modules + process.platform + process.arch)
    .digest('hex');
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted) return;
  npm('ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error');
  writeFileSync(stamp, wanted);
}

const NOT_SOURCES = new Set(['node_modules', 'bundle', 'dist', 'dist-types', 'fixtures', 'prove']);

function newest(folder) {
  let time = 0;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    if (
      NOT_SOURCES.has(entry.name) ||
      entry.name.endsWith('.tsbuildinfo') ||
      /\.test\.tsx?$/.test(entry.name)
    )
      continue;
    const path = join(folder, entry.name);
    time = Math.max(time, entry.isDirectory() ? newest(path) : statSync(path).mtimeMs);
  }
  return time;
}

/** When something that a build is made of was last changed; ms. */
export function newestSource() {
  return Math.max(
    newest(join(root, 'packages')),
    ...['package-lock.json', 'tsconfig.base.json'].map((file) => statSync(join(root, file)).mtimeMs),
  );
}

/** Builds the packages and the app, if a source is newer than the last build. */
export function ensureBuilt() {
  const mark = join(root, '.cache', 'built');
  const changed = newestSource();
  const made = ['cli/bundle/main.js', 'server/bundle/main.js', 'web/dist/index.html'];
  const isWhole = made.every((file) => existsSync(join(root, 'packages', file)));
  if (isWhole && existsSync(mark) && statSync(mark).mtimeMs > changed) return;
  npm('run', '--silent', 'build');
  mkdirSync(join(root, '.cache'), { recursive: true });
  writeFileSync(mark, '');
}

/** A Chromium for the tests: one on the machine, else the one that comes with an npm package (Linux x64). */
export async function ensureBrowser() {
  if (process.env.CHROME_PATH) return process.env.CHROME_PATH;
  const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
  for (const folder of (process.env.PATH ?? '').split(delimiter)) {
    for (const name of names) if (existsSync(join(folder, name))) return join(folder, name);
  }
  if (process.platform === 'linux' && process.arch === 'x64') {
    process.env.AWS_LAMBDA_JS_RUNTIME ??= 'nodejs20.x'; // makes the package unpack its own NSS libraries
    return (await import('@sparticuz/chromium')).default.executablePath();
  }
  throw new Error('No browser found: install Chromium or Chrome, or set CHROME_PATH.');
}
