import { expect, test } from 'vitest';
import type { SeriesEvidence } from '../content/series.js';
import type { StoredEntry } from '../entry/entry.js';
import { homeEvidence, keptReading, seriesContentOf } from '../testing/series.js';
import { frame, idOf, kept } from '../testing/work.js';
import { chartSeries } from './chartSeries.js';
import { sleepPutRight, withSleep } from './sleepPutRight.js';

const hours = (from: number, to: number) => ({ from: from * 60, to: to * 60 });

/** Invented: four readings, one of them severe, at hours that two diaries call asleep or awake. */
const READINGS = ['14:00', '20:00', '23:30', '06:30'].map((time, at) =>
  keptReading(`2026-07-0${at < 3 ? 1 : 2}T${time}:00.000+01:00`, at === 0 ? '196/118 80' : '128/80 70'),
);

function recording(id: number, more: Partial<SeriesEvidence>, amends: number | null = null): StoredEntry {
  const evidence = homeEvidence(READINGS, { of: 'ambulatory', ...more });
  const old = amends === null ? null : { entry: idOf(amends), reason: 'other' as const, text: 'a slip' };
  const more_ = { id: idOf(id), round: idOf(501), sequence: id, amends: old };
  return kept(frame('series', seriesContentOf(evidence), more_), id);
}
const charted = (...entries: StoredEntry[]) => chartSeries(entries, () => null)[0];

// Out-of-office handbook 7: the diary (in bed, out of bed) is the reference for day and night.
test('the night goes by the hours that were put right, and what stood before is still read', () => {
  const first = recording(1, { asleep: hours(22, 6) });
  const second = recording(2, { asleep: hours(23, 7), nap: hours(14, 15) }, 1);
  const third = recording(3, { asleep: null }, 2);
  expect(charted(first)?.value.counts).toMatchObject({ day: 3, night: 1 });
  expect(charted(first, second)?.value.counts).toMatchObject({ day: 1, night: 2 });
  // Not known: the night of the general rules, by the clock.
  expect(charted(first, second, third)?.value.dayNightBy).toBe('clock');
  expect(sleepPutRight([first, second, third])).toEqual([
    {
      entry: second,
      before: { asleep: hours(22, 6), nap: null },
      after: { asleep: hours(23, 7), nap: hours(14, 15) },
    },
    {
      entry: third,
      before: { asleep: hours(23, 7), nap: hours(14, 15) },
      after: { asleep: null, nap: null },
    },
  ]);
});

test('an amendment that leaves the hours as they were puts no sleep right', () => {
  const first = recording(1, { asleep: hours(22, 6) });
  expect(sleepPutRight([first, recording(2, { asleep: hours(22, 6), note: 'more' }, 1)])).toEqual([]);
});

test('an alert that was closed stays closed, and the readings keep their places', () => {
  const first = recording(1, { asleep: hours(22, 6) });
  const second = recording(2, { asleep: hours(23, 7) }, 1);
  const told = {
    conditions: ['severe-away'],
    toldWhom: 'Dr Larch (invented)',
    toldAt: { at: '2026-07-03T09:00:00.000Z', zone: 'UTC', asEntered: null },
    saidBack: 'calls today',
    saw: [idOf(1)],
  };
  const closing = kept(
    frame('act-now-closed', told, { id: idOf(9), round: idOf(501), sequence: 9, schema: 2 }),
    1.5,
  );
  expect(charted(first)?.open).toHaveLength(1);
  const now = charted(first, closing, second);
  expect([now?.open, now?.alerts.length]).toEqual([[], 1]);
  expect(now?.content.readings).toEqual(charted(first)?.content.readings);
});

test('hours that are not known leave no nap, which would be taken for the night', () => {
  const { content } = recording(1, { asleep: hours(22, 6), nap: hours(14, 15) });
  const evidence = withSleep(content as never, { asleep: null, nap: hours(14, 15) });
  expect([evidence.asleep, evidence.nap, 'value' in evidence]).toEqual([null, null, false]);
});
