import { COUNT_RULE, GAUGE_RULE, RUN_RULE, type SectionName, SIGN_RULE, TAPS_RULE } from '@evenfall/clinical';
import type { InForce } from './inForce.js';

/** For each kind of entry that holds a computed value: the rule of this program, and the section that it goes by (null for none). */
export const COMPUTED = {
  count: { rule: COUNT_RULE, section: 'count' },
  taps: { rule: TAPS_RULE, section: 'count' },
  run: { rule: RUN_RULE, section: 'deflation' },
  sign: { rule: SIGN_RULE, section: null },
  'gauge-logged': { rule: GAUGE_RULE, section: 'equipment' },
} as const satisfies Record<string, { readonly rule: string; readonly section: SectionName | null }>;

export type ComputedKind = keyof typeof COMPUTED;

export function isComputed(kind: string): kind is ComputedKind {
  return Object.hasOwn(COMPUTED, kind);
}

/** The preset that a value of a kind must name under the rules in force; null where none was chosen. */
export function presetOf(kind: ComputedKind, inForce: InForce): string | null {
  const { section } = COMPUTED[kind];
  return section === null ? null : (inForce.presets[section] ?? null);
}
