import type { Answer, Gives, RouteName, Send, Takes } from '@evenfall/api';
import { call } from '@evenfall/api/client';
import type { Words } from '@evenfall/words';

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
