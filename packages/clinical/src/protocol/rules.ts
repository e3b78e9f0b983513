import { type CountRules, DEFAULT_COUNT_RULES } from '../count/rules.js';
import type { Protocol } from './protocol.js';

/**
 * The rules of counting under a protocol; without one, those of the conventions. A field that an older protocol
 * does not have yet takes its default.
 */
export function countRules(protocol: Protocol | null): CountRules {
  if (protocol === null) return DEFAULT_COUNT_RULES;
  const values = Object.entries(protocol.sections.count).map(([key, { value }]) => [key, value]);
  return { ...DEFAULT_COUNT_RULES, ...(Object.fromEntries(values) as Partial<CountRules>) };
}
