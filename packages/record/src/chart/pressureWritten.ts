import { DEFAULT_DEFLATION_RULES, NOTHING_BESIDE, numbersText, shorthandOf } from '@evenfall/clinical';
import type { RunContent } from '../content/run.js';

/**
 * A pressure as the trade writes it: set by hand if it was. Three numbers where sounds went to zero, `P` where there
 * is none by palpation.
 *
 * @example '148/92', '122/P', '118/62/0'
 */
export function pressureWritten({ value, override }: Pick<RunContent, 'value' | 'override'>): string {
  if (override !== null) return `${override.systolic}/${override.diastolic ?? 'P'}`;
  return numbersText(shorthandOf(value, NOTHING_BESIDE, DEFAULT_DEFLATION_RULES));
}
