/**
 * Why a database could not be opened. Codes never change meaning; new ones may be added. `names` holds what a
 * sentence about the code may quote (paths, accounts, the text to type), `figures` its numbers.
 *
 * - `account-needed` real data as root without a named account; names.type is what to type
 * - `account-unknown`, `account-is-root`, `account-other` the named account does not exist, is root, or is
 *   not the one this program runs as (only root can act for another)
 * - `folder-unreachable` names.blocked is the folder that names.account may not enter
 * - `folder-owner` the folder belongs to another account (figures.ownerId, not figures.accountId)
 * - `folder-not-ours` the folder is not empty and was not made by this program
 * - `no-record` nothing was to be made, and names.folder holds no record
 * - `folder-other-purpose` a demo folder opened as a clinic, or the other way round
 * - `folder-damaged` the cluster inside lacks a part this program cannot make again
 * - `folder-in-use` another keeper holds it: figures.pid, names.address (absent where it did not answer)
 * - `folder-other-major` figures.folderMajor against figures.binariesMajor: back up with the old, restore with
 *   the new
 * - `folder-unwritable` names.reason is the system's error code
 * - `socket-folder-taken` the short folder for sockets exists and is not the account's alone
 * - `binaries-missing`, `binaries-unreachable`, `binaries-unusable`, `binaries-too-old` no PostgreSQL for this
 *   platform; the account may not run it; it does not start; its major is under figures.oldestMajor
 * - `create-failed`, `start-failed`, `start-too-slow` names.log is the end of what PostgreSQL wrote
 * - `server-unreachable`, `server-refused`, `server-too-old`, `server-not-utf8` the PostgreSQL of DATABASE_URL
 */
export type DatabaseProblemCode =
  | 'account-needed'
  | 'account-unknown'
  | 'account-is-root'
  | 'account-other'
  | 'folder-unreachable'
  | 'folder-owner'
  | 'folder-not-ours'
  | 'no-record'
  | 'folder-other-purpose'
  | 'folder-damaged'
  | 'folder-in-use'
  | 'folder-other-major'
  | 'folder-unwritable'
  | 'socket-folder-taken'
  | 'binaries-missing'
  | 'binaries-unreachable'
  | 'binaries-unusable'
  | 'binaries-too-old'
  | 'create-failed'
  | 'start-failed'
  | 'start-too-slow'
  | 'server-unreachable'
  | 'server-refused'
  | 'server-too-old'
  | 'server-not-utf8';

/** The parts of a problem that not every code has. */
export type DatabaseProblemParts = {
  /** The option or variable a person would change: `--account`, `EVENFALL_DATA`. */
  readonly field?: string;
  /** What was asked for and what came, as text: a path, an account, a version. Never a password. */
  readonly expected?: string;
  readonly got?: string;
  readonly figures?: Readonly<Record<string, number>>;
  readonly names?: Readonly<Record<string, string>>;
  readonly cause?: unknown;
};

/** Thrown when a database cannot be opened; the message catalogue makes the sentence from its parts. */
export class DatabaseProblem extends Error {
  override readonly name = 'DatabaseProblem';
  readonly code: DatabaseProblemCode;
  readonly field: string | null;
  readonly expected: string | null;
  readonly got: string | null;
  readonly figures: Readonly<Record<string, number>>;
  readonly names: Readonly<Record<string, string>>;

  constructor(code: DatabaseProblemCode, parts: DatabaseProblemParts = {}) {
    super(plain(code, parts), parts.cause === undefined ? {} : { cause: parts.cause });
    this.code = code;
    this.field = parts.field ?? null;
    this.expected = parts.expected ?? null;
    this.got = parts.got ?? null;
    this.figures = parts.figures ?? {};
    this.names = parts.names ?? {};
  }
}

/** For a stack trace only: people read the catalogue's sentence. */
function plain(code: DatabaseProblemCode, parts: DatabaseProblemParts): string {
  const details = Object.entries({ ...parts.figures, ...parts.names }).map(
    ([key, value]) => `${key}=${value}`,
  );
  const field = parts.field === undefined ? [] : [parts.field];
  const expected = parts.expected === undefined ? [] : [`expected ${parts.expected}`];
  const got = parts.got === undefined ? [] : [`got ${parts.got}`];
  return [code, ...field, ...expected, ...got, ...details].join('; ');
}

/** The system's error code (`EACCES`, `ENOENT`), or an empty text where there is none. */
export function errorCode(error: unknown): string {
  if (typeof error !== 'object' || error === null || !('code' in error)) return '';
  return String(error.code);
}
