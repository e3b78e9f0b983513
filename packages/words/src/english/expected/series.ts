import type { Expectation } from './expectation.js';

/** Rules of a table of readings at home or over 24 hours. */
export const series = {
  'date-order': (_f, say, choices) =>
    `dates that can be read in one way: say their order, ${say.anyOf(choices)} (--dates)`,
  'zone-of-times': () => 'a time with its offset, or the zone of the clock (--zone Europe/Lisbon)',
  'iana-zone': () => 'a zone by its name, such as Europe/Lisbon',
  'unit-of-pressures': (_f, say, choices) =>
    `pressures in mmHg; these look like kPa: say which, ${say.anyOf(choices)} (--unit)`,
  'systolic-over-diastolic': (f, say) =>
    `systolic over diastolic; it is not in ${say.short(f.value('swapped'))} of ${say.short(f.value('rows'))} rows, so the columns look swapped: say which is which (--columns)`,
  'column-of-series': () =>
    'a column for it: headings time, systolic, diastolic, pulse, or say what each column is (--columns)',
  'columns-of-series': (_f, say, choices) => `columns with commas between: ${say.anyOf(choices)}, or -`,
  'time-of-reading': () => 'a date and a time of day',
  'number-within': (f, say) =>
    `a number from ${say.short(f.value('minimum'))} to ${say.short(f.value('maximum'))}`,
  'number-of-cell': () => 'a number such as 142',
  'number-without-zero': () => 'a number that does not begin with 0',
  'yes-or-no': () => 'yes or no',
  'pressure-of-row': () => 'a pressure',
  'same-pressure': () => 'the same pressure in every cell of the row',
  'same-pulse': () => 'the same pulse in every cell of the row',
  'diastolic-below-this': (f, say) => `a diastolic below the systolic of ${say.short(f.value('systolic'))}`,
  'part-of-day': () => 'morning, evening or other',
  'clock-range': () => 'a range of the clock, such as 23:00-07:00',
  'day-and-night': () => '--day and --night together, and no --asleep beside them',
  'nap-apart': () => '--nap beside --asleep, and no time in both',
  'night-by-diary': () => 'no --day and --night: the file itself says when the person slept',
  'pressure-that-stands': () =>
    'a blood pressure that was not taken back, or a heart rate at the time of one',
  'age-and-sex': () => '--age and --sex together',
  'whole-from': (f, say) =>
    `a whole number from ${say.short(f.value('minimum'))} to ${say.short(f.value('maximum'))}`,
  'dated-pressures': () =>
    'pressures each with its day, with commas, such as 2026-11-01=148/92,2026-11-08=150/90',
  'mean-and-count': () => 'a mean and how many it is of, such as 138/86x24',
  'days-of-home': () => '--days: on how many days the readings at home were taken',
  'some-pressure': () => '--office, --home or --ambulatory',
  'both-pressures': () => 'systolic and diastolic, such as 135/85',
  'reading-not-kept': () => 'a reading that no other series of this person has',
  'readings-on-days': () => 'no more days than readings',
} as const satisfies Record<string, Expectation>;
