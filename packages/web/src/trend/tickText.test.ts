import { wordsFor } from '@evenfall/words';
import { scaleUtc } from 'd3-scale';
import { expect, test } from 'vitest';
import { tickText } from './tickText.js';

const words = wordsFor('en-GB');
const DAY = 86_400_000;

/** What stands under a drawing of some days that begins at noon. */
function under(days: number): readonly string[] {
  const from = Date.UTC(2026, 10, 23, 12);
  const span = { from, to: from + days * DAY };
  const ticks = scaleUtc().domain([span.from, span.to]).ticks(7);
  return ticks.map((tick) => tickText(tick.getTime(), span, words));
}

test('under some days no date stands twice: what falls within a day says the time', () => {
  for (const days of [1, 2, 3.4, 5, 9, 40, 200]) {
    const dates = under(days).filter((text) => !text.includes(':'));
    expect([days, new Set(dates).size]).toEqual([days, dates.length]);
  }
  expect(under(3.4)).toContain('12:00');
  expect(under(3.4)).toContain('25 Nov');
});
