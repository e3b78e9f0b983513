import type { Flag } from '../contract/flag.js';
import type { FurtherReadingCode } from './furtherReading.js';
import { isLowCondition } from './worstAlerts.js';

type Made = {
  readonly needs: readonly Flag[];
  readonly actNow: readonly { readonly condition: string }[];
  readonly standing: { readonly flags: readonly { readonly code: string }[] } | null;
};

/** What an average lacks because readings were too few: whoever is low is not made to rest an arm for it. */
const TOO_FEW: readonly string[] = [
  'more-readings',
  'more-readings-general',
  'raised-not-known',
  'irregular-more-readings',
] satisfies FurtherReadingCode[];
const LAYS_DOWN = ['standing-systolic-low', 'symptoms-on-standing'];

/**
 * Which readings an average still needs, as it is said beside it. What is due at once is said by the step that takes it, and is
 * no lack of the average; beside a low pressure nobody is told to rest an arm because readings are too few, but that two do not
 * agree is said always: the number between them is not to be relied on. Of somebody who was laid down from their feet nothing is
 * asked for. No kept value changes: this is how it is read out.
 *
 * @param made what was made of a round, and what its average needs
 *
 * Source: bedside handbook 3.14 (stop: lie down), 3.15 (very low or unwell: at once, do not wait; common practice).
 */
export function needsBeside({ needs, actNow, standing }: Made): readonly Flag[] {
  if (standing?.flags.some(({ code }) => LAYS_DOWN.includes(code)) === true) return [];
  const isLow = actNow.some(({ condition }) => isLowCondition(condition));
  return needs.filter(({ code }) => code !== 'again-at-once' && !(isLow && TOO_FEW.includes(code)));
}
