import { expect, test } from 'vitest';
import { H1, homeEvidence, inForceBy, keptReading, seriesContentOf } from '../testing/series.js';
import { addedEvidence, continuedSeries, keptApart } from './continuedSeries.js';
import type { SeriesEvidence } from './series.js';
import { seriesMade } from './seriesMade.js';

const ISH = inForceBy({ home: 'ish-2020' });
const reading = (day: string, more = {}) => keptReading(`2026-07-${day}T07:30:00+01:00`, '138/86 74', more);

/** Whether readings on a day of July go on with the first days of July. */
function goesOn(
  day: string,
  more: Partial<SeriesEvidence> = {},
  before: Partial<SeriesEvidence> = {},
): boolean {
  const first = { id: 'a', content: seriesContentOf(homeEvidence(H1.slice(0, 20), before), ISH) };
  const evidence = homeEvidence([reading(day)], more);
  return continuedSeries([first], evidence, ISH)?.id === 'a';
}

// Days 1 to 5 are there; two days without a reading are the most (decision of this project).
test.each([
  ['05', true],
  ['06', true],
  ['08', true],
  ['09', false],
])('readings from 2026-07-%s on go on with the first to the fifth: %s', (day, isSo) => {
  expect(goesOn(day)).toBe(isSo);
});

test('readings of another device, site, kind, diary or treatment are apart; what one does not say parts nothing', () => {
  expect(goesOn('06', { treated: true })).toBe(true);
  expect(goesOn('06', { treated: true }, { treated: false })).toBe(false);
  expect(goesOn('06', { of: 'ambulatory' })).toBe(false);
  expect(goesOn('06', { readings: [reading('06', { site: 'wrist' })] })).toBe(false);
  const named = { readings: H1.slice(0, 20).map((one) => ({ ...one, device: 'A' })) };
  expect(goesOn('06', { readings: [reading('06', { device: 'A' })] }, named)).toBe(true);
  expect(goesOn('06', { readings: [reading('06', { device: 'B' })] }, named)).toBe(false);
  expect(goesOn('06', {}, named)).toBe(true);
  // One device, written now so and now so.
  const cuff = { readings: H1.slice(0, 20).map((one) => ({ ...one, device: 'Invented 3, large cuff' })) };
  expect(goesOn('06', { readings: [reading('06', { device: 'invented 3 large  cuff' })] }, cuff)).toBe(true);
  expect(goesOn('06', { readings: [reading('06', { device: 'Invented 3, small cuff' })] }, cuff)).toBe(false);
});

test('what keeps them apart is named, all of it, and nothing where they go on or no series is near', () => {
  const apart = (day: string, more: Partial<SeriesEvidence>, before: Partial<SeriesEvidence> = {}) => {
    const first = { id: 'a', content: seriesContentOf(homeEvidence(H1.slice(0, 20), before), ISH) };
    return keptApart([first], homeEvidence([reading(day)], more), ISH)?.because;
  };
  expect(apart('06', { treated: true }, { treated: false })).toEqual(['treated']);
  const named = { readings: H1.slice(0, 20).map((one) => ({ ...one, device: 'A' })), treated: false };
  const other = { readings: [reading('06', { device: 'B', site: 'wrist' })], treated: true };
  expect(apart('06', other, named)).toEqual(['treated', 'device', 'site']);
  expect(apart('06', {})).toBeUndefined();
  expect(apart('09', { treated: true }, { treated: false })).toBeUndefined();
  // One that they go on with is enough.
  const both = ['a', 'b'].map((id) => {
    const treated = id === 'a';
    return { id, content: seriesContentOf(homeEvidence(H1.slice(0, 20), { treated }), ISH) };
  });
  expect(keptApart(both, homeEvidence([reading('06')], { treated: false }), ISH)).toBeNull();
});

// Out-of-office handbook 19, H1: days 2 to 7 are 136.5833/84.9583 (n 24).
test('both together come to what they would have come to at once: one first day is left out, not two', () => {
  const content = seriesContentOf(homeEvidence(H1.slice(0, 20)), ISH);
  const more = homeEvidence(H1.slice(20), { note: 'second half' });
  const both = seriesMade(addedEvidence(content, more), ISH, 'test');
  expect(both.value.mean.systolic).toBeCloseTo(136.5833, 4);
  expect(both.value.mean.diastolic).toBeCloseTo(84.9583, 4);
  expect([both.value.used, both.readings.length, both.note]).toEqual([24, 28, 'second half']);
  expect(both.readings.slice(0, 20)).toEqual(H1.slice(0, 20));
});

test('a refused row that the file has again is kept once', () => {
  const row = { line: 9, got: 'x;y', code: 'not-a-number', systolic: null, diastolic: null };
  const content = seriesContentOf(homeEvidence(H1.slice(0, 20), { refused: [row] }), ISH);
  const other = { ...row, line: 30 };
  const { refused } = addedEvidence(content, homeEvidence(H1.slice(20), { refused: [row, other] }));
  expect(refused).toEqual([row, other]);
});

test.each([
  [['severe-headache'], null, ['severe-headache']],
  [['severe-headache'], [], ['severe-headache']],
  [['severe-headache'], ['fit'], ['severe-headache', 'fit']],
  [['fit'], ['fit'], ['fit']],
  [[], null, null],
  [null, [], []],
  [null, null, null],
] as const)(
  'a danger sign that was said of the first days (%j) stays said, whatever is said then (%j): %j',
  (first, then, all) => {
    const severe = keptReading('2026-07-05T08:00:00+01:00', '214/128 90');
    const of = (features: readonly string[] | null) =>
      ({ features: features === null ? null : [...features] }) as Pick<SeriesEvidence, 'features'>;
    const content = seriesContentOf(homeEvidence([...H1.slice(0, 20), severe], of(first)), ISH);
    const both = addedEvidence(content, homeEvidence(H1.slice(20), of(then)));
    expect(both.features).toEqual(all);
    const { actNow } = seriesMade(both, ISH, 'test').value;
    if (first !== null && first.length > 0)
      expect(actNow).toEqual(expect.arrayContaining(content.value.actNow));
  },
);
