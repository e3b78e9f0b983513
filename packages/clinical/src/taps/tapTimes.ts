import { isBlank, numberFrom } from '../contract/numberText.js';
import { type Refusal, refusal } from '../contract/refusal.js';
import { passes } from '../contract/threshold.js';
import { COUNT_COMPARISONS as COUNT_SIDE } from '../count/comparisons.js';
import { COUNT_FIGURES } from '../count/figures.js';
import { TAP_COMPARISONS as SIDE } from './comparisons.js';
import { TAP_FIGURES } from './figures.js';

/** A time as it came, and where: `field` for a list, `line` for a text. */
export type TapTime = { readonly got: unknown; readonly field: string; readonly line: number | null };

const CEILING_PER_MINUTE = COUNT_FIGURES.ceilingPerMinute.value;
const FURTHEST_SECONDS = TAP_FIGURES.furthestSeconds.value;

/**
 * Reads times in order of place. Each must be a number and later than the readable one before it; a tap that
 * goes back is refused once, and the next is compared with it, so that one slip does not refuse all the rest.
 */
export function readTapTimes(times: readonly TapTime[]): { seconds: number[]; refusals: Refusal[] } {
  const seconds: number[] = [];
  const refusals: Refusal[] = [];
  for (const time of times) {
    const value = numberFrom(time.got);
    const fault = value === null ? unreadable(time) : misplaced(time, value, seconds.at(-1));
    if (fault !== null) refusals.push(fault);
    if (value !== null) seconds.push(value);
  }
  return { seconds, refusals };
}

/** What makes all times together impossible: none at all, or more a minute than anybody has. */
export function refusalOfAll(seconds: readonly number[], field: string): Refusal | null {
  const first = seconds[0];
  const last = seconds.at(-1);
  if (first === undefined || last === undefined) return refusal(field, 'missing', 'at-least-one-time', null);
  if (seconds.length < 2) return null;
  const perMinute = (60 * (seconds.length - 1)) / (last - first);
  if (!passes(perMinute, COUNT_SIDE.ceilingPerMinute, CEILING_PER_MINUTE)) return null;
  return refusal(field, 'impossible', 'at-most-per-minute', null, {
    figures: { perMinute, ceilingPerMinute: CEILING_PER_MINUTE },
  });
}

function unreadable({ got, field, line }: TapTime): Refusal {
  return refusal(field, isBlank(got) ? 'missing' : 'not-a-number', 'a-number', got, { line });
}

function misplaced({ got, field, line }: TapTime, value: number, before: number | undefined): Refusal | null {
  if (passes(Math.abs(value), SIDE.furthestSeconds, FURTHEST_SECONDS)) {
    const figures = { furthestSeconds: FURTHEST_SECONDS };
    return refusal(field, 'out-of-range', 'nearer-to-zero-than', got, { line, figures });
  }
  if (before === undefined || value > before) return null;
  return refusal(field, 'out-of-order', 'later-than-the-one-before', got, {
    line,
    figures: { beforeSeconds: before },
  });
}
