import type { Problem, ProblemDetails } from '@evenfall/api';
import type { Refusal } from '@evenfall/clinical';
import { type SentenceKey, wordsFor } from '@evenfall/words';
import type { Context } from 'hono';

const words = wordsFor('en-GB');

/** Why an answer is none, where no value of it is at fault: a key of the catalogue's `answers`. */
export type Reason =
  | 'not-json'
  | 'not-of-role'
  | 'other-address'
  | 'other-page'
  | 'backup-expected'
  | 'database-away';

/** What each status is called in the catalogue; the others are `other`. */
const STATUSES = [
  '400',
  '401',
  '403',
  '404',
  '405',
  '409',
  '413',
  '415',
  '422',
  '429',
  '500',
  '503',
] as const;

/** Refusals as problems: in English, and with what their words are made of, for a screen in another language. */
export function problemsOf(refusals: readonly Refusal[]): Problem[] {
  return refusals.map((refused) => {
    const { expected: rule, figures, choices } = refused;
    return { ...words.problem(refused), rule, figures: { ...figures }, choices: [...choices] };
  });
}

/** An answer of RFC 9457 problem details. What came is repeated in `problems` only, never in a log. */
export function problemAnswer(
  c: Context,
  status: number,
  refusals: readonly Refusal[] = [],
  code: Reason | null = null,
): Response {
  const named = STATUSES.find((one) => one === String(status)) ?? 'other';
  const key: SentenceKey | null = code === null ? null : `answers.${code}`;
  const document: ProblemDetails = {
    type: 'about:blank',
    title: words.sentence(`answers.${named}`),
    status,
    code,
    detail: key === null ? null : words.sentence(key),
    problems: problemsOf(refusals),
  };
  return c.body(JSON.stringify(document), status as 400, { 'content-type': 'application/problem+json' });
}
