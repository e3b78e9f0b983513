import type { Answer, Gives, RouteName, Send, Takes } from '@evenfall/api';
import { call } from '@evenfall/api/client';
import type { EntryFrame } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { signText } from '../app/signText.js';

/** The server as the page speaks to it: a route by name, typed, never throwing. */
export type Server = {
  readonly call: <N extends RouteName>(name: N, takes: Takes<N>) => Promise<Answer<Gives<N>>>;
};

/** How long an answer may take before the server counts as unreachable. */
const PATIENCE_MS = 15_000;

export function serverBy(fetching: typeof fetch): Server {
  const send: Send = (path, init) =>
    fetching(path, { ...init, cache: 'no-store', signal: AbortSignal.timeout(PATIENCE_MS) });
  return { call: (name, takes) => call(send, name, takes) };
}

type Refused = Extract<Answer<unknown>, { ok: false }>;

/** Why the server refused, in the words of this device; where it said nothing, that it did not work. */
export function refusedBecause({ problem }: Refused, words: Words): string {
  return problem === null ? words.sentence('app.failed') : words.sentAnswer(problem);
}

/** The rule of a cuff that is none of its list. */
const CUFF_RULE = 'cuff-of-scheme';

/**
 * Why the server refused something signed, in words that lead to what is to be changed: a place in what was sent is
 * called by what it is of, never by its pointer, and of a cuff it is said where it is put right.
 */
export function refusedSigned({ problem }: Refused, entries: readonly EntryFrame[], words: Words): string {
  if (problem === null) return words.sentence('app.failed');
  if (problem.problems.some(({ rule }) => rule === CUFF_RULE)) return words.sentence('app.refusedCuff');
  const nameOf = (field: string) => {
    const [, at, rest = ''] = /^\/entries\/(\d+)(.*)$/.exec(field) ?? [];
    const entry = at === undefined ? undefined : entries[Number(at)];
    const last = rest.split('/').at(-1);
    return entry === undefined || last === undefined || last === ''
      ? field
      : `${titleOf(entry, words)}: ${last}`;
  };
  return words.sentAnswer(problem, { nameOf });
}

/** What an entry is, as the screens call it; its kind where they have no name of it. */
function titleOf({ kind, content }: EntryFrame, words: Words): string {
  if (kind === 'run') return words.sentence('app.pressure');
  const of = (content as { evidence?: { count?: { of?: unknown } } } | null)?.evidence?.count?.of;
  return of === 'pulse' || of === 'breaths' ? signText(of, words) : kind;
}
