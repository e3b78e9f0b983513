import { type CountRules, DEFAULT_COUNT_RULES } from '../count/rules.js';
import type { Protocol } from './protocol.js';

/**
 * The rules of counting under a protocol; without one, those of the conventions. A field that an older protocol
 * does not have yet takes its default.
 */
export function countRules(protocol: Protocol | null): CountRules {
  if (protocol === null) return DEFAULT_COUNT_RULES;
  const entries = Object.entries(protocol.sections.count).map(([key, { value }]) => [key, value]);
  const values = Object.fromEntries(entries) as Partial<CountRules>;
  // Until schema 2 one limit stood for both.
  const { fastPerMinute = DEFAULT_COUNT_RULES.fastPerMinute } = values;
  return { ...DEFAULT_COUNT_RULES, barredAbovePerMinute: fastPerMinute, ...values };
}
