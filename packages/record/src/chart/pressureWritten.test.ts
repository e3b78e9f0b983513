import { expect, test } from 'vitest';
import { runContent } from '../testing/work.js';
import { pressureWritten } from './pressureWritten.js';

const heard = (...moments: object[]) => runContent({ method: 'auscultation', moments });
const first = { what: 'first sound', mmHg: 118 };
const muffled = { what: 'muffled', mmHg: 62 };
const last = (mmHg: number) => ({ what: 'last sound', mmHg });

// Bedside handbook 3.4, 3.7 and 7.2: the trade's own ways to write them.
test('a pressure is written as the trade writes it', () => {
  expect(pressureWritten(heard(first, last(74)))).toBe('118/74');
  expect(pressureWritten(heard(first, muffled, last(0)))).toBe('118/62/0');
  expect(pressureWritten(heard(first, last(0)))).toBe('118/0');
  const felt = runContent({ method: 'palpation', moments: [{ what: 'pulse back', mmHg: 122 }] });
  expect(pressureWritten(felt)).toBe('122/P');
});

test('one set by hand is written as it was set', () => {
  const content = heard(first, last(74));
  expect(pressureWritten({ ...content, override: { systolic: 128, diastolic: null, reason: 'slip' } })).toBe(
    '128/P',
  );
  expect(pressureWritten({ ...content, override: { systolic: 128, diastolic: 70, reason: 'slip' } })).toBe(
    '128/70',
  );
});
