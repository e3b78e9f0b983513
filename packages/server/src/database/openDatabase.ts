import { PostgresDialect } from 'kysely';
import type { Pool, PoolConfig } from 'pg';
import { connectionTo, RECORD_DATABASE, RECORD_ROLE } from './cluster/endpoint.js';
import { type EmbeddedOptions, keepFolder } from './embedded.js';
import type { Keeper } from './keeper/keeper.js';
import { makePool } from './makePool.js';
import { type MemoryEngine, memoryDatabase } from './memoryDatabase.js';
import { sharedPool } from './sharedDatabase.js';
import { VALUE_TYPES } from './valueTypes.js';

export type DatabaseKind = 'embedded' | 'shared' | 'memory';

/** A database ready for migrations and queries, whatever runs it. */
export type OpenDatabase = {
  readonly kind: DatabaseKind;
  readonly pool: Pool;
  /** For Kysely, over the same pool. */
  readonly dialect: PostgresDialect;
  /** The keeper of the data folder; null where there is no folder of ours. */
  readonly keeper: Keeper | null;
  /** Lets everything go, in order. May be called more than once, and after Kysely has ended the pool. */
  close(): Promise<void>;
};

export type DatabaseOptions = EmbeddedOptions & {
  /** A shared PostgreSQL; the default is `DATABASE_URL`, except for the demo, which never shares. */
  readonly databaseUrl?: string;
  /** In this process's memory: for tests and a throw-away trial. */
  readonly inMemory?: MemoryEngine;
  /** Most connections at once; the embedded server takes 30 in all. */
  readonly connections?: number;
  /** An idle connection was lost, or the embedded server could not be started again. Must not throw. */
  readonly onProblem?: (problem: unknown) => void;
};

const CONNECTIONS = 10;
/** How long a connection that somebody forgot to give back may hold up closing. */
const LONGEST_END_MS = 2_000;

/**
 * Opens the database: in memory if asked to, else the shared one of `DATABASE_URL`, else an embedded one in the
 * data folder.
 *
 * Errors: `DatabaseProblem`.
 */
export async function openDatabase(options: DatabaseOptions = {}): Promise<OpenDatabase> {
  const env = options.env ?? process.env;
  const onProblem = options.onProblem ?? (() => undefined);
  const config: PoolConfig = { types: VALUE_TYPES, max: options.connections ?? CONNECTIONS };
  if (options.inMemory !== undefined) {
    const { pool, close } = await memoryDatabase(config, options.inMemory);
    return opened('memory', pool, null, close, onProblem);
  }
  // A folder that was named is meant, whatever the environment says; so is the demo's.
  const isFolderMeant = options.purpose === 'demo' || options.folder !== undefined;
  const fromEnvironment = isFolderMeant ? undefined : env.DATABASE_URL;
  const url = options.databaseUrl ?? fromEnvironment;
  if (url !== undefined && url !== '') {
    return opened('shared', await sharedPool(url, config), null, async () => undefined, onProblem);
  }
  const keeper = await keepFolder({ ...options, onLost: onProblem });
  const pool = makePool({ ...config, ...connectionTo(keeper.endpoint, RECORD_ROLE, RECORD_DATABASE) });
  return opened('embedded', pool, keeper, keeper.close, onProblem);
}

function opened(
  kind: DatabaseKind,
  pool: Pool,
  keeper: Keeper | null,
  closeRest: () => Promise<void>,
  onProblem: (problem: unknown) => void,
): OpenDatabase {
  let closed: Promise<void> | null = null;
  // While closing, a connection that the server ends first is no problem.
  pool.on('error', (problem) => {
    if (closed === null) onProblem(problem);
  });
  const close = async () => {
    await endPool(pool);
    await closeRest();
  };
  return {
    kind,
    pool,
    dialect: new PostgresDialect({ pool }),
    keeper,
    close: () => {
      closed ??= close();
      return closed;
    },
  };
}

async function endPool(pool: Pool): Promise<void> {
  if (pool.ended || pool.ending) return;
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<void>((resolve) => {
    timer = setTimeout(resolve, LONGEST_END_MS);
  });
  await Promise.race([pool.end(), late]);
  clearTimeout(timer);
}
