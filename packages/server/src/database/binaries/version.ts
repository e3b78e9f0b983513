import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { type DatabaseAccount, spawnAs } from '../account/account.js';
import { DatabaseProblem, errorCode } from '../problem.js';
import { childEnvironment } from './environment.js';

const run = promisify(execFile);

/** A program that is going to answer does so in milliseconds; a cold disk may need seconds. */
const LONGEST_ANSWER_MS = 30_000;

/**
 * The major version the program itself states, run as the account: so the answer also says that it starts.
 *
 * Errors: `binaries-unreachable` where the account may not run it, `binaries-unusable` where it stops.
 */
export async function majorOf(postgres: string, account: DatabaseAccount): Promise<number> {
  const options = { ...spawnAs(account), env: childEnvironment(), cwd: '/', timeout: LONGEST_ANSWER_MS };
  try {
    const { stdout } = await run(postgres, ['--version'], options);
    const major = /\(PostgreSQL\) (\d+)/.exec(stdout)?.[1];
    if (major === undefined) throw new Error(`no version in ${JSON.stringify(stdout)}`);
    return Number(major);
  } catch (error) {
    throw new DatabaseProblem(errorCode(error) === 'EACCES' ? 'binaries-unreachable' : 'binaries-unusable', {
      field: 'EVENFALL_PG_BIN',
      expected: `PostgreSQL where ${account.name} may run it`,
      got: postgres,
      names: { folder: postgres, account: account.name, reason: reasonIn(error) },
      cause: error,
    });
  }
}

function reasonIn(error: unknown): string {
  if (typeof error === 'object' && error !== null && 'stderr' in error && error.stderr !== '') {
    return String(error.stderr).trim();
  }
  return error instanceof Error ? error.message : String(error);
}
