import { NOTHING_CHOSEN, type RulesOf } from '@evenfall/record';
import { useKept } from '../app/context.js';

/** The rules of the version in force; what was made under another is made again by the general rules, alerts on. */
export function useRulesOf(): RulesOf {
  const inForce = useKept(({ known }) => known.inForce.value);
  return (version) => (inForce !== null && version === inForce.presetVersion ? inForce : NOTHING_CHOSEN);
}
