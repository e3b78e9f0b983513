import { type Count, countResult, UNKNOWN_CIRCUMSTANCES } from '@evenfall/clinical';
import type { InForce } from '@evenfall/record';
import { type DraftValue, isVoidValue } from './draft.js';
import { tapRules } from './tapRulesLater.js';

/** The rate of a value alone, whatever else was noticed; null for none. */
export function chartedRate(value: DraftValue, { countRules }: InForce): number | null {
  if (isVoidValue(value)) return null;
  return value.kind === 'taps'
    ? tapRules().tapResult(value.taps, { repair: true }).perMinute
    : countResult(value.count as Count, UNKNOWN_CIRCUMSTANCES, countRules).perMinute;
}
