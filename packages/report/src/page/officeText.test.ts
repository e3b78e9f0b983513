import { loadWords } from '@evenfall/words';
import { expect, test } from 'vitest';
import { officeNoneText, officeText } from './officeText.js';

const visit = (date: string, systolic: number, diastolic: number, rounds = 1) => ({
  date,
  systolic,
  diastolic,
  rounds,
});

// The office is high from 140/90 in every scheme of the bedside handbook 6.1 that has these limits.
const LIMITS = {
  highSystolic: { comparison: '>=', limit: 140 },
  highDiastolic: { comparison: '>=', limit: 90 },
} as const;

test('each visit to the office with its day, and which are taken', async () => {
  const words = await loadWords('en');
  const one = { systolic: 145.5, diastolic: 89, visits: [visit('2026-11-25', 145.5, 89)], leftOut: [] };
  expect(officeText(one, LIMITS, words).was.replaceAll('\u00a0', ' ')).toBe('Office 146/89 on Nov 25, 2026');
  const both = {
    systolic: 145.25,
    diastolic: 88.5,
    visits: [...one.visits, visit('2026-12-25', 145, 88, 2)],
    leftOut: [],
  };
  const { was, which } = officeText(both, LIMITS, words);
  expect(was.replaceAll('\u00a0', ' ')).toBe(
    'Office 145/89, the mean of 2 visits: 146/89 on Nov 25, 2026 and 145/88 on Dec 25, 2026 (2 rounds)',
  );
  expect(which).toContain('within 92 days');
});

test('in Spanish as well', async () => {
  const words = await loadWords('es');
  const { was, which } = officeText(
    {
      systolic: 145,
      diastolic: 88,
      visits: [visit('2026-11-25', 145, 88), visit('2026-12-25', 145, 88)],
      leftOut: [{ why: 'no-mean', rounds: 1 }],
    },
    LIMITS,
    words,
  );
  expect(was.replaceAll('\u00a0', ' ')).toBe(
    'Consulta 145/88, media de 2 visitas: 145/88 el 25 nov 2026 y 145/88 el 25 dic 2026',
  );
  expect(which).toContain('92 días');
  expect(which).toContain('1 ronda de una sola lectura');
});

test('a mean that is under its limit is not written as if it were at it', async () => {
  const words = await loadWords('en');
  const office = {
    systolic: 139.6667,
    diastolic: 88,
    visits: [visit('2026-11-25', 139.3333, 86), visit('2026-12-25', 140, 90)],
    leftOut: [],
  };
  expect(officeText(office, LIMITS, words).was).toMatch(/^Office 139\.7\/88, .* 139\/86 .* 140\/90 /);
});

test('says how many rounds as near are not taken, and why', async () => {
  const words = await loadWords('en');
  const leftOut = [
    { why: 'not-countersigned', rounds: 1 },
    { why: 'disputed', rounds: 2 },
    { why: 'no-mean', rounds: 1 },
  ] as const;
  const office = { systolic: 145.5, diastolic: 89, visits: [visit('2026-11-25', 145.5, 89)] };
  expect(officeText({ ...office, leftOut: [] }, LIMITS, words).which).not.toContain('Not taken');
  expect(officeText({ ...office, leftOut }, LIMITS, words).which).toContain(
    'Not taken, though as near: 1 round of a learner that nobody countersigned, 2 rounds with amendments that disagree, and 1 round of a single reading, or with too few for its protocol.',
  );
});

test('where none is taken that is said with why, and nothing where none is near', async () => {
  const words = await loadWords('en');
  expect(officeNoneText([], words)).toBeNull();
  // Three months, a decision of this project.
  expect(officeNoneText([{ why: 'not-countersigned', rounds: 1 }], words)).toBe(
    'No office pressure stands beside these readings. Not taken, though within 92 days of them: 1 round of a learner that nobody countersigned.',
  );
});
