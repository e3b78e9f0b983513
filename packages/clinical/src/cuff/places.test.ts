import { describe, expect, test } from 'vitest';
import { armChoice, armState } from './arms.js';
import { ARM_FACTS, type ArmFactKind, holdsOn, type PlaceFacts } from './facts.js';
import { placeCheck } from './placeCheck.js';
import { CUFF_SITES, type Posture } from './places.js';
import { postureChoice } from './posture.js';
import { DEFAULT_CUFF_RULES as RULES } from './rules.js';

const DAY = '2026-03-14';
const NOBODY: PlaceFacts = { arms: [], person: [], ageMonths: null, pregnancyWeeks: null };
const arm = (
  kind: ArmFactKind,
  side: 'left' | 'right',
  from = '2020-01-01',
  until: string | null = null,
) => ({
  kind,
  side,
  from,
  until,
});
const withArms = (...arms: PlaceFacts['arms']): PlaceFacts => ({ ...NOBODY, arms });

test.each([
  ['2026-03-14', null, true],
  ['2026-03-15', null, false],
  ['2026-03-01', '2026-03-14', true],
  ['2026-03-01', '2026-03-13', false],
])('from %s until %s holds on 2026-03-14: %s', (from, until, holds) => {
  expect(holdsOn({ from, until }, DAY)).toBe(holds);
});

describe('arms', () => {
  test.each<[ArmFactKind, 'never' | 'prefer-other']>([
    // Bedside handbook 3.15 (second-hand; the two levels are common practice).
    ['fistula', 'never'],
    ['graft', 'never'],
    ['shunt', 'never'],
    ['drip', 'never'],
    ['amputation', 'never'],
    ['axillary-surgery', 'prefer-other'],
    ['lymphoedema', 'prefer-other'],
    ['weakness', 'prefer-other'],
    ['injury', 'prefer-other'],
    ['lower-arm', 'prefer-other'],
  ])('%s: %s', (kind, level) => {
    expect(armState('left', withArms(arm(kind, 'left')), DAY, RULES)).toEqual({ level, because: [kind] });
    expect(armState('right', withArms(arm(kind, 'left')), DAY, RULES).level).toBe('free');
  });

  test('every fact has a level', () => {
    for (const kind of ARM_FACTS) {
      expect(armState('left', withArms(arm(kind, 'left')), DAY, RULES).level).not.toBe('free');
    }
  });

  test('C064: a fistula on the left, the left chosen: a hard stop, whoever gives a reason', () => {
    // Bedside handbook 8, C064 (second-hand, 3.15).
    const facts = withArms(arm('fistula', 'left'));
    const override = { by: 'A. Supervisor', reason: 'no other way' };
    for (const site of ['upper-arm', 'forearm', 'wrist'] as const) {
      const check = placeCheck({ site, side: 'left' }, facts, DAY, override, RULES);
      expect(check).toMatchObject({ allowed: 'never', because: ['fistula'] });
    }
    expect(placeCheck({ site: 'upper-arm', side: 'right' }, facts, DAY, null, RULES).allowed).toBe('yes');
    expect(placeCheck({ site: 'thigh', side: 'left' }, facts, DAY, null, RULES).allowed).toBe('yes');
  });

  test('an arm better left alone needs a named person and a reason', () => {
    const facts = withArms(arm('lymphoedema', 'left'));
    const check = (override: { by: string; reason: string } | null) =>
      placeCheck({ site: 'upper-arm', side: 'left' }, facts, DAY, override, RULES);
    expect(check(null).allowed).toBe('needs-reason');
    expect(check({ by: '', reason: 'the other is in a cast' }).allowed).toBe('needs-reason');
    expect(check({ by: 'A. Nurse', reason: ' ' }).allowed).toBe('needs-reason');
    expect(check({ by: 'A. Nurse', reason: 'the other is in a cast' })).toMatchObject({
      allowed: 'yes',
      because: ['lymphoedema'],
      flags: [{ code: 'arm-overridden' }],
    });
  });

  test('a fact that is over bars nothing', () => {
    const facts = withArms(arm('drip', 'left', '2026-03-01', '2026-03-10'));
    expect(armState('left', facts, DAY, RULES).level).toBe('free');
  });

  test('a place may bar more, and never less than a fistula, graft, shunt, drip or amputation', () => {
    const strict = { ...RULES, neverFor: ['lymphoedema'] as const };
    expect(armState('left', withArms(arm('lymphoedema', 'left')), DAY, strict).level).toBe('never');
    expect(armState('left', withArms(arm('fistula', 'left')), DAY, strict).level).toBe('never');
    const lax = { ...RULES, preferOtherFor: [] };
    expect(armState('left', withArms(arm('lymphoedema', 'left')), DAY, lax).level).toBe('free');
  });
});

describe('which arm', () => {
  const choice = (facts: PlaceFacts) => {
    const { sides, site, why } = armChoice(facts, DAY, RULES);
    return [sides, site, why.map(({ code }) => code)];
  };

  test.each<[string, PlaceFacts, unknown[]]>([
    ['nothing known', NOBODY, [['right', 'left'], 'upper-arm', []]],
    ['left barred', withArms(arm('fistula', 'left')), [['right'], 'upper-arm', ['arm-barred']]],
    ['right barred', withArms(arm('drip', 'right')), [['left'], 'upper-arm', ['arm-barred']]],
    [
      'right reads lower',
      withArms(arm('lower-arm', 'right')),
      [['left', 'right'], 'upper-arm', ['prefer-other-arm']],
    ],
    [
      'left barred, right weak',
      withArms(arm('graft', 'left'), arm('weakness', 'right')),
      [['right'], 'upper-arm', ['arm-barred', 'prefer-other-arm']],
    ],
    [
      'both barred',
      withArms(arm('fistula', 'left'), arm('drip', 'right')),
      [[], 'thigh', ['both-arms-barred']],
    ],
    // Bedside handbook 3.1 (found, AAP 2017): a child's right arm.
    ['a child', { ...NOBODY, ageMonths: 60 }, [['right', 'left'], 'upper-arm', ['child-right-arm']]],
    [
      'a day under 18',
      { ...NOBODY, ageMonths: 215.9 },
      [['right', 'left'], 'upper-arm', ['child-right-arm']],
    ],
    ['18 years', { ...NOBODY, ageMonths: 216 }, [['right', 'left'], 'upper-arm', []]],
    [
      'a child whose right arm is barred',
      { ...withArms(arm('drip', 'right')), ageMonths: 60 },
      [['left'], 'upper-arm', ['arm-barred']],
    ],
  ])('%s', (_what, facts, chosen) => {
    expect(choice(facts)).toEqual(chosen);
  });
});

test('only the upper arm is averaged and categorised; the others say so', () => {
  // docs/conventions.md section 6; bedside handbook 3.15: the thigh reads 10 to 20 % higher (found, AAP 2017).
  for (const site of CUFF_SITES) {
    const { isAveraged, flags } = placeCheck({ site, side: 'left' }, NOBODY, DAY, null, RULES);
    expect(isAveraged).toBe(site === 'upper-arm');
    const codes = flags.map(({ code }) => code);
    expect(codes).toEqual(
      site === 'upper-arm' ? [] : site === 'thigh' ? ['other-site', 'thigh-reads-higher'] : ['other-site'],
    );
  }
  const thigh = placeCheck({ site: 'thigh', side: 'left' }, NOBODY, DAY, null, RULES);
  expect(thigh.flags[1]?.figures).toEqual({ higherByPercentLow: 10, higherByPercentHigh: 20 });
});

describe('posture', () => {
  const pregnant = { kind: 'pregnancy', from: '2025-10-01', until: '2026-07-01' } as const;
  const seated = { kind: 'cannot-stand', from: '2025-10-01', until: null } as const;

  test.each<[Posture, Partial<PlaceFacts>, Posture, string[]]>([
    ['lie', {}, 'lie', []],
    // Late pregnancy (from memory): never flat on the back; a week not known counts as late.
    ['lie', { person: [pregnant], pregnancyWeeks: 20 }, 'lie-left', ['late-pregnancy-not-flat']],
    ['lie', { person: [pregnant], pregnancyWeeks: 19.9 }, 'lie', []],
    ['lie', { person: [pregnant] }, 'lie-left', ['late-pregnancy-not-flat']],
    ['lie', { pregnancyWeeks: 30 }, 'lie-left', ['late-pregnancy-not-flat']],
    ['lie', { person: [{ ...pregnant, until: '2026-03-13' }] }, 'lie', []],
    ['sit', { person: [pregnant] }, 'sit', []],
    ['lie-left', { person: [pregnant] }, 'lie-left', []],
    ['stand', {}, 'stand', []],
    ['stand', { person: [seated] }, 'sit', ['cannot-stand']],
    ['lie', { person: [seated] }, 'lie', []],
  ])('%s wanted, %j: %s', (wanted, facts, posture, codes) => {
    const choice = postureChoice(wanted, { ...NOBODY, ...facts }, DAY, RULES);
    expect([choice.posture, choice.why.map(({ code }) => code)]).toEqual([posture, codes]);
  });
});
