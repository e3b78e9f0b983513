import { BLANK, PREPARATIONS, PROPER, parseScenario, type Scenario, scenarioOf } from '@evenfall/physiology';
import { expect, test } from 'vitest';
import { ASKED, answerTo, askedIn } from './asked.js';
import { begunVisit, foundBesides, foundSitting } from './begin.js';
import { nowOf, Visit } from './visit.js';

test('each thing that may be wrong is found by one question, and put right by its answer', () => {
  for (const one of PREPARATIONS) {
    const found = ASKED.filter((asked) =>
      answerTo(asked, { ...PROPER, [one]: true }, BLANK).found.includes(one),
    );
    expect(found).toHaveLength(1);
    const { mend } = answerTo(found[0] as (typeof ASKED)[number], { ...PROPER, [one]: true }, BLANK);
    expect({ ...PROPER, [one]: true, ...mend }).toEqual(PROPER);
  }
  for (const asked of ASKED) expect(answerTo(asked, PROPER, BLANK)).toEqual({ found: [], mend: null });
  expect(askedIn('arm', false)).toEqual(['sleeve']);
  expect(askedIn('arm', true)).toEqual(['sleeve', 'fingers']);
});

// Physiology handbook 11: what is over 60 dB(A) hides soft sounds; a shut door takes 20 off (from memory).
test.each([
  [60, false, { found: [], mend: null }],
  [68, false, { found: ['isLoud'], mend: { isQuieter: true, isSeatedAnew: true } }],
  [68, true, { found: [], mend: null }],
  [80, true, { found: [], mend: null }],
  [84, true, { found: ['isStillLoud'], mend: null }],
] as const)('in a place of %i dB(A), asked for quiet: %s', (noiseDbA, isQuieter, answer) => {
  expect(answerTo('noise', { ...PROPER, isQuieter }, { noiseDbA })).toEqual(answer);
});

test('people come with each of them now and then, most with hardly any, and sit as they always did', () => {
  const all = Array.from({ length: 2000 }, (_, seed) => foundBesides(seed));
  for (const one of PREPARATIONS) {
    const share = all.filter((found) => found[one]).length / all.length;
    expect(share).toBeGreaterThan(0.05);
    expect(share).toBeLessThan(0.2);
  }
  const visit = begunVisit(BLANK, 7);
  expect(visit.circumstances).toEqual({ ...foundSitting(7), ...foundBesides(7) });
});

test('a person of one’s own comes as it says, whatever the seed', () => {
  const read = parseScenario({ ...BLANK, preparation: { hadCaffeine: true } });
  if (!read.ok) throw new Error('refused');
  for (const seed of [1, 2, 3, 4, 5, 6, 7, 8]) {
    const { circumstances } = begunVisit(read.value, seed);
    expect(PREPARATIONS.filter((one) => circumstances[one])).toEqual(['hadCaffeine']);
  }
});

test('before the cuff goes up it is as if it had always been so; after it the log says when', () => {
  const scenario: Scenario = {
    ...BLANK,
    preparation: { ...foundBesides(0), hadCaffeine: true, isCuffLoose: true, isOverSleeve: true },
  };
  const visit = new Visit(begunVisit(scenario, 3));
  visit.arrange({ hadCaffeine: false }, null, 1);
  expect(visit.data().circumstances.hadCaffeine).toBe(false);
  visit.act({ kind: 'steady-rise', mmHgPerSecond: 30, toMmHg: 60 }, 2);
  visit.act({ kind: 'quick-release' }, 6);
  visit.moveTo(20);
  visit.arrange({ isCuffLoose: false, isOverSleeve: false }, null, 21);
  visit.moveTo(22);
  const data = visit.data();
  expect(data.circumstances).toMatchObject({ isCuffLoose: true, isOverSleeve: true });
  expect(nowOf(data).circumstances).toMatchObject({ isCuffLoose: false, isOverSleeve: false });
  // Played again from its log it is the same visit.
  expect(new Visit(data).snapshot()).toEqual(visit.snapshot());
});

// Bedside handbook 3.15: nobody who is unwell is met chatting on a chair with their legs crossed.
test('whoever is unwell is found lying quietly, and may have an arm that hangs', () => {
  const shock = scenarioOf('cold-hands');
  if (shock === undefined) throw new Error('not there');
  const all = Array.from({ length: 300 }, (_, seed) => begunVisit(shock, seed).circumstances);
  for (const one of all)
    expect(one).toMatchObject({
      hasLegsCrossed: false,
      isTalking: false,
      hasFullBladder: false,
      hasBackUnsupported: false,
      hadCaffeine: false,
      hadNicotine: false,
    });
  expect(all.some(({ isArmUnsupported }) => isArmUnsupported)).toBe(true);
  expect(all.some(({ isArmUnsupported }) => !isArmUnsupported)).toBe(true);
});
