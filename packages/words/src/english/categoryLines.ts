import type { Say } from '../say.js';

/** What is said of a pressure and the category it falls in. */
export const categoryLines = {
  falls: (f: { pressure: string; category: string }, _say: Say) => `${f.pressure} falls in: ${f.category}`,
  fallsInNone: (f: { pressure: string }, _say: Say) => `${f.pressure} falls in no category`,
  atLeast: (f: { category: string }, _say: Say) => `at least: ${f.category}`,
  raisedAlone: (f: { which: string }, _say: Say) => `raised is ${f.which}`,
  pressure: 'Pressure',
  scheme: 'By',
  systolic: 'Systolic',
  diastolic: 'Diastolic',
  screening: 'Screening',
  height: 'Height',
  fromMedian: (f: { z: number }, say: Say) =>
    `${say.number(Math.abs(f.z), 2)} SD ${f.z < 0 ? 'below' : 'above'} the median of age and sex`,
  centile: (f: { centile: number; z: number }, say: Say) =>
    `${centileText(f.centile, say)} (z ${say.number(f.z, 2)})`,
  limitsOf: 'Limits',
  systolicLimits: (f: Limits, say: Say) => `systolic ${limitsText(f, say)}`,
  diastolicLimits: (f: Limits, say: Say) => `diastolic ${limitsText(f, say)}`,
  lowUnder: (f: { mmHg: number }, say: Say) => `systolic low at this age under ${say.limit(f.mmHg)}`,
  moreThanOnce: 'No guideline decides by one occasion: this says where these numbers fall, and no more.',
  fourthReport:
    'By the Fourth Report of 2004. The tables of AAP 2017 lie 2 to 3 mmHg lower and are not included here.',
} as const;

/** Pressures in mmHg at three centiles. */
type Limits = { readonly p90: number; readonly p95: number; readonly p99: number };

function limitsText({ p90, p95, p99 }: Limits, say: Say): string {
  return `90th ${say.number(p90, 1)}, 95th ${say.number(p95, 1)}, 99th ${say.number(p99, 1)}`;
}

/** Ends that are not told apart are said as ends. */
function centileText(centile: number, say: Say): string {
  if (centile < 1) return 'under the 1st centile';
  if (centile > 99) return 'over the 99th centile';
  return `centile ${say.number(centile, 1)}`;
}
