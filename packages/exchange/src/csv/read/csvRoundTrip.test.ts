import { projectChart, type ReportedContent } from '@evenfall/record';
import { wordsFor } from '@evenfall/words';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  amending,
  heard,
  type Made,
  ORLA,
  PERSON,
  reported,
  run,
  signing,
  WREN,
} from '../../../testing/charts.js';
import { chartCsv } from '../chartCsv.js';
import { readChartCsv } from './readChartCsv.js';

/** The values that stand in a chart, as they come back from its table. */
function again(all: readonly Made[]): readonly ReportedContent[] {
  const chart = projectChart(all.map(({ entry }) => entry));
  const about = {
    book: 'care',
    invented: false,
    person: PERSON,
    identity: ORLA,
    classIdentity: null,
  } as const;
  const text = chartCsv({
    ...about,
    chart,
    series: [],
    agents: [WREN],
    gaugesNow: [],
    words: wordsFor('en'),
  });
  const read = readChartCsv(text);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  expect(read.value.refused).toEqual([]);
  return read.value.reported.map(({ content }) => content);
}

const minutes = (most: number) =>
  fc.option(fc.integer({ min: 0, max: most * 10 }).map((tenths) => tenths / 10));
const words = fc.option(fc.constantFrom('by ear', 'left arm; "cuff" 12', "=1+1, a 'sum'", 'línea\ndos'));

/** What may be known of how somebody stood or lay. */
const posed = fc.record({
  uprightMinutes: minutes(60),
  lyingMinutes: minutes(1440),
  unwellUpright: fc.constantFrom(true, false, null),
});

// Interoperability handbook 14: a table that is written and read again says the same.
test('what is known of standing and lying comes back from a table, also of a reading that was amended', () => {
  fc.assert(
    fc.property(posed, posed, (first, amended) => {
      const posture = first.lyingMinutes === null ? 'stand' : 'lie';
      const at = { place: { posture }, posture: first } as const;
      const reading = run(1, heard(148, 92), at);
      const signed = [reading, signing(9, [reading])];
      expect(again(signed)[0]).toMatchObject({ ...first, posture });
      const put = run(11, heard(146, 90), { ...at, posture: amended, ...amending(1) });
      expect(again([...signed, put])).toMatchObject([
        { ...amended, posture, value: { of: 'pressure', systolic: 146, diastolic: 90 } },
      ]);
    }),
    { numRuns: 60 },
  );
});

test('a value from elsewhere comes back whole, but for where it stood and when this record took it', () => {
  fc.assert(
    fc.property(
      posed,
      fc.record({ by: words, method: words, site: words, posture: words, note: words, asSent: words }),
      fc.constantFrom(null, '2026-11-25T12:00:00Z'),
      (known, said, until) => {
        const value = { of: 'pressure', systolic: 148, diastolic: 92 } as const;
        const { content } = reported(1, value, { said: { ...known, ...said, until } }).entry;
        const [back] = again([reported(1, value, { said: { ...known, ...said, until } })]);
        const { source: _, status: __, by: ___, saidAt: ____, ...rest } = content as ReportedContent;
        expect(back).toMatchObject(rest);
      },
    ),
    { numRuns: 60 },
  );
});
