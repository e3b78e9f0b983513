import { type Refusal, refusal } from '@evenfall/clinical';
import type { EntryFrame } from './entry.js';

/**
 * What is wrong with a frame that holds an exercise or a scenario: it is of the book `simulated`, about nobody, in no round and in no
 * session, and never amended, so that nothing of it can stand in a chart.
 */
export function wrongOfPractice({ kind, book, person, round, session, amends }: EntryFrame): Refusal[] {
  if (kind !== 'exercise' && kind !== 'scenario') return [];
  const refusals: Refusal[] = [];
  if (book !== 'simulated')
    refusals.push(refusal('/book', 'contradicts', 'choice', book, { choices: ['simulated'] }));
  if (person !== null) refusals.push(refusal('/person', 'contradicts', 'nobody', person));
  if (round !== null) refusals.push(refusal('/round', 'contradicts', 'no-round', round));
  if (session !== null) refusals.push(refusal('/session', 'contradicts', 'no-session', session));
  if (amends !== null) refusals.push(refusal('/amends', 'contradicts', 'no-amendment', amends.entry));
  return refusals;
}
