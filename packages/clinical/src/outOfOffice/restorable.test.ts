import { expect, test } from 'vitest';
import { presetProtocol } from '../protocol/presetProtocol.js';
import { ambulatoryRules, homeRules } from '../protocol/rules.js';
import { ambulatoryResult } from './ambulatoryResult.js';
import { homeResult, NOTHING_BY_HAND } from './homeResult.js';
import { leftForGood } from './restorable.js';
import type { SeriesReading } from './seriesReading.js';
import { A1, H1, readingAt } from './testing.js';

const protocol = presetProtocol({ home: 'ish-2020', ambulatory: 'esc-2024' });
if (!protocol.ok) throw new Error('a preset');
const [home, day] = [homeRules(protocol.value), ambulatoryRules(protocol.value)];

const atHome = (readings: readonly SeriesReading[], restored: readonly number[] = []) =>
  homeResult(readings, { ...NOTHING_BY_HAND, restored: new Set(restored) }, home);
const overDay = (readings: readonly SeriesReading[], restored: readonly number[] = []) =>
  ambulatoryResult(
    readings,
    {
      ...NOTHING_BY_HAND,
      scheduled: null,
      isAllUsed: false,
      dayNight: { by: 'asleep-range', asleep: { from: 1380, to: 420 } },
      restored: new Set(restored),
    },
    day,
  );

// What the rules themselves do with each reason, so that a page never offers what changes nothing.
test('what was left out for good stays left out when a hand puts it back; anything else counts again', () => {
  const twin = { ...(H1[10] as SeriesReading), index: 29 };
  const wrist: SeriesReading = { ...readingAt(30, 3, '12:00', '150/92 70'), site: 'wrist' };
  const week = [...H1, twin, wrist];
  const blank = { ...readingAt(41, 0, '12:15', ''), systolic: null, diastolic: null, pulse: null };
  const late = readingAt(42, 1, '09:00', '140/88 70');
  const artefact = readingAt(43, 0, '12:20', '264/92 80');
  const recording = [...A1, blank, late, artefact, { ...(A1[3] as SeriesReading), index: 44 }];
  const seen = new Map<string, boolean>();
  for (const { index, code } of atHome(week).dropped)
    seen.set(code, atHome(week, [index]).used > atHome(week).used);
  for (const { index, code } of overDay(recording).edited)
    seen.set(code, overDay(recording, [index]).counts.kept > overDay(recording).counts.kept);
  expect([...seen].length).toBe(6);
  for (const [code, counts] of seen) expect([code, leftForGood(code) === null]).toEqual([code, counts]);
});
