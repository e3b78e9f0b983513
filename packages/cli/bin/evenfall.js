#!/usr/bin/env node
// The `evenfall` command. In a checkout that was never built, or compiled anew since, it builds first, once.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const built = new URL('../bundle/main.js', import.meta.url);
const packages = new URL('../../', import.meta.url);

/** When a file was last written; ms, 0 where there is none. */
const writtenAt = (file) => statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0;

const compiledAt = Math.max(
  ...readdirSync(packages).map((name) => writtenAt(new URL(`${name}/dist/.tsbuildinfo`, packages))),
);

if (writtenAt(built) < compiledAt || !existsSync(built)) {
  process.stderr.write('Building Evenfall (once) ...\n');
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  const root = fileURLToPath(new URL('../../..', import.meta.url));
  const build = spawnSync(npm, ['run', '--silent', 'programs'], { cwd: root, encoding: 'utf8' });
  if (build.status !== 0 || !existsSync(built)) {
    // What was built before is of other rules than the pages and the sources: it is not run.
    process.stderr.write(`${build.stdout ?? ''}${build.stderr ?? ''}evenfall: the build failed.\n`);
    process.exit(1);
  }
}

await import(built.href);
