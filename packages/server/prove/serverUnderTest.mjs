// A server process over a folder of its own, for the loops: started as the `evenfall` command starts it.
import { spawn } from 'node:child_process';
import { chmodSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

const main = fileURLToPath(new URL('../bundle/main.js', import.meta.url));
const isRoot = process.getuid?.() === 0;

/** A folder under the temp folder that an unprivileged account can reach. */
export function freshFolder() {
  const outer = mkdtempSync(join(tmpdir(), 'evenfall-prove-'));
  chmodSync(outer, 0o755);
  return { folder: join(outer, 'data'), remove: () => rmSync(outer, { recursive: true, force: true }) };
}

/** Starts a server; resolves with its process and what it told first. */
export async function startServer(folder, more = {}) {
  const settings = {
    mode: 'serve',
    purpose: 'clinic',
    folder,
    account: isRoot ? 'nobody' : null,
    port: 0,
    pages: null,
    log: false,
    ...more,
  };
  const { DATABASE_URL: _shared, ...env } = process.env;
  const child = spawn(process.execPath, [main, JSON.stringify(settings)], {
    stdio: ['pipe', 'pipe', 'pipe'],
    env,
  });
  let errors = '';
  child.stderr.on('data', (chunk) => {
    errors += chunk;
  });
  const ended = new Promise((resolve) => child.once('close', resolve));
  const first = (async () => {
    for await (const line of createInterface({ input: child.stdout })) return JSON.parse(line);
    return null;
  })();
  const told = await Promise.race([first, ended.then(() => null)]);
  if (told?.event !== 'ready') throw new Error(`the server did not start: ${JSON.stringify(told)} ${errors}`);
  const stop = () => {
    child.stdin.end();
    return ended;
  };
  return { child, ended, address: told.address, stop };
}

/** Every process below one, by the system's own table (Linux). */
export function processTree(pid) {
  const parents = new Map();
  for (const name of readdirSync('/proc')) {
    if (!/^\d+$/.test(name)) continue;
    try {
      const stat = readFileSync(`/proc/${name}/stat`, 'utf8');
      const parent = Number(stat.slice(stat.lastIndexOf(')') + 2).split(' ')[1]);
      parents.set(Number(name), parent);
    } catch {
      // it ended meanwhile
    }
  }
  const tree = [pid];
  for (let at = 0; at < tree.length; at += 1) {
    for (const [child, parent] of parents) if (parent === tree[at]) tree.push(child);
  }
  return tree;
}
