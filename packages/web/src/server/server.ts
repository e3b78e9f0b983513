import type { Answer, Gives, RouteName, Send, Takes } from '@evenfall/api';
import { call } from '@evenfall/api/client';

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

/** What the server refused, in its own words; null when it gave none. */
export function refusedBecause({ problem }: Refused): string | null {
  if (problem === null) return null;
  const messages = problem.problems.map(({ message }) => message);
  return messages.length > 0 ? messages.join(' ') : (problem.detail ?? problem.title);
}
