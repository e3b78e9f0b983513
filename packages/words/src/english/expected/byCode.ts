import type { RefusalCode } from '@evenfall/clinical';
import type { Figures } from '../../figures.js';
import type { Say } from '../../say.js';
import type { Expectation } from './expectation.js';

/** What to say for a rule that has no phrase of its own: true, if less exact. */
export const expectedByCode = {
  missing: (_f, say, choices) => (choices.length === 0 ? 'a value' : say.anyOf(choices)),
  'unknown-field': () => 'a field that exists',
  'unknown-id': (_f, say, choices) => (choices.length === 0 ? 'an id that exists' : say.anyOf(choices)),
  'unknown-option': () => 'an option that exists',
  repeated: () => 'only once',
  'not-a-number': () => 'a number',
  'not-whole': () => 'a whole number',
  'not-a-time': () => 'a time',
  'out-of-range': (f, say) => limits(f, say),
  'out-of-order': () => 'a value that follows the one before it',
  'not-below-systolic': () => 'a diastolic below the systolic',
  impossible: () => 'a value that can occur',
  contradicts: () => 'values that agree with each other',
  ambiguous: () => 'a value that can be read in one way only',
} as const satisfies Record<RefusalCode, Expectation>;

function limits(f: Figures, say: Say): string {
  const least = f.has('minimum') ? [`at least ${say.short(f.value('minimum'))}`] : [];
  const most = f.has('maximum') ? [`at most ${say.short(f.value('maximum'))}`] : [];
  const both = [...least, ...most];
  return both.length === 0 ? 'a value within the limits' : say.allOf(both);
}
