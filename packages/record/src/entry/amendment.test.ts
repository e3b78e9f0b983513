import { describe, expect, test } from 'vitest';
import { idOf } from '../testing/work.js';
import { AMENDMENT_REASONS, amends } from './amendment.js';
import { refusalsOf } from './refusals.js';

const because = (reason: unknown, text: string | null = null) => ({ entry: idOf(7), reason, text });

describe('why an entry is amended', () => {
  test('has the reasons of the bedside handbook 7.3 (common practice, no source), in its order', () => {
    const list =
      'typing slip, wrong person, wrong time, wrong unit, wrong limb/cuff, equipment fault, duplicate, other';
    const ids = list.split(', ').map((reason) => reason.replace('/', '-or-').replaceAll(' ', '-'));
    expect(AMENDMENT_REASONS).toEqual(ids);
  });

  test.each(AMENDMENT_REASONS.filter((reason) => reason !== 'other'))('%s needs no text', (reason) => {
    expect(amends.parse(because(reason))).toEqual(because(reason));
  });

  test.each([null, '', '  '])('“other” with %j for a text is refused at the text', (text) => {
    const read = amends.safeParse(because('other', text));
    expect(read.success).toBe(false);
    if (!read.success)
      expect(refusalsOf(read.error, because('other', text))).toMatchObject([
        { field: '/text', expected: 'text-for-other' },
      ]);
  });

  test('“other” with a text is taken', () => {
    expect(amends.parse(because('other', 'counted over the coat')).text).toBe('counted over the coat');
  });
});

test('an amendment without a reason, or of nothing, is none', () => {
  expect(amends.safeParse(because(undefined)).success).toBe(false);
  expect(amends.safeParse(because('because')).success).toBe(false);
  expect(amends.safeParse({ ...because('duplicate'), entry: null }).success).toBe(false);
});
