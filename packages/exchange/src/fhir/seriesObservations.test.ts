import type { SeriesReadingKept } from '@evenfall/record';
import { expect, test } from 'vitest';
import { bundleOf } from '../../testing/charts.js';
import { homeWeek } from '../../testing/series.js';
import { wrongInBundle } from '../../testing/validate.js';
import { chartBundle } from './chartBundle.js';

// Decision of this project: a sitting is typed with one time, and its second reading is kept a minute after it.
test('a reading whose minute nobody wrote down says so beside the time that keeps its order', () => {
  const { readings: week } = homeWeek(1).frame.content as { readings: SeriesReadingKept[] };
  const clock = week[0]?.at.at.slice(11, 16) as string;
  const readings = week.map((one, at) =>
    at > 1 ? one : { ...one, at: { ...one.at, asEntered: at === 0 ? clock : `~${clock}` } },
  );
  const bundle = chartBundle(bundleOf([homeWeek(1, { readings })]));
  expect(wrongInBundle(bundle)).toEqual([]);
  const notes = (bundle.entry ?? []).flatMap(({ resource }) =>
    resource?.resourceType === 'Observation' && resource.derivedFrom === undefined
      ? [(resource.note ?? []).map(({ text }) => text).join(' ')]
      : [],
  );
  const of = notes.slice(0, 6);
  const said = `Nobody wrote down the time: the usual one of its sitting. Reading 2 of the sitting of ${clock}: its own minute was not written down.`;
  // Pressure and pulse of each of three readings.
  expect(of).toEqual(['', '', said, said, '', '']);
});
