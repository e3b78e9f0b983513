import type { Flag } from '../contract/flag.js';
import { isLowCondition } from './worstAlerts.js';

type Made = {
  readonly needs: readonly Flag[];
  readonly actNow: readonly { readonly condition: string }[];
  readonly standing: { readonly flags: readonly { readonly code: string }[] } | null;
};

const LAYS_DOWN = ['standing-systolic-low', 'symptoms-on-standing'];

/**
 * Which readings an average still needs, as it is said beside it. What is due at once is said by the step that takes it, and is
 * no lack of the average; beside a low pressure, or of somebody who was laid down from their feet, nobody is told to rest an arm
 * and take another. No kept value changes: this is how it is read out.
 *
 * @param made what was made of a round, and what its average needs
 *
 * Source: bedside handbook 3.14 (stop: lie down), 3.15 (very low or unwell: at once, do not wait; common practice).
 */
export function needsBeside({ needs, actNow, standing }: Made): readonly Flag[] {
  const isLow = actNow.some(({ condition }) => isLowCondition(condition));
  if (isLow || standing?.flags.some(({ code }) => LAYS_DOWN.includes(code)) === true) return [];
  return needs.filter(({ code }) => code !== 'again-at-once');
}
