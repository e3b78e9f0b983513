import {
  type Circumstances,
  countResult,
  DEFAULT_COUNT_RULES,
  parseCount,
  UNKNOWN_CIRCUMSTANCES,
} from '@evenfall/clinical';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { english } from './english/index.js';
import { loadWords } from './loadWords.js';
import { wordsFor } from './words.js';

const words = wordsFor('en');

function whyOf(n: number, known: Partial<Circumstances>, of = 'pulse', windowSeconds = 30) {
  const parsed = parseCount({ n, windowSeconds, of });
  if (!parsed.ok) throw new Error('refused');
  return countResult(parsed.value, { ...UNKNOWN_CIRCUMSTANCES, ...known }, DEFAULT_COUNT_RULES).why;
}

// The situations of bedside handbook 1.5, each of which asks for the same full minute.
test('what several reasons ask for alike is said once, with each reason', () => {
  const why = whyOf(36, {
    rhythmFelt: 'irregular',
    strength: 'weak',
    heartRateDrug: true,
    firstOnPerson: true,
  });
  expect(why).toHaveLength(4);
  const [said, ...more] = words.together(why);
  expect(more).toEqual([]);
  expect(said?.codes).toEqual(why.map(({ code }) => code));
  expect(said?.text.match(/60 s/g)).toHaveLength(1);
  for (const reason of [/irregular/, /weak/, /drug/, /first set/]) expect(said?.text).toMatch(reason);
});

test('one reason alone, and one that asks for something else, is said by its own sentence', () => {
  const [weak] = whyOf(36, { strength: 'weak' });
  const other = { code: 'count-apex', figures: {} };
  expect(words.together([other, weak!])).toEqual([
    { codes: ['count-apex'], text: words.detail(other) },
    { codes: ['weak'], text: words.detail(weak!) },
  ]);
  const asksForLess = { ...weak!, code: 'irregular', figures: { fullWindowSeconds: 30 } };
  expect(words.together([weak!, asksForLess]).map(({ codes }) => codes)).toEqual([['weak'], ['irregular']]);
});

test('a flag that only a newer program knows is named and does not blank the page', () => {
  const [said] = words.together([{ code: 'not-yet-known', figures: {} }]);
  expect(said?.text).toContain('not-yet-known');
});

test('a reason of another program, whose figures are not those of this one, is said by itself', () => {
  const [weak] = whyOf(36, { strength: 'weak' });
  const older = { code: 'disagrees', figures: { fullWindowSeconds: 60 } };
  expect(words.together([weak!, older]).map(({ codes }) => codes)).toEqual([['weak'], ['disagrees']]);
});

test('whatever is known of a count, every reason is said exactly once', () => {
  const circumstances = fc.record({
    rhythmFelt: fc.constantFrom('regular' as const, 'irregular' as const, null),
    strength: fc.constantFrom('weak' as const, 'strong' as const, null),
    firstOnPerson: fc.constantFrom(true, null),
    ageMonths: fc.option(fc.integer({ min: 0, max: 1200 })),
    site: fc.constantFrom('radial' as const, 'apical' as const, null),
    heartRateDrug: fc.constantFrom(true, null),
    previousPerMinute: fc.option(fc.integer({ min: 20, max: 220 })),
  });
  const seen = new Set<string>();
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 100 }),
      fc.constantFrom('pulse', 'breaths'),
      fc.constantFrom(15, 30),
      circumstances,
      (n, of, windowSeconds, known) => {
        const why = whyOf(n, known, of, windowSeconds);
        const said = words.together(why);
        if (said.length < why.length) for (const { code } of why) seen.add(code);
        expect(said.flatMap(({ codes }) => codes).sort()).toEqual(why.map(({ code }) => code).sort());
        for (const { text } of said) expect(text).toMatch(/^[A-Z0-9].*\.$/);
      },
    ),
    { numRuns: 2000, seed: 33 },
  );
  expect([...seen]).toEqual(expect.arrayContaining(Object.keys(english.longerCount.reasons)));
});

// Bedside handbook 8, C008 (Hollerbach 1990; common practice): 108 from 15 s asks for a longer count, for two reasons.
test('of a fast rate in too short a window it is said once that it is fast', async () => {
  const why = whyOf(27, {}, 'pulse', 15);
  expect(why.map(({ code }) => code)).toEqual(['fast-for-window', 'fast-on-short-count']);
  for (const language of ['en', 'es']) {
    const [said, ...more] = (await loadWords(language)).together(why);
    expect(more).toEqual([]);
    expect(said?.codes).toEqual(['fast-for-window', 'fast-on-short-count']);
    for (const number of [/\b108\b/g, /\b100\b/g, /\b15 s/g, /\b60 s/g])
      expect(said?.text.match(number)).toHaveLength(1);
  }
  const [all] = words.together(whyOf(27, { rhythmFelt: 'irregular' }, 'pulse', 15));
  expect(all?.text.match(/108/g)).toHaveLength(1);
  expect(all?.codes).toEqual(['fast-for-window', 'fast-on-short-count', 'irregular']);
});

// Bedside handbook 1.5: a short count that disagrees with a device or with the previous entry.
test('of a count that is unlike another rate it is said which: one taken before, or one that a device shows', () => {
  const [before, device] = [{ previousPerMinute: 95 }, { devicePerMinute: 95 }].map(
    (known) => whyOf(36, known)[0],
  );
  expect(words.detail(before!)).toContain('from the 95 taken before, more than 10');
  expect(words.detail(device!)).toContain('from the 95 shown by a device, more than 10');
  const both = words.together(whyOf(36, { previousPerMinute: 95, devicePerMinute: 60 }));
  expect(both).toHaveLength(1);
  expect(both[0]?.text).toContain('95 taken before');
  expect(both[0]?.text).toContain('60 shown by a device');
});
