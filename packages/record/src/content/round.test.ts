import { NOT_DONE_REASONS } from '@evenfall/clinical';
import { describe, expect, test } from 'vitest';
import { readEntry } from '../entry/readEntry.js';
import { frame, idOf, placesOf, roundContent } from '../testing/work.js';

const GOOD = roundContent(idOf(2));
const signed = (signs: readonly unknown[]) => readEntry(frame('round', { ...GOOD, signs }));

describe('a signed round', () => {
  test('says for each sign which entries are it, or why it was not done', () => {
    const asleep = { sign: 'breaths', notDone: { reason: 'asleep', text: null } };
    expect(signed([...GOOD.signs, asleep]).ok).toBe(true);
    expect(signed([{ sign: 'pulse', entries: [idOf(2), idOf(3)] }]).ok).toBe(true);
  });

  // Bedside handbook 7.1: not done needs a reason (refused, away, asleep, barred arm); a blank is not allowed.
  test.each([
    ['nothing at all', []],
    ['a sign with no entry', [{ sign: 'pulse', entries: [] }]],
    ['a sign with neither', [{ sign: 'pulse' }]],
    ['a sign with both', [{ ...GOOD.signs[0], notDone: { reason: 'away', text: null } }]],
    ['a reason that is none', [{ sign: 'pulse', notDone: { reason: '', text: null } }]],
    ['no reason', [{ sign: 'pulse', notDone: { text: 'x' } }]],
    ['a sign that is none', [{ sign: 'mood', entries: [idOf(2)] }]],
  ])('is refused with %s', (_, signs) => {
    expect(placesOf(signed(signs))[0]).toMatch(/^\/content\/signs/);
  });

  test.each(NOT_DONE_REASONS)('may say “%s” with words, and without them unless it is “other”', (reason) => {
    expect(signed([{ sign: 'pulse', notDone: { reason, text: 'at the dentist' } }]).ok).toBe(true);
    const bare = signed([{ sign: 'pulse', notDone: { reason, text: null } }]);
    expect(bare.ok).toBe(reason !== 'other');
    if (reason === 'other') expect(placesOf(bare)).toEqual(['/content/signs/0/notDone/text']);
  });

  test('says of each sign once that it was taken or not', () => {
    const taken = { sign: 'pulse', entries: [idOf(1)] };
    const twice = signed([taken, { sign: 'pulse', notDone: { reason: 'asleep', text: null } }]);
    expect(placesOf(twice)).toEqual(['/content/signs']);
  });

  test('is preliminary or final, and nothing else', () => {
    for (const status of ['preliminary', 'final'])
      expect(readEntry(frame('round', { ...GOOD, status })).ok).toBe(true);
    expect(placesOf(readEntry(frame('round', { ...GOOD, status: 'signed' })))).toEqual(['/content/status']);
  });

  test('names its entries in lower case, as they are kept', () => {
    const read = signed([{ sign: 'pulse', entries: [idOf(0xabc).toUpperCase()] }]);
    expect(read).toMatchObject({ value: { content: { signs: [{ entries: [idOf(0xabc)] }] } } });
  });
});
