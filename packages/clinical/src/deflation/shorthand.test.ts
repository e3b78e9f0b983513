import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CUFF_SITES, CUFF_SIZES, POSTURES, SIDES } from '../cuff/places.js';
import { UNKNOWN_RUN_CIRCUMSTANCES } from './circumstances.js';
import { parseRun } from './parseRun.js';
import { parseShorthand } from './parseShorthand.js';
import { DEFAULT_DEFLATION_RULES, DEFAULT_RUN_RULES } from './rules.js';
import { runResult } from './runResult.js';
import { NOTHING_BESIDE, printShorthand, type Shorthand, shorthandOf } from './shorthand.js';
import { runOfShorthand, shorthandResult } from './shorthandRun.js';

const PLAIN: Shorthand = {
  ...NOTHING_BESIDE,
  systolic: 148,
  muffled: null,
  diastolic: 92,
  method: 'auscultation',
  readings: 1,
  gap: null,
};

function read(text: string): Shorthand {
  const parsed = parseShorthand(text);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
  return parsed.value;
}

function refused(text: string): string[] {
  const parsed = parseShorthand(text);
  return parsed.ok ? [] : parsed.refusals.map(({ field, code }) => `${field} ${code}`);
}

describe('read', () => {
  test.each<[string, Partial<Shorthand>]>([
    // Bedside handbook 7.2 (second-hand, common practice) and 8: C044, C045.
    ['148/92', {}],
    ['148/92 76', { pulse: 76 }],
    ['124/P', { systolic: 124, diastolic: null, method: 'palpation' }],
    ['124/p', { systolic: 124, diastolic: null, method: 'palpation' }],
    ['124/palp', { systolic: 124, diastolic: null, method: 'palpation' }],
    ['118/62/0', { systolic: 118, muffled: 62, diastolic: 0 }],
    ['186/94, gap 186-152', { systolic: 186, diastolic: 94, gap: { fromMmHg: 186, toMmHg: 152 } }],
    ['148/92 76 R sit', { pulse: 76, side: 'right', posture: 'sit' }],
    ['148/92 R sit L-cuff', { side: 'right', posture: 'sit', cuff: 'L' }],
    ['148/92x2', { readings: 2 }],
    ['147.5/92x2', { systolic: 147.5, readings: 2 }],
    ['148/92 device', { method: 'device' }],
    ['148/92 thigh lie', { site: 'thigh', posture: 'lie' }],
    ['L stand xl-cuff 76 148/92', { side: 'left', posture: 'stand', cuff: 'XL', pulse: 76 }],
    ['  148/92 ,\t76, R  ', { pulse: 76, side: 'right' }],
    ['gap 140-120 148/92', { gap: { fromMmHg: 140, toMmHg: 120 } }],
  ])('%s', (text, parts) => {
    expect(read(text)).toEqual({ ...PLAIN, ...parts });
  });

  test('the words beside the numbers stand in any order', () => {
    const words = ['148/92', '76', 'R', 'sit', 'L-cuff', 'gap 140-120'];
    const whole = read(words.join(' '));
    fc.assert(
      fc.property(fc.shuffledSubarray(words, { minLength: words.length }), (shuffled) => {
        expect(read(shuffled.join(' '))).toEqual(whole);
      }),
      { numRuns: 200 },
    );
  });
});

describe('refused', () => {
  test.each<[string, string[]]>([
    // Bedside handbook 8, C046 (derived).
    ['80/120', ['/diastolic not-below-systolic']],
    ['120/120', ['/diastolic not-below-systolic']],
    ['120/119', []],
    // Bedside handbook 7.2 (from memory): misread in free text.
    ['<=120/80', ['/systolic not-a-number']],
    ['120/<=80', ['/diastolic not-a-number']],
    ['<=148/92 76', ['/systolic not-a-number']],
    ['148u/92', ['/systolic not-a-number']],
    ['148/92u', ['/diastolic not-a-number']],
    ['u 148/92', ['/text unknown-id']],
    ['148/92 <=76', ['/text unknown-id']],
    ['', ['/systolic missing']],
    ['76', ['/diastolic missing']],
    ['148', ['/diastolic missing']],
    ['40', ['/diastolic missing']],
    ['400', ['/systolic out-of-range']],
    ['400/', ['/systolic out-of-range', '/diastolic missing']],
    ['148/', ['/diastolic missing']],
    ['/92', ['/systolic missing']],
    ['148 / 92', ['/systolic missing', '/diastolic missing', '/pulse repeated']],
    ['P/92', ['/systolic not-a-number']],
    ['118/P/0', ['/muffled not-a-number']],
    ['118/62/P', ['/diastolic not-a-number']],
    ['118/62/0/0', ['/diastolic ambiguous']],
    ['118/120/0', ['/muffled not-below-systolic']],
    ['118/62/64', ['/diastolic out-of-order']],
    ['118/62/62', []],
    ['0/0', ['/systolic out-of-range']],
    ['300/92', []],
    ['301/92', ['/systolic out-of-range']],
    ['148/-2', ['/diastolic out-of-range']],
    // A comma without a blank may be a decimal one: it parts nothing.
    ['148,5/92', ['/systolic not-a-number']],
    ['148,5/2', ['/systolic not-a-number']],
    ['148/92,76', ['/diastolic not-a-number']],
    ['148/92 76,5', ['/text unknown-id']],
    ['1e2/60', ['/systolic not-a-number']],
    ['148/92x1', ['/readings out-of-range']],
    ['148/92x', ['/readings missing']],
    ['148/92x1.5', ['/readings not-whole']],
    ['148/92x99', []],
    ['148/92x100', ['/readings out-of-range']],
    ['148/92x2x3', ['/readings not-a-number']],
    ['148/92 76.5', ['/pulse not-whole']],
    ['148/92 0', ['/pulse out-of-range']],
    ['148/92 401', ['/pulse impossible']],
    ['148/92 76 78', ['/pulse repeated']],
    ['148/92 150/90', ['/systolic repeated']],
    ['148/92 R L', ['/side repeated']],
    ['148/92 sit stand', ['/posture repeated']],
    ['148/92 M', ['/cuff ambiguous']],
    ['148/92 XXL-cuff', ['/text unknown-id']],
    ['148/92 seated', ['/text unknown-id']],
    ['148/92mmHg', ['/diastolic not-a-number']],
    ['186/94 gap', ['/gap missing']],
    ['186/94 gap 186', ['/gap not-a-number']],
    ['186/94 gap 152-186', ['/gap out-of-order']],
    ['186/94 gap 188-152', ['/gap out-of-range']],
    ['186/94 gap 186-94', []],
    ['186/94 gap 186-93', ['/gap out-of-range']],
    ['186/94 gap a-b', ['/gap not-a-number']],
    ['122/P gap 120-110', ['/gap contradicts']],
    ['148/92 device gap 140-120', ['/gap contradicts']],
    ['122/P device', ['/method contradicts']],
    ['118/62/0 device', ['/method contradicts']],
  ])('%s', (text, refusals) => {
    expect(refused(text)).toEqual(refusals);
  });

  test('every fault, in the order of the text, with its column and what was expected', () => {
    const parsed = parseShorthand('80/120 76.5 nope');
    expect(parsed.ok ? [] : parsed.refusals).toMatchObject([
      { field: '/diastolic', expected: 'below-systolic', got: '120', figures: { systolic: 80, column: 1 } },
      { field: '/pulse', expected: 'a-whole-number', got: '76.5', figures: { column: 8 } },
      { field: '/text', expected: 'one-of', got: 'nope', figures: { column: 13 } },
    ]);
  });
});

/** A pressure on a mark of the gauge. */
const marks = (min: number, max: number) =>
  fc.integer({ min: Math.ceil(min / 2), max: Math.floor(max / 2) }).map((n) => 2 * n);
const maybe = <T>(one: fc.Arbitrary<T>) => fc.option(one, { nil: null });

const beside = fc.record({
  pulse: maybe(fc.double({ min: 1, max: 400, noNaN: true })),
  side: maybe(fc.constantFrom(...SIDES)),
  posture: maybe(fc.constantFrom(...POSTURES)),
  cuff: maybe(fc.constantFrom(...CUFF_SIZES)),
  site: maybe(fc.constantFrom(...CUFF_SITES).filter((site) => site !== 'upper-arm')),
});

/** Falling gauge values of any fineness, for first sound, gap, muffling and last sound. */
const falling = fc
  .uniqueArray(fc.oneof(marks(2, 300), fc.double({ min: 1e-9, max: 300, noNaN: true })), {
    minLength: 5,
    maxLength: 5,
  })
  .map((values) => values.sort((a, b) => b - a));

const runs = fc
  .record({
    method: fc.constantFrom('auscultation' as const, 'palpation' as const, 'device' as const),
    values: falling,
    hasGap: fc.boolean(),
    hasMuffled: fc.boolean(),
    isToZero: fc.boolean(),
  })
  .map(({ method, values, hasGap, hasMuffled, isToZero }) => {
    const [first = 0, gone = 0, again = 0, dull = 0, end = 0] = values;
    const sounds = [
      { what: 'first sound', mmHg: first },
      ...(hasGap && method !== 'device'
        ? [
            { what: 'last sound', mmHg: gone },
            { what: 'first sound', mmHg: again },
          ]
        : []),
      ...(hasMuffled && method !== 'device' ? [{ what: 'muffled', mmHg: dull }] : []),
      { what: 'last sound', mmHg: isToZero ? 0 : end },
    ];
    return { method, moments: method === 'palpation' ? [{ what: 'pulse back', mmHg: first }] : sounds };
  });

describe('round trip', () => {
  test('print then parse is identity for every reading that a run can make', () => {
    fc.assert(
      fc.property(runs, beside, (input, words) => {
        const parsed = parseRun(input);
        if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
        const result = runResult(parsed.value, UNKNOWN_RUN_CIRCUMSTANCES, DEFAULT_RUN_RULES);
        const written = shorthandOf(result, words, DEFAULT_DEFLATION_RULES);
        expect(parseShorthand(printShorthand(written))).toEqual({ ok: true, value: written });
        // What is written gives the same numbers again.
        const again = shorthandResult(written, DEFAULT_RUN_RULES);
        const { systolic, diastolic, diastolicUsed, gap, method } = result;
        expect(again).toMatchObject({ systolic, diastolic, diastolicUsed, gap, method });
      }),
      { numRuns: 2000 },
    );
  });

  test('and so for the mean of several', () => {
    fc.assert(
      fc.property(falling, fc.integer({ min: 1, max: 99 }), beside, (values, readings, words) => {
        const [systolic = 0, , , , diastolic = 0] = values;
        const pulse = words.pulse === null ? null : Math.round(words.pulse);
        const written = { ...PLAIN, ...words, systolic, diastolic, readings, pulse };
        expect(parseShorthand(printShorthand(written))).toEqual({ ok: true, value: written });
      }),
    );
  });

  test('a run made of what was written is one that parses', () => {
    fc.assert(
      fc.property(runs, (input) => {
        const parsed = parseRun(input);
        if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
        const result = runResult(parsed.value, UNKNOWN_RUN_CIRCUMSTANCES, DEFAULT_RUN_RULES);
        const run = runOfShorthand(shorthandOf(result, NOTHING_BESIDE, DEFAULT_DEFLATION_RULES), 2);
        expect(parseRun(run)).toEqual({ ok: true, value: run });
      }),
      { numRuns: 500 },
    );
  });

  test.each([
    ['124/palp', '124/P'],
    ['L-cuff sit R 76 148/92', '148/92 76 R sit L-cuff'],
    ['gap 186-152, 186/94 wrist device', ''],
    ['118/62/0 device', ''],
    ['186/94 76 gap 186-152', '186/94 76, gap 186-152'],
  ])('%s is written %s', (text, written) => {
    const parsed = parseShorthand(text);
    expect(parsed.ok ? printShorthand(parsed.value) : '').toBe(written);
  });
});

test.each([
  // Bedside handbook 3.7 (from memory): all three where they differ by more than 10.
  [72, 62, '118/62'],
  [74, 62, '118/74/62'],
  [12, 8, '118/12/8'],
])('muffled at %d, last sound at %d is written %s', (muffledAt, lastAt, text) => {
  const result = shorthandResult(
    { ...PLAIN, systolic: 118, muffled: muffledAt, diastolic: lastAt },
    DEFAULT_RUN_RULES,
  );
  expect(printShorthand(shorthandOf(result, NOTHING_BESIDE, DEFAULT_DEFLATION_RULES))).toBe(text);
});

test('a written pressure in the shape of a run: no rates, no ranges', () => {
  const result = shorthandResult(read('118/62/0 76'), DEFAULT_RUN_RULES);
  expect(result).toMatchObject({
    diastolic: 0,
    diastolicUsed: 62,
    systolicRange: null,
    deflationRateMmHgPerSecond: null,
  });
  expect(result.why.map(({ code }) => code)).toEqual(['no-peak', 'not-timed', 'not-palpated']);
});

test('a mean may be odd; one reading by ear may not', () => {
  // Bedside handbook 3.9: means of readings may be odd (common practice).
  const codes = (text: string) =>
    shorthandResult(read(text), DEFAULT_RUN_RULES).flags.map(({ code }) => code);
  expect(codes('147/91x2')).toEqual([]);
  expect(codes('147/91 device')).toEqual([]);
  expect(codes('147/91')).toEqual(['off-graduation']);
});
