import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { chmodSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

const command = fileURLToPath(new URL('../packages/cli/bin/evenfall.js', import.meta.url));
const isRoot = process.getuid?.() === 0;

type Told = { address: string; lan: { addresses: string[]; explained: string | null } | null };

/** The program under test, started by its own command over a folder of its own. */
export class EvenfallServer {
  readonly folder: string;
  private readonly outer: string;
  private readonly demo: boolean;
  private child: ChildProcess | null = null;
  private readonly lan: boolean;
  address = '';
  /** Where it is reached in the network by TLS, and on plain HTTP; empty without `lan`. */
  network = { secure: '', plain: '' };

  /** `isOwn`: an invented clinic that is filled anew, in which nothing is what it is in another one. */
  constructor(options: { demo: boolean; lan?: boolean; isOwn?: boolean }) {
    this.demo = options.demo;
    this.lan = options.lan === true;
    this.outer = mkdtempSync(join(tmpdir(), 'evenfall-e2e-'));
    chmodSync(this.outer, 0o755);
    this.folder = join(this.outer, 'data');
    const filled = process.env.EVENFALL_E2E_DEMO;
    // With its owners: what is there belongs to the account of the database.
    if (!this.demo || filled === undefined || options.isOwn === true) return;
    const copied = spawnSync('cp', ['-a', filled, this.folder], { encoding: 'utf8' });
    if (copied.status !== 0) throw new Error(`the invented clinic was not copied: ${copied.stderr}`);
  }

  /** Options that name this record to another command. */
  record(): string[] {
    return ['--data', this.folder, ...(this.demo ? ['--demo'] : isRoot ? ['--account', 'nobody'] : [])];
  }

  /** Starts, on the same port as before after the first time. */
  async start(): Promise<void> {
    const port = this.address === '' ? '0' : new URL(this.address).port;
    const { DATABASE_URL: _shared, ...env } = process.env;
    const lan = this.lan ? ['--lan'] : [];
    const args = [command, 'serve', '--json', '--port', port, ...lan, ...this.record()];
    this.child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'inherit'], env });
    if (this.child.stdout === null) throw new Error('no output');
    for await (const line of createInterface({ input: this.child.stdout })) {
      const told = JSON.parse(line) as Told;
      this.address = told.address;
      if (told.lan !== null)
        this.network = { secure: told.lan.addresses[0] ?? '', plain: told.lan.explained ?? '' };
      return;
    }
    throw new Error('the server ended before it was ready');
  }

  /** Runs another command against the same record and answers what it printed. */
  async run(...args: string[]): Promise<string> {
    return await this.runWith('', ...args);
  }

  /** The same, with something on its standard input. */
  async runWith(input: string, ...args: string[]): Promise<string> {
    const { DATABASE_URL: _shared, ...env } = process.env;
    const child = spawn(process.execPath, [command, ...args, ...this.record()], {
      stdio: ['pipe', 'pipe', 'inherit'],
      env,
    });
    child.stdin.end(input);
    let text = '';
    for await (const chunk of child.stdout) text += String(chunk);
    return text;
  }

  /** As a crash or a dead battery: the command, the server and its database, at once. */
  async kill(): Promise<void> {
    const child = this.child;
    if (child?.pid === undefined) return;
    const ended = new Promise((resolve) => child.once('close', resolve));
    for (const pid of processTree(child.pid)) {
      try {
        process.kill(pid, 'SIGKILL');
      } catch {
        // it ended by itself meanwhile
      }
    }
    await ended;
    this.child = null;
  }

  async stop(): Promise<void> {
    await this.rest();
    this.remove();
  }

  /** Stops it in order; its folder stays. */
  async rest(): Promise<void> {
    const child = this.child;
    if (child === null) return;
    const ended = new Promise((resolve) => child.once('close', resolve));
    child.kill('SIGTERM');
    await ended;
    this.child = null;
  }

  remove(): void {
    rmSync(this.outer, { recursive: true, force: true });
  }
}

/** Every process below one, by the system's own table (Linux). */
function processTree(pid: number): number[] {
  const parents = new Map<number, number>();
  for (const name of readdirSync('/proc').filter((one) => /^\d+$/.test(one))) {
    try {
      const stat = readFileSync(`/proc/${name}/stat`, 'utf8');
      parents.set(Number(name), Number(stat.slice(stat.lastIndexOf(')') + 2).split(' ')[1]));
    } catch {
      // it ended meanwhile
    }
  }
  const tree = [pid];
  for (const parent of tree) for (const [child, of] of parents) if (of === parent) tree.push(child);
  return tree;
}
