import {
  ARM_FACTS,
  armChoice,
  CUFF_SCHEME_IDS,
  CUFF_SITES,
  cuffChoice,
  cuffScheme,
  DEFAULT_CUFF_RULES,
  DEFAULT_RUN_RULES,
  type Flag,
  METHODS,
  POSTURES,
  parseCuffQuestion,
  parseRun,
  parseShorthand,
  placeFlags,
  postureChoice,
  type Refusal,
  runResult,
  type SIDES,
  shorthandResult,
} from '@evenfall/clinical';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { english } from './english/index.js';
import { wordsFor } from './words.js';

const words = wordsFor('en');

/** The sentences of flags, each of which has one of its own and is a sentence. */
function said(flags: readonly Flag[]): string[] {
  return flags.map((flag) => {
    const sentence = words.detail(flag);
    expect(sentence, flag.code).not.toMatch(/no sentence for/);
    expect(sentence, flag.code).toMatch(/^[A-Z0-9].*\.$/);
    return sentence;
  });
}

/** What was refused, each rule with a phrase of its own. */
function refused(refusals: readonly Refusal[]): void {
  for (const one of refusals) {
    expect(Object.keys(english.expected), one.expected).toContain(one.expected);
    expect(words.problem(one).message).toMatch(/\.$/);
  }
}

describe('every code of a run has a sentence', () => {
  const mmHg = fc.oneof(fc.integer({ min: 0, max: 300 }), fc.constantFrom(117, 0, 4, 62, 148, 150));
  const time = fc.option(fc.double({ min: 0, max: 60, noNaN: true }), { freq: 4 });
  const moment = fc.record({
    what: fc.constantFrom('first sound', 'muffled', 'last sound', 'pulse back'),
    mmHg,
    atSeconds: time,
  });
  const runs = fc.record({
    method: fc.constantFrom(...METHODS),
    pulsePerMinute: fc.option(fc.integer({ min: 30, max: 180 })),
    palpated: fc.record({ lostMmHg: fc.option(mmHg), backMmHg: fc.option(mmHg) }),
    peak: fc.option(fc.record({ mmHg: fc.integer({ min: 100, max: 300 }), atSeconds: fc.constant(0) })),
    reinflated: fc.boolean(),
    moments: fc.array(moment, { maxLength: 5 }).map((moments) => [
      ...moments
        .sort((a, b) => b.mmHg - a.mmHg)
        .map((one, index) => ({
          ...one,
          atSeconds: one.atSeconds === null ? null : one.atSeconds + 60 * index,
        })),
    ]),
  });
  const likely = fc
    .tuple(runs, fc.constantFrom(0, 4, 62, 92), fc.double({ min: 0.2, max: 40, noNaN: true }))
    .map(([run, last, seconds]) => ({
      ...run,
      method: 'auscultation',
      peak: { mmHg: 176, atSeconds: 0 },
      moments: [
        { what: 'first sound', mmHg: 148, atSeconds: seconds },
        ...(last === 4 ? [] : [{ what: 'muffled', mmHg: 100, atSeconds: seconds + 20 }]),
        { what: 'last sound', mmHg: last, atSeconds: seconds + 21 },
      ],
    }));
  const circumstances = fc.record({
    rhythmFelt: fc.constantFrom('regular', 'irregular', null),
    previous: fc.option(
      fc.record({
        was: fc.constantFrom('estimate', 'reading'),
        secondsSinceRelease: fc.double({ min: 0, max: 90, noNaN: true }),
      }),
    ),
  });

  test('flags, reasons and refusals, whatever was done', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(fc.oneof(runs, likely), circumstances, (input, around) => {
        const parsed = parseRun(input);
        if (!parsed.ok) return refused(parsed.refusals);
        const { flags, why } = runResult(parsed.value, around as never, DEFAULT_RUN_RULES);
        for (const { code } of [...flags, ...why]) seen.add(code);
        said([...flags, ...why]);
        return;
      }),
      { numRuns: 4000, seed: 30 },
    );
    expect(
      [
        'palpated-only',
        'started-inside-sounds',
        'margin-small',
        'possible-gap',
        're-inflated',
        'early-too-fast',
        'early-too-slow',
        'too-fast',
        'too-fast-per-beat',
        'too-soon',
        'to-zero',
        'range-too-narrow',
        'not-timed',
        'no-pulse',
        'silence-not-heard',
      ].filter((code) => !seen.has(code)),
    ).toEqual([]);
  });

  test.each([
    '186/94, gap 186-152',
    '148/92x2',
    '118/62/0',
    '90/0',
    '122/P',
    '117/73',
    '300/290',
    '40/20',
    '148/92 device',
    '80/120',
    '148',
    '148/92 L-cuff M-cuff',
    '148/92 L M',
    '118/62/70',
    '120/80 gap',
    '120/80 gap 60-50',
    '120/80 gap 90-100',
    '120/P gap 110-100',
    '120/70/60 device',
    '120/70/60/50',
    '120/80x1',
    '120/80x2.5',
    '120/80 500',
    '120/80 0',
    '0/80',
    'a/b',
    '301/80',
  ])('the shorthand %j', (text) => {
    const parsed = parseShorthand(text);
    if (!parsed.ok) return refused(parsed.refusals);
    const { flags, why } = shorthandResult(parsed.value, DEFAULT_RUN_RULES);
    said([...flags, ...why]);
    return;
  });
});

describe('every code of a cuff and its place has a sentence', () => {
  test('cuffs of each scheme on any arm', () => {
    for (const scheme of CUFF_SCHEME_IDS) {
      for (const atHand of [null, ...cuffScheme(scheme).cuffs.map(({ id }) => id)]) {
        for (let armCm = 4; armCm <= 80; armCm += 1) {
          const { flags, why } = cuffChoice({ armCm, scheme, atHand });
          said([...flags, ...why]);
        }
      }
    }
  });

  test('arms, sites and postures', () => {
    for (const site of CUFF_SITES) said(placeFlags(site, true));
    const fact = (kind: (typeof ARM_FACTS)[number], side: (typeof SIDES)[number]) => ({
      kind,
      side,
      from: '2026-01-01',
      until: null,
    });
    for (const right of ARM_FACTS) {
      for (const left of ARM_FACTS) {
        const facts = {
          arms: [fact(right, 'right'), fact(left, 'left')],
          person: [],
          ageMonths: 60,
          pregnancyWeeks: null,
        };
        said(armChoice(facts, '2026-06-01', DEFAULT_CUFF_RULES).why);
        said(armChoice({ ...facts, arms: facts.arms.slice(1) }, '2026-06-01', DEFAULT_CUFF_RULES).why);
      }
    }
    for (const posture of POSTURES) {
      const person = (['pregnancy', 'cannot-stand'] as const).map((kind) => ({
        kind,
        from: '2026-01-01',
        until: null,
      }));
      const facts = { arms: [], person, ageMonths: 400, pregnancyWeeks: 30 };
      said(postureChoice(posture, facts, '2026-06-01', DEFAULT_CUFF_RULES).why);
    }
  });

  test('what is refused of a question', () => {
    for (const asked of [{}, { armCm: 3 }, { armCm: 33, scheme: 'x' }, { armCm: 33, atHand: 'x' }]) {
      const parsed = parseCuffQuestion(asked);
      expect(parsed.ok).toBe(false);
      if (!parsed.ok) refused(parsed.refusals);
    }
  });
});

describe('what the sentences say', () => {
  test('a palpated systolic is written with a P and no diastolic is filled in (bedside handbook 8, C044)', () => {
    const sentence = words.detail({ code: 'palpated-only', figures: { systolic: 124 } });
    expect(sentence).toMatch(/no diastolic\. Write it as 124\/P and fill nothing in\.$/);
  });

  test('a rate stands on its own side of the limit that it broke', () => {
    const figures = { slowestMmHgPerSecond: 2, fastestMmHgPerSecond: 3 };
    const fast = words.detail({ code: 'too-fast', figures: { ...figures, mmHgPerSecond: 3.004 } });
    expect(fast).toMatch(/fell by just over 3 mmHg a second, faster than 3,/);
    const of = (mmHgPerSecond: number) =>
      words.detail({ code: 'too-fast', figures: { ...figures, mmHgPerSecond } });
    expect(of(3.4)).toMatch(/fell by 3\.4 mmHg/);
    expect(of(3.04)).toMatch(/fell by 3\.04 mmHg/);
    const drop = words.detail({
      code: 'too-fast-per-beat',
      figures: { dropPerBeatMmHg: 3.0012, fastestPerBeatMmHg: 3 },
    });
    expect(drop).toMatch(/fell by just over 3 mmHg in each beat, more than 3,/);
    const slow = words.detail({ code: 'early-too-slow', figures: { ...figures, mmHgPerSecond: 1.98 } });
    expect(slow).toMatch(/fell by 1\.98 mmHg a second, slower than 2:/);
  });

  test('a margin may be above, at or below the loss of the pulse', () => {
    const margin = (marginMmHg: number) =>
      words.detail({ code: 'margin-small', figures: { marginMmHg, smallMarginMmHg: 20, wantedMmHg: 30 } });
    expect(margin(10)).toMatch(/pumped 10 mmHg above where the pulse was lost;.*pumping 30 above it\.$/);
    expect(margin(19.8)).toMatch(/pumped 19\.8 mmHg above/);
    expect(margin(0)).toMatch(/pumped just to where the pulse was lost;/);
    expect(margin(-4)).toMatch(/pumped to 4 mmHg below where/);
  });

  test('odd numbers are asked about, and only those (bedside handbook 8, C042: 117/73)', () => {
    const sentence = words.detail({
      code: 'off-graduation',
      figures: { systolic: 117, diastolic: 73, gaugeStepMmHg: 2 },
    });
    expect(sentence).toMatch(/marked every 2 mmHg cannot show 117 and 73:/);
  });

  test.each([
    [300, 'over 260'],
    [260.4, '260.4 mmHg is over 260'],
    [40, 'under 50'],
  ])('a systolic of %d is %s', (systolic, side) => {
    const figures = { systolic, lowestSystolic: 50, highestSystolic: 260 };
    const sentence = words.detail({ code: 'implausible-systolic', figures });
    expect(sentence).toContain(side);
    expect(sentence).toMatch(/look at the person first/);
  });

  test('nothing is taken off or added for a wrong cuff', () => {
    const small = words.detail({ code: 'cuff-too-small', figures: { armCm: 36 } });
    expect(small).toMatch(/too high.*Nothing is taken off\.$/);
  });
});
