import type { DebriefRules } from '@evenfall/practice';
import { NOTHING_CHOSEN } from '@evenfall/record';
import { useKept } from '../app/context.js';

/** The rules that a reading is judged by: those of the protocol in force here. */
export function useDebriefRules(): DebriefRules {
  return useKept(({ known }) => known.inForce.value) ?? NOTHING_CHOSEN;
}
