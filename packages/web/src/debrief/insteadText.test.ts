import { DEFAULT_RUN_RULES } from '@evenfall/clinical';
import { type DebriefRules, USUAL_RULES } from '@evenfall/practice';
import { loadWords } from '@evenfall/words';
import { expect, test } from 'vitest';
import { NO_AIDS } from '../practice/ears.js';
import { insteadText } from './insteadText.js';

/** The rules of a place that pumps and waits otherwise. */
const rulesOf = (marginMmHg: number, estimate: number, reading: number): DebriefRules => ({
  ...USUAL_RULES,
  runRules: {
    ...DEFAULT_RUN_RULES,
    inflation: {
      ...DEFAULT_RUN_RULES.inflation,
      marginMmHg,
      waitAfterEstimateSeconds: estimate,
      waitAfterReadingSeconds: reading,
    },
  },
});
const numbers = (text: string) => (text.match(/\d+(\.\d+)?/g) ?? []).map(Number);

// Bedside handbook 3.4 and 3.10: thirty above; a quarter of a minute after feeling, a minute after a reading. The others are the ends of
// what a protocol may choose.
test.each([
  [USUAL_RULES, 30, 15, 60],
  [rulesOf(10, 0, 0), 10, 0, 0],
  [rulesOf(40, 120, 600), 40, 120, 600],
])(
  'what to do instead says the margin and the waits by which the line itself is judged',
  async (rules, margin, feeling, reading) => {
    for (const locale of ['en', 'es']) {
      const words = await loadWords(locale);
      const said = (code: Parameters<typeof insteadText>[0]) =>
        numbers(insteadText(code, rules, words, NO_AIDS));
      for (const code of ['feel-and-add-thirty', 'feel-first', 'let-out-and-higher', 'no-higher'] as const)
        expect(said(code)).toEqual([margin]);
      expect(said('rest-the-arm')).toEqual([feeling, reading]);
      expect(said('empty-and-wait')).toEqual([reading]);
      expect(words.sentence('debrief.cuffAxis')).toMatch(locale === 'es' ? /manguito/ : /cuff/);
      // What no protocol sets stays as it is.
      expect(said('mark-in-time')).toEqual([]);
    }
  },
);

// What helps the ear is an adjustment and no fault: what is in already is not advised once more.
test.each([
  [false, false, /hearing aid.*by feel/, null],
  [true, false, /amplified stethoscope too.*by feel/, /your hearing aid/],
  [false, true, /hearing aid.*by feel/, /amplified/],
  [true, true, /by feel/, /hearing aid|amplified/],
])('faint sounds with hearing aid %s, amplified %s', async (hasHearingAid, isAmplified, says, not) => {
  const words = await loadWords('en');
  const text = insteadText('amplify-or-feel', USUAL_RULES, words, { hasHearingAid, isAmplified });
  expect(text).toMatch(says);
  if (not !== null) expect(text).not.toMatch(not);
});
