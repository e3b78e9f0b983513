import { DEFAULT_CUFF_RULES } from '@evenfall/clinical';
import { useKept } from '../app/context.js';

/** The rules of the place for an arm; the published ones while they are not known, so that no fact waits for them. */
export function useCuffRules() {
  const inForce = useKept(({ known }) => known.inForce.value);
  return inForce?.roundRules.cuff ?? DEFAULT_CUFF_RULES;
}
