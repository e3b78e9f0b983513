import { openDatabase } from '../openDatabase.js';
import { DatabaseProblem } from '../problem.js';

/** Given to the program as JSON in its first argument. */
export type ChildOptions = {
  readonly folder: string;
  readonly env: Readonly<Record<string, string>>;
  /** Rows to write before it answers. */
  readonly rows: number;
};

/** What the program prints, as JSON on one line. */
export type ChildAnswer =
  | { readonly state: 'keeping'; readonly pid: number; readonly uid: number; readonly postgresPid: number }
  | { readonly state: 'refused'; readonly code: string; readonly figures: Record<string, number> };

/**
 * Opens an embedded database, writes some rows and waits: standard input that ends means close in order. It is
 * run as a program of its own by tests that kill it.
 */
async function keepUntilTold(options: ChildOptions): Promise<void> {
  const database = await openDatabase({
    env: options.env,
    folder: options.folder,
    account: { kind: 'throwaway' },
  });
  await database.pool.query('create table if not exists kept (n int primary key)');
  for (let n = 0; n < options.rows; n += 1) {
    await database.pool.query('insert into kept select coalesce(max(n), 0) + 1 from kept');
  }
  const postgresPid = database.keeper?.postgresPid() ?? 0;
  say({ state: 'keeping', pid: process.pid, uid: process.getuid?.() ?? -1, postgresPid });
  process.stdin.resume();
  process.stdin.once('end', () => void database.close().then(() => process.exit(0)));
}

function say(answer: ChildAnswer): void {
  process.stdout.write(`${JSON.stringify(answer)}\n`);
}

await keepUntilTold(JSON.parse(process.argv[2] ?? '{}') as ChildOptions).catch((error: unknown) => {
  if (!(error instanceof DatabaseProblem)) throw error;
  say({ state: 'refused', code: error.code, figures: { ...error.figures } });
  process.exitCode = 2;
});
