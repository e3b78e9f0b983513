import type { Context } from 'hono';
import type { Taken } from '../store/takeEntries.js';
import { problemAnswer } from './problems.js';

/** What a route answers once entries were taken: 201, 200 when all were kept before, 409 or 422 with problems. */
export function takenAnswer(c: Context, taken: Taken): Response {
  if (taken.outcome === 'conflict') return problemAnswer(c, 409, taken.refusals);
  if (taken.outcome === 'refused') return problemAnswer(c, 422, taken.refusals);
  const status = taken.entries.every(({ already }) => already) ? 200 : 201;
  return c.json({ entries: taken.entries }, status);
}
