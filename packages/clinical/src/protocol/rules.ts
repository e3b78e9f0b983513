import { type CountRules, DEFAULT_COUNT_RULES } from '../count/rules.js';
import { type CuffRules, DEFAULT_CUFF_RULES } from '../cuff/rules.js';
import { DEFAULT_DEFLATION_RULES, DEFAULT_INFLATION_RULES, type RunRules } from '../deflation/rules.js';
import { DEFAULT_PLAN_RULES, type PlanRules } from '../round/planRules.js';
import type { Protocol } from './protocol.js';
import type { FieldsOf } from './sections.js';

/**
 * The rules of counting under a protocol; without one, those of the conventions. A field that an older protocol
 * does not have yet takes its default.
 */
export function countRules(protocol: Protocol | null): CountRules {
  if (protocol === null) return DEFAULT_COUNT_RULES;
  const values = valuesOf(protocol.sections.count);
  // Until schema 2 one limit stood for both.
  const { fastPerMinute = DEFAULT_COUNT_RULES.fastPerMinute } = values;
  return { ...DEFAULT_COUNT_RULES, barredAbovePerMinute: fastPerMinute, ...values };
}

/** The rules of pumping up, letting down and reading under a protocol; the defaults for what it does not have. */
export function runRules(protocol: Protocol | null): RunRules {
  return {
    inflation: { ...DEFAULT_INFLATION_RULES, ...valuesOf(protocol?.sections.inflation) },
    deflation: { ...DEFAULT_DEFLATION_RULES, ...valuesOf(protocol?.sections.deflation) },
  };
}

/** The rules of choosing a cuff and a place for it under a protocol; the defaults for what it does not have. */
export function cuffRules(protocol: Protocol | null): CuffRules {
  return { ...DEFAULT_CUFF_RULES, ...valuesOf(protocol?.sections.cuff) };
}

/** What a round takes as a matter of course under a protocol; the defaults for what it does not have. */
export function planRules(protocol: Protocol | null): PlanRules {
  return { ...DEFAULT_PLAN_RULES, ...valuesOf(protocol?.sections.round) };
}

/** The values of a section's fields; none where the protocol is older than the section. */
export function valuesOf<Rules>(fields: FieldsOf<Rules> | undefined): Partial<Rules> {
  const entries = Object.entries((fields ?? {}) as Readonly<Record<string, { readonly value: unknown }>>);
  return Object.fromEntries(entries.map(([key, { value }]) => [key, value])) as Partial<Rules>;
}
