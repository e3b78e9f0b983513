export { fileText } from './fileText.js';
export { LARGEST_BODY_BYTES } from './limits.js';

import { PATHS, type RouteName } from './paths.js';
import type { Routes } from './routes.js';
import type { ProblemDetails } from './shapes.js';

type Output<S> = S extends { _zod: { output: infer O } } ? O : never;
type Input<S> = S extends { _zod: { input: infer I } } ? I : never;
type JsonOf<R> = R extends { content: { 'application/json': { schema: infer S } } } ? Output<S> : string;
type Ok<R> = R extends { responses: { 200: infer A } } ? JsonOf<A> : never;
type Request<R> = R extends { request: infer Q } ? Q : Record<never, never>;
type Part<Q, Key extends string, As extends string> = Q extends { [K in Key]: infer S }
  ? { [K in As]: Input<S> }
  : Record<never, never>;
type Body<Q> = Q extends { body: { content: { 'application/json': { schema: infer S } } } }
  ? { body: Input<S> }
  : Record<never, never>;

/** What a route takes: path parameters, query and body, as its schemas say. */
export type Takes<N extends RouteName> = Part<Request<Routes[N]>, 'params', 'params'> &
  Partial<Part<Request<Routes[N]>, 'query', 'query'>> &
  Body<Request<Routes[N]>>;
/** What a route answers when it accepts. */
export type Gives<N extends RouteName> = Ok<Routes[N]>;

/** The answer, or why not. `offline` is no answer at all: the request may or may not have arrived. */
export type Answer<T> =
  | { readonly ok: true; readonly status: number; readonly value: T }
  | {
      readonly ok: false;
      readonly status: number;
      readonly offline: boolean;
      readonly problem: ProblemDetails | null;
    };

/** Sends one request. A browser passes `fetch`; a command passes one that speaks through a socket. */
export type Send = (
  path: string,
  init: { method: string; headers: Record<string, string>; body?: string },
) => Promise<Response>;

/**
 * The typed client: `call(client, 'readPerson', { params: { book, person } })`.
 *
 * Errors: never throws for an answer of the server; a refusal is `ok: false` with its problem document.
 */
export async function call<N extends RouteName>(
  send: Send,
  name: N,
  takes: Takes<N>,
): Promise<Answer<Gives<N>>> {
  const { method, path } = PATHS[name];
  const given = takes as { params?: Record<string, string>; query?: Record<string, string>; body?: unknown };
  const filled = path.replace(/\{(\w+)\}/g, (_, key: string) =>
    encodeURIComponent(String(given.params?.[key])),
  );
  const query = given.query === undefined ? '' : `?${new URLSearchParams(given.query)}`;
  const init = {
    method: method.toUpperCase(),
    headers: {
      accept: 'application/json',
      ...(given.body === undefined ? {} : { 'content-type': 'application/json' }),
    },
    ...(given.body === undefined ? {} : { body: JSON.stringify(given.body) }),
  };
  let response: Response;
  let text: string;
  try {
    response = await send(filled + query, init);
    // The connection may also break while the answer comes; half an answer is none.
    text = await response.text();
  } catch {
    return { ok: false, status: 0, offline: true, problem: null };
  }
  const isJson = /json/.test(response.headers.get('content-type') ?? '');
  const { status } = response;
  if (!response.ok) {
    const problem = isJson ? (parsed(text) as ProblemDetails | undefined) : undefined;
    return { ok: false, status, offline: false, problem: problem ?? null };
  }
  const value = isJson ? parsed(text) : text;
  if (value === undefined) return { ok: false, status, offline: false, problem: null };
  return { ok: true, status, value: value as Gives<N> };
}

/** What a text is as JSON; undefined, which no JSON is, where it is not. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
