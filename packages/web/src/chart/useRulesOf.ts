import { NOTHING_CHOSEN, type RulesOf } from '@evenfall/record';
import { useKept } from '../app/context.js';

/** The rules of the version that a round names; null for one that is not at hand. */
export function useRulesOf(): RulesOf {
  const inForce = useKept(({ known }) => known.inForce.value);
  const rules = useKept(({ known }) => known.rules.value);
  return (version) => {
    if (version === null) return NOTHING_CHOSEN;
    return inForce?.presetVersion === version ? inForce : (rules?.[version] ?? null);
  };
}
