import {
  type Circumstances,
  COUNT_RULE,
  type Count,
  INTERRUPTIONS,
  parseCountOrVoid,
  UNKNOWN_CIRCUMSTANCES,
} from '@evenfall/clinical';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readEntry } from '../entry/readEntry.js';
import { bentByOneKey } from '../testing/shapes.js';
import { countContent, frame, NO_PROTOCOL, placesOf, TEST_PROGRAM } from '../testing/work.js';
import { chartCount } from './chartCount.js';

/** Any count that can be: up to 400 a minute in up to 300 s (conventions 5). */
const anyCount: fc.Arbitrary<Count> = fc
  .record({
    of: fc.constantFrom('pulse', 'breaths'),
    windowSeconds: fc.oneof(fc.integer({ min: 1, max: 300 }), fc.double({ min: 0.5, max: 300, noNaN: true })),
    share: fc.double({ min: 0, max: 1, noNaN: true }),
    clock: fc.constantFrom('beat', 'any'),
    first: fc.constantFrom(0, 1),
  })
  .map(({ share, ...start }) => ({
    ...start,
    n: Math.max(
      start.clock === 'beat' && start.first === 1 ? 1 : 0,
      Math.floor((share * 400 * start.windowSeconds) / 60),
    ),
  }))
  .filter(({ n, windowSeconds }) => (60 * n) / windowSeconds <= 400);

const anyCircumstances: fc.Arbitrary<Circumstances> = fc.record({
  rhythmFelt: fc.constantFrom('regular', 'irregular', null),
  strength: fc.constantFrom('weak', 'normal', 'strong', null),
  firstOnPerson: fc.constantFrom(true, false, null),
  ageMonths: fc.option(fc.integer({ min: 0, max: 1200 })),
  site: fc.constantFrom('radial', 'apical', 'brachial', null),
  heartRateDrug: fc.constantFrom(true, false, null),
  previousPerMinute: fc.option(fc.integer({ min: 20, max: 220 })),
});

const added = { override: null, note: null };

describe('the content of a count', () => {
  test('comes back the same from JSON and from its schema, whatever was counted', () => {
    fc.assert(
      fc.property(anyCount, anyCircumstances, (count, circumstances) => {
        expect(parseCountOrVoid(count)).toEqual({ ok: true, value: count });
        const content = chartCount({ count, circumstances, ...added }, NO_PROTOCOL, TEST_PROGRAM);
        const entry = frame('count', content);
        expect(readEntry(JSON.parse(JSON.stringify(entry)))).toEqual({ ok: true, value: entry });
        expect(content.evidence).toEqual({ count, circumstances, rateTyped: null });
        // 60 n / W under every convention (conventions 5).
        expect(content.value.perMinute).toBeCloseTo((60 * count.n) / count.windowSeconds, 9);
      }),
    );
  });

  test('is a copy: what is charted does not change with what it was made from', () => {
    const count = { of: 'pulse', n: 19, windowSeconds: 15, clock: 'any', first: 1 } as const;
    const done = {
      count: { ...count },
      circumstances: { ...countContent(count).evidence.circumstances },
      ...added,
    };
    const content = chartCount(done, NO_PROTOCOL, TEST_PROGRAM);
    (done.count as { n: number }).n = 99;
    (done.circumstances as { rhythmFelt: unknown }).rhythmFelt = 'irregular';
    expect(content.evidence).toMatchObject({ count: { n: 19 }, circumstances: { rhythmFelt: null } });
  });

  test('names the program, the rule and the protocol in force', () => {
    const { evidence } = countContent({ n: 19, windowSeconds: 15 });
    const inForce = { ...NO_PROTOCOL, presets: { count: 'full-minute' }, presetVersion: 'ab'.repeat(32) };
    const done = { ...evidence, count: evidence.count as Count, ...added };
    expect(chartCount(done, inForce, 'evenfall 9.9.9').computedBy).toEqual({
      program: 'evenfall 9.9.9',
      rule: COUNT_RULE,
      preset: 'full-minute',
      presetVersion: 'ab'.repeat(32),
    });
  });

  test('keeps an override and a note beside the computed value, which they do not touch', () => {
    const { evidence, value } = countContent({ n: 19, windowSeconds: 15 });
    const byHand = { override: { perMinute: 90, reason: 'heard at the apex' }, note: 'restless' };
    const done = { ...evidence, count: evidence.count as Count, ...byHand };
    expect(chartCount(done, NO_PROTOCOL, TEST_PROGRAM)).toMatchObject({ ...byHand, value });
  });
});

describe.each(INTERRUPTIONS)('a count broken off (%s)', (reason) => {
  const input = {
    windowSeconds: 30,
    clock: 'beat',
    first: 0,
    of: 'breaths',
    interrupted: { reason, atSeconds: 12.5 },
  };
  const content = countContent(input);

  test('keeps its evidence and has no value: every number is null and none is zero', () => {
    expect(content.evidence.count).toEqual(input);
    const { flags, why, nextWindowSeconds, ...numbers } = content.value;
    expect(new Set(Object.values(numbers))).toEqual(new Set([null]));
    expect(Object.keys(numbers)).toHaveLength(6);
    // Bedside handbook 1.2 (common practice, no source): stop, wait, start again.
    expect({ flags, why, nextWindowSeconds }).toEqual({
      flags: [],
      why: [{ code: 'interrupted', figures: { atSeconds: 12.5 } }],
      nextWindowSeconds: 30,
    });
    const entry = frame('count', content);
    expect(readEntry(JSON.parse(JSON.stringify(entry)))).toEqual({ ok: true, value: entry });
  });

  test('cannot say how many were counted until then', () => {
    const count = { ...content.evidence.count, n: 9 };
    expect(readEntry(frame('count', { ...content, evidence: { ...content.evidence, count } })).ok).toBe(
      false,
    );
  });
});

describe('the schema of a count takes exactly what is made', () => {
  const irregular = chartCount(
    {
      count: { of: 'pulse', n: 19, windowSeconds: 15, clock: 'beat', first: 1 },
      circumstances: {
        ...countContent({ n: 1, windowSeconds: 15 }).evidence.circumstances,
        rhythmFelt: 'irregular',
      },
      override: { perMinute: 90, reason: 'heard at the apex' },
      note: null,
    },
    NO_PROTOCOL,
    TEST_PROGRAM,
  );
  const broken = countContent({ windowSeconds: 30, interrupted: { reason: 'other' } });

  test.each([
    ['a count', irregular],
    ['a void count', broken],
  ])('%s: no key less and no key more', (_, content) => {
    const bent = bentByOneKey(content);
    expect(bent.length).toBeGreaterThan(30);
    expect(bent.filter(({ content }) => readEntry(frame('count', content)).ok)).toEqual([]);
  });

  test.each([
    [
      '/content/evidence/count/n',
      { evidence: { ...irregular.evidence, count: { ...irregular.evidence.count, n: -1 } } },
    ],
    [
      '/content/evidence/count/n',
      { evidence: { ...irregular.evidence, count: { ...irregular.evidence.count, n: 1.5 } } },
    ],
    ['/content/override/perMinute', { override: { perMinute: 0, reason: 'x' } }],
    ['/content/override/perMinute', { override: { perMinute: 401, reason: 'x' } }],
    ['/content/override/reason', { override: { perMinute: 90, reason: ' ' } }],
    ['/content/value/perMinute', { value: { ...irregular.value, perMinute: '76' } }],
    ['/content/note', { note: 'x'.repeat(1001) }],
    ['/content/computedBy/program', { computedBy: { ...irregular.computedBy, program: '' } }],
  ])('is refused at %s', (place, bent) => {
    expect(placesOf(readEntry(frame('count', { ...irregular, ...bent })))).toEqual([place]);
  });
});

// What a device shows is of the moment: a kept count has no place for it, and its value must be made again from what is kept.
test('what a device shows is neither kept with a count nor at work in its value', () => {
  const shown = { ...UNKNOWN_CIRCUMSTANCES, devicePerMinute: 40 };
  const input = { of: 'pulse', n: 38, windowSeconds: 30 };
  expect(countContent(input, shown)).toEqual(countContent(input));
  expect(placesOf(readEntry(frame('count', countContent(input, shown))))).toEqual([]);
});

// A rate that was typed is no evidence of a count: what is kept says so, and how far its window is known.
describe('a rate that was typed', () => {
  const typed = { ...countContent({ n: 38, windowSeconds: 30 }) };
  const kept = (evidence: object, schema = 2) =>
    readEntry(frame('count', { ...typed, evidence: { ...typed.evidence, ...evidence } }, { schema }));

  test('keeps how far its window is known; nothing that was broken off has one', () => {
    expect(kept({ rateTyped: 'window-presumed' })).toMatchObject({ ok: true });
    expect(placesOf(kept({ rateTyped: 'maybe' }))).toEqual(['/content/evidence/rateTyped']);
    const broken = countContent({ windowSeconds: 30, interrupted: { reason: 'spoken-to', atSeconds: 9 } });
    const evidence = { ...broken.evidence, rateTyped: 'window-said' };
    expect(placesOf(readEntry(frame('count', { ...broken, evidence })))).toEqual([
      '/content/evidence/rateTyped',
    ]);
  });

  test('is not said of a count of schema 1, in which nobody kept it', () => {
    const { rateTyped: _newer, ...evidence } = typed.evidence;
    const read = readEntry(frame('count', { ...typed, evidence }, { schema: 1 }));
    expect(read).toMatchObject({ ok: true, value: { content: { evidence: { rateTyped: null } } } });
  });
});
