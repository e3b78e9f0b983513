import type { Parsed } from '../contract/refusal.js';
import { readTapTimes, refusalOfAll, type TapTime } from './tapTimes.js';

/**
 * Reads a text with one time a line, in seconds from any zero, each later than the one before (two equal times
 * are out of order). Blank lines and lines that start with `#` are skipped but counted as lines; spaces around
 * a time, CRLF and a byte-order mark do no harm.
 *
 * Errors, all together, field `/seconds`, with their `line`: `not-a-number`, `out-of-order`, `out-of-range`;
 * without a line: `missing` (no time at all), `impossible` (over 400 a minute).
 * Source: docs/conventions.md section 5.
 */
export function parseTapLines(text: string): Parsed<readonly number[]> {
  const times: TapTime[] = [];
  for (const [index, line] of text.split(/\r\n|\n|\r/).entries()) {
    const got = line.trim();
    if (got !== '' && !got.startsWith('#')) times.push({ got, field: '/seconds', line: index + 1 });
  }
  const { seconds, refusals } = readTapTimes(times);
  if (refusals.length > 0) return { ok: false, refusals };
  const impossible = refusalOfAll(seconds, '/seconds');
  return impossible === null ? { ok: true, value: seconds } : { ok: false, refusals: [impossible] };
}
