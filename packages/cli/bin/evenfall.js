#!/usr/bin/env node
// The `evenfall` command. In a checkout that was never built it builds first, once.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const built = new URL('../dist/main.js', import.meta.url);

if (!existsSync(built)) {
  process.stderr.write('Building Evenfall (once) ...\n');
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  const root = fileURLToPath(new URL('../../..', import.meta.url));
  const build = spawnSync(npm, ['run', '--silent', 'types'], { cwd: root, encoding: 'utf8' });
  if (build.status !== 0 || !existsSync(built)) {
    process.stderr.write(`${build.stdout ?? ''}${build.stderr ?? ''}evenfall: the build failed.\n`);
    process.exit(1);
  }
}

await import(built.href);
