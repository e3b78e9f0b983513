import { chartSeries, type RulesOf } from '@evenfall/record';
import { loadWords, wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { inForceBy } from '../../../record/src/testing/series.js';
import { inError, type Made } from '../../testing/charts.js';
import { homeWeek, recording, takenOut, UNDER_HOME_RULES } from '../../testing/series.js';
import { seriesTexts } from './seriesTexts.js';

const texts = (
  all: readonly Made[],
  notices: readonly string[] = [],
  words = wordsFor('en'),
  rulesOf: RulesOf = () => UNDER_HOME_RULES,
) =>
  seriesTexts(
    chartSeries(
      all.map(({ entry }) => entry),
      rulesOf,
    ),
    words,
    (date) => date,
    notices,
  );

// Week H1 of the out-of-office handbook 19: 136.5833/84.9583 with the first day left out, under the 85 that it would round to.
test('a series at home is its mean by a rule set, its days, and what was left out and why', () => {
  const [text = ''] = texts([homeWeek(1)], ['INVENTED']);
  const lines = text.split('\n');
  expect(lines[0]).toBe('INVENTED: Readings at home, 2026-07-01 to 2026-07-07.');
  expect(lines[1]).toMatch(/^Mean 137\/84\.96 mmHg\. Averaged by .*\(ish-2020\), rule home-2\.$/);
  expect(lines[2]).toBe('24 readings used on 6 days, 4 left out.');
  expect(lines[3]).toBe(
    'Left out, 4 readings: A reading of day 1 of measuring, which this rule set leaves out.',
  );
  expect(lines).toHaveLength(4);
});

// Recording A1 of the same: 129.8229/80.1146 over time, 137.3125/86.0312 awake, 115.1250/68.5000 asleep.
test('a recording has its day and night beside its mean of 24 hours', () => {
  const [text = ''] = texts([recording(1)]);
  expect(text).toContain('Recording over 24 hours, 2026-07-01 to 2026-07-02.');
  expect(text).toContain('Mean 130/80 mmHg.');
  expect(text).toContain('40 readings used, 1 left out.');
  expect(text).toContain(
    'By day 137/86 mmHg (32 readings), by night 115/69 mmHg (8); day and night by the diary.',
  );
  expect(text).toContain('The recorder gave no pressure');
});

test('what a hand decided and who has not agreed is said; one entered in error stands in no text', async () => {
  const [text = ''] = texts([homeWeek(1, { status: 'preliminary' }), takenOut(2, 1, 5, 'talking')]);
  expect(text).toMatch(/^Preliminary, not countersigned: Readings at home/);
  expect(text).toContain('Decided by hand, in or out of the mean: 1 reading.');
  expect(text).toContain('Left out, 1 reading: Taken out by hand.');
  expect(texts([homeWeek(1), inError(2, 1)])).toEqual([]);
  expect(texts([homeWeek(1)], [], await loadWords('es'))[0]).toContain('Lecturas en casa');
});

// Act-first rules of the general protocol: severe readings (bedside handbook 6) are told with the series too.
test('what is to be done at once goes along', () => {
  const { readings } = homeWeek(1).frame.content as { readings: object[] };
  const severe = { ...readings[8], systolic: 212, diastolic: 124 };
  const [text = ''] = texts([
    homeWeek(1, { readings: readings.with(8, severe) as never, features: ['chest-or-back-pain'] }),
  ]);
  expect(text).toContain('Act now: ');
});

// docs/conventions.md section 4: where the whole number would fall on the other side of a limit, decimals. By day 135 is one
// (out-of-office handbook 6: 135/85 awake).
test('a mean by day just under its limit is not written as the limit', async () => {
  const under = recording(1);
  const { value } = under.entry.content as { value: { day: { systolic: number } } };
  Object.assign(value, { day: { ...value.day, systolic: 134.97 } });
  const limits = () => inForceBy({ ambulatory: 'esc-2024' });
  expect(texts([under], [], wordsFor('en'), limits)[0]).toContain('By day 134.97/86 mmHg');
  expect(texts([under], [], await loadWords('es'), limits)[0]).toContain('De día 134,97/86 mmHg');
  // By rules that are not kept here nobody can say on which side of them it is.
  expect(texts([under], [], wordsFor('en'), () => null)[0]).toContain('By day 134.97/86.03 mmHg');
});

test('what hands decided is judged by the general rules where those it came in under are not kept here, and it says so', () => {
  const all = [homeWeek(1), takenOut(2, 1, 5, 'talking')];
  const [text = ''] = texts(all, [], wordsFor('en'), () => null);
  expect(text).not.toContain('Averaged by ISH');
  expect(text).toContain(
    'Averaged by the general rules, rule home-2: what it came in under (ish-2020) is not kept here.',
  );
  expect(texts(all)[0]).toMatch(/Averaged by .*\(ish-2020\), rule home-2\./);
  // What no hand changed was made when it came in.
  expect(texts([homeWeek(1)], [], wordsFor('en'), () => null)[0]).toMatch(/Averaged by .*\(ish-2020\)/);
});
