import type { Words } from './words.js';

/** What was answered when the emergency features were asked for, in one sentence. */
export function askedText(features: readonly string[], words: Words): string {
  if (features.length === 0) return words.sentence('result.asked');
  return words.sentence('result.askedSome', {
    text: features.map((feature) => words.title('feature', feature)).join(', '),
  });
}
