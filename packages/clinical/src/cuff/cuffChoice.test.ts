import { describe, expect, test } from 'vitest';
import { cuffChoice, smallestBladderCm } from './cuffChoice.js';
import { parseCuffQuestion } from './parseCuffQuestion.js';
import { CUFF_SCHEMES, type CuffSchemeId, cuffScheme } from './schemes.js';

const choice = (armCm: number, scheme: CuffSchemeId, atHand: string | null = null) =>
  cuffChoice({ armCm, scheme, atHand });

describe('by scheme', () => {
  test.each<[CuffSchemeId, number, string | null, string | null]>([
    // Bedside handbook 3.2 (second-hand) and 8: C028 to C031; both sides of each limit.
    ['aha-2005', 21, null, null],
    ['aha-2005', 21.4, null, null],
    ['aha-2005', 21.5, 'small-adult', '12x22'],
    ['aha-2005', 22, 'small-adult', '12x22'],
    ['aha-2005', 26, 'small-adult', '12x22'],
    ['aha-2005', 26.4, 'small-adult', '12x22'],
    ['aha-2005', 26.5, 'adult', '16x30'],
    ['aha-2005', 27, 'adult', '16x30'],
    ['aha-2005', 34, 'adult', '16x30'],
    ['aha-2005', 35, 'large-adult', '16x36'],
    ['aha-2005', 44, 'large-adult', '16x36'],
    ['aha-2005', 45, 'thigh', '16x42'],
    ['aha-2005', 52, 'thigh', '16x42'],
    ['aha-2005', 53, null, null],
    // C032 (found; bladders from memory); 33 takes the larger (common practice).
    ['uk-arm-bands', 22, 'small', '12x18'],
    ['uk-arm-bands', 23, 'medium', '12x26'],
    ['uk-arm-bands', 30, 'medium', '12x26'],
    ['uk-arm-bands', 32, 'medium', '12x26'],
    ['uk-arm-bands', 33, 'large', '12x40'],
    ['uk-arm-bands', 40, 'large', '12x40'],
    ['uk-arm-bands', 50, 'large', '12x40'],
    ['uk-arm-bands', 51, null, null],
    // From memory.
    ['fourth-report-2004', 10, 'newborn', '4x8'],
    ['fourth-report-2004', 11, 'infant', '6x12'],
    ['fourth-report-2004', 15, 'infant', '6x12'],
    ['fourth-report-2004', 16, 'child', '9x18'],
    ['fourth-report-2004', 22, 'child', '9x18'],
    ['fourth-report-2004', 23, 'small-adult', '10x24'],
    ['fourth-report-2004', 26, 'small-adult', '10x24'],
    ['fourth-report-2004', 27, 'adult', '13x30'],
    ['fourth-report-2004', 34, 'adult', '13x30'],
    ['fourth-report-2004', 35, 'large-adult', '16x38'],
    ['fourth-report-2004', 44, 'large-adult', '16x38'],
    ['fourth-report-2004', 45, 'thigh', '20x42'],
    ['fourth-report-2004', 52, 'thigh', '20x42'],
    ['fourth-report-2004', 53, null, null],
  ])('%s, arm %d cm: %s %s', (scheme, armCm, cuff, bladder) => {
    const { cuff: id, bladderCm, why } = choice(armCm, scheme);
    expect(id).toBe(cuff);
    expect(bladderCm === null ? null : `${bladderCm.width}x${bladderCm.length}`).toBe(bladder);
    const beyond = armCm < 30 ? 'arm-below-scheme' : 'arm-above-scheme';
    expect(why.map(({ code }) => code)).toEqual(cuff === null ? [beyond] : []);
  });

  test('each scheme says how sure it is', () => {
    expect(CUFF_SCHEMES.map(({ id, status }) => [id, status])).toEqual([
      ['aha-2005', 'second-hand'],
      ['uk-arm-bands', 'found'],
      ['fourth-report-2004', 'memory'],
    ]);
  });
});

test('C033: the smallest bladder for an arm of 40 cm', () => {
  // Bedside handbook 8, C033 (derived, 3.2).
  expect(smallestBladderCm(40)).toEqual({ width: 16, length: 32 });
});

describe('the cuff at hand', () => {
  test.each<[CuffSchemeId, number, string, number | null, number | null]>([
    // Bedside handbook 3.3 (found, Ishigami 2023) and 8, C034: the regular cuff on everybody.
    ['aha-2005', 25, 'adult', -3.6, -1.3],
    ['aha-2005', 30, 'adult', 0, 0],
    ['aha-2005', 40, 'adult', 4.8, 1.8],
    ['aha-2005', 48, 'adult', 19.5, 7.4],
    ['uk-arm-bands', 40, 'medium', 4.8, 1.8],
    ['fourth-report-2004', 48, 'adult', 19.5, 7.4],
    // No trial compared these two.
    ['aha-2005', 48, 'large-adult', null, null],
    ['aha-2005', 30, 'large-adult', null, null],
    ['fourth-report-2004', 20, 'adult', null, null],
  ])('%s, arm %d cm, %s at hand: %s/%s', (scheme, armCm, atHand, systolic, diastolic) => {
    const { biasMmHg, why } = choice(armCm, scheme, atHand);
    expect(biasMmHg).toEqual(systolic === null ? null : { systolic, diastolic });
    expect(why.map(({ code }) => code)).toEqual(systolic === null ? ['not-compared'] : []);
  });

  test('too small reads high and too large reads low, over many studies', () => {
    // Bedside handbook 3.1 rows 13 and 14 (second-hand, a systematic review).
    const small = choice(48, 'aha-2005', 'large-adult');
    expect(small.biasRangeMmHg).toEqual({ systolic: [2.08, 11.2], diastolic: [1.61, 6.6] });
    expect(small.flags).toEqual([{ code: 'cuff-too-small', figures: { armCm: 48 } }]);
    const large = choice(30, 'aha-2005', 'thigh');
    expect(large.biasRangeMmHg).toEqual({ systolic: [-3.7, -1.45], diastolic: [-4.7, -0.96] });
    expect(large.flags).toEqual([{ code: 'cuff-too-large', figures: { armCm: 30 } }]);
    expect(choice(30, 'aha-2005', 'adult')).toMatchObject({
      flags: [],
      biasRangeMmHg: null,
      biasSource: null,
    });
  });

  test('the source of a bias goes with it', () => {
    expect(choice(48, 'aha-2005', 'adult').biasSource).toMatch(/Ishigami 2023/);
    expect(choice(48, 'aha-2005', 'large-adult').biasSource).toMatch(/Kallioinen 2017/);
  });

  test('an arm beyond the scheme: the cuff at hand is wrong, by no known amount', () => {
    expect(choice(55, 'aha-2005', 'thigh')).toMatchObject({
      biasMmHg: null,
      flags: [{ code: 'cuff-too-small' }],
    });
    expect(choice(18, 'aha-2005', 'small-adult')).toMatchObject({ flags: [{ code: 'cuff-too-large' }] });
  });
});

describe('the question from outside', () => {
  const refused = (input: unknown) => {
    const parsed = parseCuffQuestion(input);
    return parsed.ok ? [] : parsed.refusals.map(({ field, code }) => `${field} ${code}`);
  };

  test('an absent scheme is that of the local rules', () => {
    expect(parseCuffQuestion({ armCm: '33' })).toEqual({
      ok: true,
      value: { armCm: 33, scheme: 'aha-2005', atHand: null },
    });
  });

  test.each<[unknown, string[]]>([
    [{}, ['/armCm missing']],
    [{ armCm: 3.9 }, ['/armCm out-of-range']],
    [{ armCm: 4 }, []],
    [{ armCm: 80 }, []],
    [{ armCm: 80.1 }, ['/armCm out-of-range']],
    [{ armCm: '33 cm' }, ['/armCm not-a-number']],
    [{ armCm: 33, scheme: 'aha' }, ['/scheme unknown-id']],
    [{ armCm: 33, atHand: 'medium' }, ['/atHand unknown-id']],
    [{ armCm: 33, scheme: 'uk-arm-bands', atHand: 'medium' }, []],
    [
      { arm: 33, armCm: 'x', scheme: 'y' },
      ['/armCm not-a-number', '/scheme unknown-id', '/arm unknown-field'],
    ],
  ])('%j is refused as %j', (input, refusals) => {
    expect(refused(input)).toEqual(refusals);
  });

  test('the choices are those of the scheme', () => {
    const parsed = parseCuffQuestion({ armCm: 33, atHand: 'medium' });
    expect(parsed.ok ? [] : parsed.refusals[0]?.choices).toEqual(
      cuffScheme('aha-2005').cuffs.map(({ id }) => id),
    );
  });
});
