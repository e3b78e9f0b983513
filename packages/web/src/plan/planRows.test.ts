import type { PlanResult } from '@evenfall/practice';
import { loadWords, wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { pairedLines } from './planRows.js';

const way = (systolic: number, diastolic: number, wrong: number, minutes: number) => ({
  systolic: { bias: systolic },
  diastolic: { bias: diastolic },
  misclassified: { up: wrong, down: 0 },
  minutes,
});
const apart = (mean: number, standardError: number) => ({ mean, standardError });
const RESULT = {
  protocol: way(0.4, -1, 0.438, 15.2),
  against: way(1.7, -1.5, 0.508, 7.6),
  paired: {
    systolic: { bias: apart(-1.3, 0.2) },
    diastolic: { bias: apart(0.5, 0.4) },
    misclassified: { apart: apart(-0.07, 0.012) },
    minutes: apart(7.61, 0.004),
  },
} as unknown as PlanResult;

test('how far two ways are apart is said so that it can be read out: no sign, and shares in points', () => {
  const [systolic, diastolic, wrong, minutes] = pairedLines(RESULT, wordsFor('en'));
  expect(systolic).toBe(
    'Systolic: 1.3 mmHg lower with the first (± 0.20), more than chance alone explains. First way 0.4 mmHg, second way 1.7 mmHg.',
  );
  expect(diastolic).toContain(
    'Diastolic: 0.5 mmHg higher with the first (± 0.40), which chance alone may explain.',
  );
  expect(wrong).toContain(
    'People in a wrong category: 7.0 percentage points fewer with the first (± 1.20), more than',
  );
  expect(minutes).toContain('Time of a clinician a person: 7.61 minutes more with the first (± 0.00)');
});

test('in Spanish too', async () => {
  const [systolic, , wrong] = pairedLines(RESULT, await loadWords('es'));
  expect(systolic).toContain('Sistólica: 1,3 mmHg más baja con la primera');
  expect(wrong).toContain('7,0 puntos porcentuales menos con la primera');
});
