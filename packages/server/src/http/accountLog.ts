import type { LogLine } from './log.js';

/** What a line of signing in and of accounts is about; an account by its id alone, never by a name. */
type About = { readonly at: string; readonly account: string };

/**
 * One line of the log for each sign-in, lock, sign-out and change of an account. `at` is the server's clock (RFC 3339, UTC).
 * No name, no secret and nothing that was typed stands in it.
 */
export type AccountLine =
  | (About & { readonly event: 'signed-in'; readonly by: 'pass-phrase' | 'pin' })
  | (About & { readonly event: 'device-locked' })
  | (About & { readonly event: 'signed-out' })
  | SignInRefusedLine
  | AccountChangedLine;

/**
 * Somebody was not let in. `account` is null where no open account has that name, or where nothing was looked at. `why`:
 * a `wrong` secret; a try `too-often`, which was not looked at; a sign-in that `ended`, by too many wrong PINs or by time.
 */
export type SignInRefusedLine = {
  readonly at: string;
  readonly event: 'sign-in-refused';
  readonly account: string | null;
  readonly by: 'pass-phrase' | 'pin';
  readonly why: 'wrong' | 'too-often' | 'ended';
};

/** An account was made or changed, `by` an owner's account, its own user, or null for the command on this machine. */
export type AccountChangedLine = About & {
  readonly event: 'account-changed';
  readonly by: string | null;
  readonly what: readonly AccountPart[];
};

/** What was changed of an account. */
export type AccountPart =
  | 'made'
  | 'roles'
  | 'closed'
  | 'reopened'
  | 'first-pass-phrase'
  | 'pass-phrase'
  | 'pin';

type Without<Line, Key extends string> = Line extends unknown ? Omit<Line, Key> : never;

/** Writes lines of accounts, each with the time. */
export function accountLog(log: (line: LogLine) => void, now: () => Date) {
  return (line: Without<AccountLine, 'at'>): void => log({ at: now().toISOString(), ...line });
}
