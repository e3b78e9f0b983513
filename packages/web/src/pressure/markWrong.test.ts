import { DEFAULT_DEFLATION_RULES } from '@evenfall/clinical';
import { loadWords, wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { readMarks } from './marks.js';
import { markWrong } from './markWrong.js';
import type { Mark } from './pressureDraft.js';

/** A run whose gauge was read back as typed: where the valve was opened, the first sound, the last. */
function said(typed: readonly [string, string, string], words = wordsFor('en')): string[] {
  const what = ['peak', 'first sound', 'last sound'] as const;
  const marks: Mark[] = typed.map((text, at) => ({ what: what[at]!, atSeconds: at * 10, typed: text }));
  const read = readMarks(
    { method: 'auscultation', marks, areTimesVoid: false, fields: {}, reinflated: false },
    { pulsePerMinute: null, lostMmHg: null },
    DEFAULT_DEFLATION_RULES,
  );
  if (read.wrong === null) throw new Error('nothing wrong');
  return [...markWrong(marks, read.wrong, words)].map(([at, text]) => `${at} ${text}`);
}

test('what was not read back is asked for once, by name', () => {
  expect(said(['', '', ''])).toEqual([
    '1 First sound and Last sound: not read yet. Give what the gauge showed, in mmHg.',
  ]);
  expect(said(['180', '148', ''])).toEqual([
    '2 Last sound: not read yet. Give what the gauge showed, in mmHg.',
  ]);
});

test('in Spanish it is asked for once, too', async () => {
  const [said1, ...more] = said(['', '', ''], await loadWords('es'));
  expect([said1, more]).toEqual([expect.stringMatching(/^1 Primer ruido .*mmHg\.$/), []]);
});

test('what came is quoted beside its own name, and what was wanted is named', () => {
  expect(said(['180', '14/8', '80'])).toEqual([
    '1 First sound: “14/8” is no number. Give what the gauge showed, in mmHg.',
  ]);
  expect(said(['', '80', '120'])).toEqual([
    '2 Last sound (“120”) is not below the systolic: give less than the systolic of 80 mmHg.',
  ]);
  expect(said(['140', '148', '80'])).toEqual([
    '1 First sound is out of order (“148”): give at most the highest pressure of 140 mmHg, at which the valve was opened.',
  ]);
});
