import {
  type Circumstances,
  countResult,
  DEFAULT_COUNT_RULES,
  type Flag,
  parseCount,
  pulseDeficit,
  tapResult,
  UNKNOWN_CIRCUMSTANCES,
  voidResult,
} from '@evenfall/clinical';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { english } from './english/index.js';
import { loadWords } from './loadWords.js';
import { wordsFor, wordsIn } from './words.js';

const words = wordsFor('en');

/** The sentences of flags, each of which must have one of its own. */
function said(flags: readonly Flag[]): string[] {
  for (const { code } of flags) expect(Object.keys(english.details)).toContain(code);
  const sentences = flags.map(words.detail);
  for (const sentence of sentences) expect(sentence).not.toMatch(/no sentence for/);
  return sentences;
}

const circumstances: fc.Arbitrary<Circumstances> = fc.record({
  rhythmFelt: fc.constantFrom('regular', 'irregular', null),
  strength: fc.constantFrom('weak', 'normal', 'strong', null),
  firstOnPerson: fc.constantFrom(true, false, null),
  ageMonths: fc.option(fc.integer({ min: 0, max: 1200 })),
  site: fc.constantFrom('radial', 'apical', null),
  heartRateDrug: fc.constantFrom(true, false, null),
  previousPerMinute: fc.option(fc.integer({ min: 20, max: 220 })),
});

describe('every code that a result carries has a sentence', () => {
  test('counts, in every circumstance', () => {
    const seen = new Set<string>();
    const counts = fc.record({
      n: fc.integer({ min: 0, max: 60 }),
      windowSeconds: fc.constantFrom(10, 15, 30, 60),
      clock: fc.constantFrom('beat', 'any'),
      first: fc.constantFrom(0, 1),
      of: fc.constantFrom('pulse', 'breaths'),
    });
    fc.assert(
      fc.property(counts, circumstances, (input, known) => {
        const parsed = parseCount(input);
        if (!parsed.ok) return;
        const { flags, why } = countResult(parsed.value, known, DEFAULT_COUNT_RULES);
        for (const flag of [...flags, ...why]) seen.add(flag.code);
        for (const sentence of said([...flags, ...why])) expect(sentence).toMatch(/^[A-Z0-9].*\.$/);
      }),
      { numRuns: 2000, seed: 20 },
    );
    // Bedside handbook 1.5 lists the situations; each of them came up.
    expect([...seen]).toEqual(
      expect.arrayContaining([
        'irregular',
        'weak',
        'first-set',
        'young',
        'apical',
        'heart-rate-drug',
        'disagrees',
      ]),
    );
  });

  test('taps, from one to many, steady and not, slips and bounces among them', () => {
    const gaps = fc.array(fc.double({ min: 0.05, max: 3, noNaN: true }), { maxLength: 60 });
    fc.assert(
      fc.property(
        gaps,
        fc.constantFrom('touch', 'key', 'file'),
        fc.boolean(),
        (intervals, source, repair) => {
          let at = 0;
          const seconds = [0, ...intervals.map((interval) => (at += interval))];
          const { flags, why } = tapResult({ of: 'pulse', source, seconds }, { repair });
          for (const sentence of said([...flags, ...why])) expect(sentence).toMatch(/^[A-Z0-9].*\.$/);
        },
      ),
      { numRuns: 500, seed: 21 },
    );
  });

  test('deficits and counts broken off', () => {
    for (const [apical, radial, together] of [
      [92, 78, true], // bedside handbook 8, C012
      [80, 84, true], // C013
      [80, 76, false],
    ] as const) {
      const { flags, why } = pulseDeficit(apical, radial, together);
      expect(said([...flags, ...why])).not.toEqual([]);
    }
    for (const atSeconds of [12, null]) {
      const interrupted = { atSeconds, reason: 'person-moved' } as const;
      const broken = voidResult({ of: 'pulse', windowSeconds: 30, clock: 'any', first: 1, interrupted });
      expect(said(broken.why)).toHaveLength(1);
    }
  });
});

test('the words of a sentence follow the locale’s numbers', () => {
  const spanish = wordsIn(english, 'es');
  expect(spanish.detail({ code: 'convention-shifts-rate', figures: { averageShiftPerMinute: 0.5 } })).toMatch(
    /0,5/,
  );
});

describe('what the sentences say', () => {
  test('a fast 15-second count asks for a longer one and says why', () => {
    // Bedside handbook 8, C008 (found, Hollerbach 1990; practice): 27 in 15 s is 108, over 100.
    const sentence = words.detail({
      code: 'fast-for-window',
      figures: { perMinute: 108, fastPerMinute: 100, windowSeconds: 15 },
    });
    expect(sentence).toMatch(/^108 a minute is over 100.*15 s.*count for longer\.$/);
  });

  test('the convention that shifts the rate says by how much, and which way', () => {
    // Bedside handbook 1.4 (derived): on a beat called one, 15 s: 2 a minute too high; any moment, zero: 4 too low.
    const shifted = (averageShiftPerMinute: number) =>
      words.detail({
        code: 'convention-shifts-rate',
        figures: { perMinute: 76, lowPerMinute: 72, highPerMinute: 76, averageShiftPerMinute },
      });
    expect(shifted(2)).toMatch(/about 2 a minute too high/);
    expect(shifted(-4)).toMatch(/about 4 a minute too low/);
    // Of the four ways only any moment with the first called one is off by nothing on average.
    expect(shifted(2)).toMatch(/start the clock at any moment and call the first beat one\.$/);
    expect(shifted(2)).not.toMatch(/zero/);
  });

  test('a flag travels with its code, its sentence and its figures', () => {
    const flag = { code: 'too-few', figures: { taps: 1, needs: 2 } };
    expect(words.flagged(flag)).toEqual({
      code: 'too-few',
      detail: 'No rate can come from 1 tap; at least 2 are needed: tap on.',
      figures: { taps: 1, needs: 2 },
    });
  });

  test.each([
    [0, '0 beats in 15 s'],
    [1, '1 beat in 15 s'],
    [2, '2 beats in 15 s'],
    [19, '19 beats in 15 s'],
  ])('%d beats in a sentence', (n, sentence) => {
    expect(words.sentence('count.beatsInSeconds', { n, seconds: 15 })).toBe(sentence);
  });
});

describe('a sentence never contradicts the comparison that it tells', () => {
  const limits = fc.integer({ min: 200, max: 25_000 }).map((hundredths) => hundredths / 100);
  const value = fc.double({ min: -6, max: 6, noNaN: true }).map((exponent) => 10 ** -Math.abs(exponent));
  /** The first two numbers of a sentence: the value, then the limit. */
  const shownIn = (sentence: string) => (sentence.match(/\d+(\.\d+)?/g) ?? []).map(Number);

  test.each<
    [
      string,
      (limit: number, by: number) => { figures: Flag['figures']; at: readonly [number, number] },
      1 | -1,
    ]
  >([
    [
      'fast-for-window',
      (limit, by) => ({
        figures: { perMinute: limit + by, fastPerMinute: limit, windowSeconds: 55 },
        at: [0, 1],
      }),
      1,
    ],
    [
      'fast-on-short-count',
      (limit, by) => ({
        figures: { perMinute: limit + by, fastPerMinute: limit, windowSeconds: 55, fullWindowSeconds: 60 },
        at: [0, 1],
      }),
      1,
    ],
    [
      'slow-on-short-count',
      (limit, by) => ({
        figures: { perMinute: limit - by, slowPerMinute: limit, windowSeconds: 55, fullWindowSeconds: 60 },
        at: [0, 1],
      }),
      -1,
    ],
    [
      'disagrees',
      (limit, by) => ({
        figures: {
          perMinute: 80,
          previousPerMinute: 90,
          differencePerMinute: limit + by,
          disagreementPerMinute: limit,
          fullWindowSeconds: 60,
        },
        at: [1, 3],
      }),
      1,
    ],
    [
      'young',
      (limit, by) => ({
        figures: { ageMonths: limit - by, youngUnderMonths: limit, fullWindowSeconds: 60 },
        at: [1, 0],
      }),
      -1,
    ],
    [
      'shorter-than-offered',
      (limit, by) => ({ figures: { windowSeconds: limit - by, shortestWindowSeconds: limit }, at: [0, 1] }),
      -1,
    ],
    [
      'deficit-to-report',
      (limit, by) => ({ figures: { deficitPerMinute: limit + by, reportAbovePerMinute: limit }, at: [0, 1] }),
      1,
    ],
    [
      'negative-deficit',
      (limit, by) => ({ figures: { radialPerMinute: limit + by, apicalPerMinute: limit }, at: [0, 1] }),
      1,
    ],
  ])('%s', (code, of, side) => {
    fc.assert(
      fc.property(limits, value, (limit, by) => {
        const { figures, at } = of(limit, Math.max(by, 1e-6));
        const shown = shownIn(words.detail({ code, figures }));
        const [low, high] = [shown[at[0]] ?? Number.NaN, shown[at[1]] ?? Number.NaN];
        expect(Math.sign(low - high)).toBe(side);
      }),
    );
  });

  test.each([
    // 92 beats in 55 s are 100.36 a minute; a pulse of 70.4 after 60 differs by 10.4.
    [
      'fast-on-short-count',
      { perMinute: (60 * 92) / 55, fastPerMinute: 100, windowSeconds: 55, fullWindowSeconds: 60 },
      /^100\.4 a minute is over 100, and was counted for only 55 s:/,
    ],
    [
      'disagrees',
      {
        perMinute: 70.4,
        previousPerMinute: 60,
        differencePerMinute: 10.4,
        disagreementPerMinute: 10,
        fullWindowSeconds: 60,
      },
      /differs by 10\.4 .* more than 10:/,
    ],
    ['shorter-than-offered', { windowSeconds: 7.5, shortestWindowSeconds: 15 }, /^7\.5 s .* count 15 s\.$/],
  ] as const)('%s of %j', (code, figures, sentence) => {
    expect(words.detail({ code, figures })).toMatch(sentence);
  });
});

test('what is felt irregular is to be counted a full minute, heard at the apex and reported', () => {
  // Bedside handbook 1.5 and 7.5 (from memory).
  const parsed = parseCount({ n: 38, windowSeconds: 30 });
  if (!parsed.ok) throw new Error('the count is gone');
  const known = { ...UNKNOWN_CIRCUMSTANCES, rhythmFelt: 'irregular' } as const;
  const { flags, why } = countResult(parsed.value, known, DEFAULT_COUNT_RULES);
  expect(said([...flags, ...why]).join(' ')).toMatch(
    /apex for a full minute and report.*count 60 s and report/,
  );
});

describe('what cannot be said is never half said', () => {
  // A chart may hold flags that another version of the program made.
  test.each([
    ['a code without a sentence', { code: 'no-such-code', figures: {} }],
    ['a figure that is absent', { code: 'too-few', figures: { taps: 1 } }],
    ['a figure that is no number', { code: 'too-few', figures: { taps: Number.NaN, needs: 2 } }],
    ['a code like a word of the language', { code: 'constructor', figures: {} }],
  ])('%s', (_what, flag) => {
    expect(words.detail(flag)).toBe(`This version of Evenfall has no sentence for the note “${flag.code}”.`);
  });
});

describe('languages', () => {
  test('one without a catalogue is answered wholly in English', () => {
    expect(wordsFor('fr').sentence('app.pulse')).toBe('Pulse');
    expect(wordsFor('fr').say.number(1.5, 1)).toBe('1.5');
  });

  test('a new one brings its own words and writes its own numbers', () => {
    const app = { ...english.sections.app, pulse: 'Pulso' };
    const spanish = wordsIn({ ...english, sections: { ...english.sections, app } }, 'es');
    expect(spanish.sentence('app.pulse')).toBe('Pulso');
    expect(spanish.say.number(1.5, 1)).toBe('1,5');
  });
});

test('a title is the catalogue’s, or the id of something a clinic named itself', () => {
  expect(words.title('rhythm', 'irregularly-irregular')).toBe('Irregular without a pattern');
  expect(words.title('start', 'our-own')).toBe('our-own');
});

test.each(['en-US@posix', '', 'C', 'not a locale'])(
  'a locale that is none (%s) is answered in English',
  (locale) => {
    expect(wordsFor(locale).say.locale).toBe('en');
  },
);

test('a share beside its limit never reads as that limit', () => {
  // 0.104 is over 0.10; whole percent would say "10 %, limit 10 %".
  const said = wordsFor('en').detail({
    code: 'irregular-not-repaired',
    figures: { spread: 0.104, limit: 0.1 },
  });
  expect(said).toContain('(10.4 %, limit 10 %)');
});

// Bedside handbook 3.16: one list of what to ask for with a severe pressure, wherever it was measured.
test.each(['en', 'es'])('the danger signs are the same list at every place (%s)', async (language) => {
  const { detail } = await loadWords(language);
  const here = detail({ code: 'severe-reading', figures: {} });
  const away = detail({ code: 'severe-away', figures: { systolic: 182, diastolic: 96 } });
  const [, list = ''] = /(?:ask for|pregunte por) ([^.]*)\./.exec(here) ?? [];
  expect(list.split(',').length).toBeGreaterThan(5);
  expect(away).toContain(list);
});
