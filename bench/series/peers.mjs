import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const PEERS = { '@duckdb/node-api': '1.5.6-r.1', arquero: '7.2.1' };

/** Both peers, installed into a temporary folder the first time: the project needs neither. */
export async function peers() {
  const folder = join(tmpdir(), 'evenfall-bench-peers');
  if (!Object.keys(PEERS).every((name) => existsSync(join(folder, 'node_modules', name)))) {
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, 'package.json'), JSON.stringify({ private: true, dependencies: PEERS }));
    const { status } = spawnSync('npm', ['install', '--no-audit', '--no-fund'], { cwd: folder, stdio: 'inherit' }); // biome-ignore format: one thought
    if (status !== 0) throw new Error('the peers could not be installed');
  }
  const from = createRequire(join(folder, 'package.json'));
  const { DuckDBInstance } = await import(pathToFileURL(from.resolve('@duckdb/node-api')));
  const aq = await import(pathToFileURL(join(folder, 'node_modules', 'arquero', 'src', 'index.js')));
  return { DuckDBInstance, aq };
}
