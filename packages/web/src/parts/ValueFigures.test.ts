import { parseCountOrVoid, UNKNOWN_CIRCUMSTANCES } from '@evenfall/clinical';
import { chartCount, NOTHING_CHOSEN, type RateTyped } from '@evenfall/record';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { evidenceFacts } from '../chart/facts.js';
import { type Content, evidenceText, rangeName, windowTypedText } from './ValueFigures.js';

const words = wordsFor('en');

function pulse(rateTyped: RateTyped | null): Content {
  const count = parseCountOrVoid({ n: 38, windowSeconds: 30 });
  if (!count.ok) throw new Error('no count');
  const done = {
    count: count.value,
    circumstances: UNKNOWN_CIRCUMSTANCES,
    override: null,
    note: null,
    rateTyped,
  };
  return { kind: 'count', content: chartCount(done, NOTHING_CHOSEN, 'evenfall test') };
}

test('a number that was counted is said with its window', () => {
  expect(evidenceText(pulse(null), words)).toBe('38 in 30 s');
  expect(windowTypedText(pulse(null), words)).toBeNull();
  expect(rangeName(pulse(null), words)).toBe('Likely range');
});

// 76 a minute may have been 19 in 15 s or 38 in 30 s: nobody is said to have counted what nobody wrote.
test('of a rate that was typed no count is said, and its window only as far as it is known', () => {
  const presumed = pulse('window-presumed');
  expect(evidenceText(presumed, words)).toBe('76 a minute was typed');
  expect(windowTypedText(presumed, words)).toBe(
    'over how long it was counted is not known; 30 s is presumed',
  );
  expect(rangeName(presumed, words)).toBe('Likely range, if counted over 30 s:');
  const said = pulse('window-said');
  expect(windowTypedText(said, words)).toBe('counted over 30 s, as whoever typed it said');
  expect(rangeName(said, words)).toBe('Likely range');
  for (const given of [presumed, said])
    expect(JSON.stringify(evidenceFacts(given, words))).not.toMatch(/38|clock|Counted/);
});
