import { loadWords } from '@evenfall/words';
import { expect, test } from 'vitest';
import { officeText } from './officeText.js';

const visit = (date: string, systolic: number, diastolic: number, rounds = 1) => ({
  date,
  systolic,
  diastolic,
  rounds,
});

test('each visit to the office with its day, and which are taken', async () => {
  const words = await loadWords('en');
  const one = { systolic: 145.5, diastolic: 89, visits: [visit('2026-11-25', 145.5, 89)] };
  expect(officeText(one, words).was.replaceAll('\u00a0', ' ')).toBe('Office 146/89 on Nov 25, 2026');
  const both = {
    systolic: 145.25,
    diastolic: 88.5,
    visits: [...one.visits, visit('2026-12-25', 145, 88, 2)],
  };
  const { was, which } = officeText(both, words);
  expect(was.replaceAll('\u00a0', ' ')).toBe(
    'Office 145/89, the mean of 2 visits: 146/89 on Nov 25, 2026 and 145/88 on Dec 25, 2026 (2 rounds)',
  );
  expect(which).toContain('within 92 days');
});

test('in Spanish as well', async () => {
  const words = await loadWords('es');
  const { was, which } = officeText(
    { systolic: 145, diastolic: 88, visits: [visit('2026-11-25', 145, 88), visit('2026-12-25', 145, 88)] },
    words,
  );
  expect(was.replaceAll('\u00a0', ' ')).toBe(
    'Consulta 145/88, media de 2 visitas: 145/88 el 25 nov 2026 y 145/88 el 25 dic 2026',
  );
  expect(which).toContain('92 días');
});
