import { type Parsed, refusal } from '../contract/refusal.js';
import { roundTo } from '../contract/rounding.js';
import type { Count } from './count.js';
import { parseCount } from './parseCount.js';
import type { CountRules } from './rules.js';

/** How somebody counted: all of a count but how many there were. */
export type HowCounted = Pick<Count, 'of' | 'windowSeconds' | 'clock' | 'first'>;

/**
 * The count behind a rate that was worked out in the head: 76 a minute, counted for 15 s, is 19. A rate that no whole
 * number in that window gives, as it stands or rounded, was not counted so and is refused.
 *
 * Units: per minute; the window in seconds.
 * Errors: `/pulse` or `/breaths` `impossible`, with the nearest rates that the window gives; what `parseCount`
 * refuses of the count.
 * Source: derived, bedside handbook 1.3 and 8 (C007).
 *
 * @example countOfRate(76, { of: 'pulse', windowSeconds: 15, clock: 'any', first: 1 }, rules) // n: 19
 */
export function countOfRate(perMinute: number, how: HowCounted, rules: CountRules): Parsed<Count> {
  const { of, windowSeconds, clock, first } = how;
  const rateOf = (n: number) => roundTo((60 * n) / windowSeconds, 0);
  const beats = (perMinute * windowSeconds) / 60;
  const [below, above] = [Math.floor(beats), Math.ceil(beats)];
  const n = [below, above].find((one) => rateOf(one) === perMinute);
  const countOf = (some: number) =>
    parseCount({ of, n: some, windowSeconds, clock, first: String(first) }, rules);
  const nearest = [below, above].map(countOf);
  if (n === undefined && nearest.every(({ ok }) => !ok)) return countOf(below);
  if (n === undefined) {
    // What is told to give instead can itself be given.
    const figures = {
      windowSeconds,
      ...(nearest[0]?.ok ? { belowPerMinute: rateOf(below) } : {}),
      ...(nearest[1]?.ok ? { abovePerMinute: rateOf(above) } : {}),
    };
    return {
      ok: false,
      refusals: [refusal(`/${of}`, 'impossible', 'reachable-in-window', perMinute, { figures })],
    };
  }
  return countOf(n);
}
