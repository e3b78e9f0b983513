import { expect, test } from 'vitest';
import type { StoredEntry } from '../entry/entry.js';
import { at, frame, idOf, kept, runContent, signingContent } from '../testing/work.js';
import { GENERAL_RULES } from './generalRules.js';
import { officeNear } from './officeNear.js';
import { projectChart } from './projectChart.js';

const round = idOf(600);
const run = (id: number, systolic: number, diastolic: number): StoredEntry => {
  const moments = [
    { what: 'first sound', mmHg: systolic },
    { what: 'last sound', mmHg: diastolic },
  ];
  const content = runContent({ method: 'auscultation', moments });
  return kept(frame('run', content, { id: idOf(id), sequence: id, round }), id);
};
const runs = [run(1, 152, 94), run(2, 146, 90), run(3, 145, 88)];
const signed = (status: 'final' | 'preliminary') => {
  const content = {
    ...signingContent([{ sign: 'pressure', entries: runs.map(({ id }) => id) }], runs),
    status,
  };
  return projectChart([
    ...runs,
    kept(frame('round', content, { id: idOf(90), sequence: 90, round, schema: 2 }), 90),
  ]);
};
const near = (until: string, status: 'final' | 'preliminary' = 'final') =>
  officeNear(signed(status), GENERAL_RULES, until);

const daysFrom = (days: number) =>
  new Date(Date.parse(at(3)) + days * 86_400_000).toISOString().slice(0, 'YYYY-MM-DD'.length);

// ESC 2024: mean of the second and third (bedside handbook 3.10); three months are a decision of this project.
test('the office round within three months of a series stands beside it, before or after', () => {
  expect(near(daysFrom(0))).toMatchObject({ systolic: 145.5, diastolic: 89 });
  expect(near(daysFrom(-90))).not.toBeNull();
  expect(near(daysFrom(90))).not.toBeNull();
  expect(near(daysFrom(94))).toBeNull();
  expect(near(daysFrom(-94))).toBeNull();
});

test('a learner’s round that nobody agreed to does not, nor one that comes to no mean', () => {
  expect(near(daysFrom(0), 'preliminary')).toBeNull();
  expect(officeNear(projectChart([run(1, 152, 94)]), GENERAL_RULES, daysFrom(0))).toBeNull();
});
