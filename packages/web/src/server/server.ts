import type { Answer, Gives, RouteName, Send, Takes } from '@evenfall/api';
import { call } from '@evenfall/api/client';
import { ROUND_SIGNS } from '@evenfall/clinical';
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
 * called by what it is of, never by its pointer or a key, and of a cuff it is said where it is put right.
 */
export function refusedSigned({ problem }: Refused, entries: readonly EntryFrame[], words: Words): string {
  if (problem === null) return words.sentence('app.failed');
  if (problem.problems.some(({ rule }) => rule === CUFF_RULE)) return words.sentence('app.refusedCuff');
  const nameOf = (field: string) => {
    const [, at, rest = ''] = /^\/entries\/(\d+)(.*)$/.exec(field) ?? [];
    const entry = at === undefined ? undefined : entries[Number(at)];
    if (entry === undefined) return field;
    const name = known('sentField', rest.split('/').findLast((part) => /^[a-z]+$/i.test(part)) ?? '', words);
    return name === null ? titleOf(entry, words) : `${titleOf(entry, words)}: ${name}`;
  };
  return words.sentAnswer(problem, { nameOf });
}

/** What an entry is, as the screens call it. */
function titleOf({ kind, content }: EntryFrame, words: Words): string {
  const evidence = (content as { evidence?: Partial<Record<string, { of?: unknown }>> } | null)?.evidence;
  const of = evidence?.count?.of ?? evidence?.taps?.of ?? evidence?.sign?.of;
  const sign = ROUND_SIGNS.find((one) => one === of);
  if (sign !== undefined) return signText(sign, words);
  return known('sentEntry', kind, words) ?? words.title('sentEntry', 'other');
}

/** What the words call something of what was sent; null where they have no name of it. */
function known(of: 'sentField' | 'sentEntry', id: string, words: Words): string | null {
  const title = words.title(of, id);
  return title === id ? null : title;
}
