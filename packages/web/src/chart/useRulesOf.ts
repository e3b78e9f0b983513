import { type InForce, NOTHING_CHOSEN, type RulesOf } from '@evenfall/record';
import { useKept } from '../app/context.js';

/** The rules of the version that a round names; null for one that is not at hand. */
export function useRulesOf(): RulesOf {
  const inForce = useKept(({ known }) => known.inForce.value);
  const rules = useKept(({ known }) => known.rules.value);
  return rulesAmong(inForce, rules);
}

/** The same of what is in force and what is kept here. */
export function rulesAmong(
  inForce: InForce | null,
  rules: Readonly<Record<string, InForce>> | null,
): RulesOf {
  return (version) => {
    if (version === null) return NOTHING_CHOSEN;
    return inForce?.presetVersion === version ? inForce : (rules?.[version] ?? null);
  };
}
