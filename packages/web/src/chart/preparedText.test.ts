import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { preparedText } from './preparedText.js';

const words = wordsFor('en');

const TAKEN = [{ sign: 'pressure' as const, entries: ['a'] }];
const RESTED = { seconds: 300, neededSeconds: 300, skipped: null };

test('how the person was made ready says what it is of', () => {
  const text = (exceptions: Parameters<typeof preparedText>[0]['exceptions'], rest: typeof RESTED | null) =>
    preparedText({ exceptions, rest, isCuffAsked: true, signs: TAKEN }, words);
  expect(text([], RESTED)).toBe('Made ready: all as it should be before the pressure.');
  expect(text(['not-talking'], RESTED)).toBe('Made ready, but for: talking.');
  expect(text(null, null)).toBe('Nobody looked whether the person was made ready.');
  // A rest that nobody began nor answered for is no whole one.
  expect(text([], null)).toBe(
    'Made ready: all else as it should be before the pressure. Whether they rested before is not known.',
  );
  expect(text(['not-talking'], null)).toBe(
    'Made ready, but for: talking. Whether they rested before is not known.',
  );
  expect(text(['rested'], null)).toBe('Made ready, but for: did not rest for five minutes.');
});

test('of a round without a pressure nothing is known of the cuff', () => {
  const text = (exceptions: Parameters<typeof preparedText>[0]['exceptions']) =>
    preparedText(
      {
        exceptions,
        rest: RESTED,
        isCuffAsked: false,
        signs: [{ sign: 'pressure', notDone: { reason: 'declined', text: null } }],
      },
      words,
    );
  expect(text([])).toBe(
    'Made ready: all else as it should be before the pressure. No pressure was taken: of the cuff nothing is known.',
  );
  expect(text(['not-talking', 'arm-bare'])).not.toContain('nothing is known');
  expect(text(null)).toBe('Nobody looked whether the person was made ready.');
});

test('of a pressure that was typed the points of the cuff were not asked, and are not said to be fine', () => {
  const text = (
    isCuffAsked: boolean | null,
    exceptions: Parameters<typeof preparedText>[0]['exceptions'] = [],
  ) => preparedText({ exceptions, rest: RESTED, isCuffAsked, signs: TAKEN }, words);
  expect(text(false)).toBe(
    'Made ready: all else as it should be before the pressure. The pressure was typed: whether the cuff was as it should be was not asked.',
  );
  expect(text(false, ['arm-bare'])).toBe('Made ready, but for: cuff over clothing.');
  // An older round does not say whether the cuff was on.
  expect(text(null)).toBe('Made ready: all as it should be before the pressure.');
});
