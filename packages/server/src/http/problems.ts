import type { Problem, ProblemDetails } from '@evenfall/api';
import type { Refusal } from '@evenfall/clinical';
import { wordsFor } from '@evenfall/words';
import type { Context } from 'hono';

const TITLES: Readonly<Record<number, string>> = {
  400: 'The request could not be read',
  401: 'Sign in first',
  403: 'This request is refused',
  404: 'Not found',
  405: 'Method not allowed',
  409: 'Already kept with other content',
  413: 'Too large',
  415: 'JSON is expected',
  422: 'Some values were refused',
  429: 'Too often',
  500: 'Evenfall failed',
  503: 'Not ready',
};

/** Refusals as problems in words. The catalogue is English until a request names another language it has. */
export function problemsOf(refusals: readonly Refusal[]): Problem[] {
  const words = wordsFor('en-GB');
  return refusals.map((refused) => words.problem(refused));
}

/** An answer of RFC 9457 problem details. What came is repeated in `problems` only, never in a log. */
export function problemAnswer(
  c: Context,
  status: number,
  refusals: readonly Refusal[] = [],
  detail: string | null = null,
): Response {
  const document: ProblemDetails = {
    type: 'about:blank',
    title: TITLES[status] ?? 'Refused',
    status,
    detail,
    problems: problemsOf(refusals),
  };
  return c.body(JSON.stringify(document), status as 400, { 'content-type': 'application/problem+json' });
}
