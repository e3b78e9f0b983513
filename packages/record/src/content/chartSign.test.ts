import { SIGNS } from '@evenfall/clinical';
import { describe, expect, test } from 'vitest';
import { signOf } from '../chart/signOf.js';
import { readEntry } from '../entry/readEntry.js';
import { bentByOneKey } from '../testing/shapes.js';
import { frame, kept, NO_PROTOCOL, placesOf, signContent, TEST_PROGRAM } from '../testing/work.js';

/** One of each sign, with everything that may be known of it. */
const READ = {
  temperature: { celsius: 38.1, site: 'tympanic' },
  'oxygen-saturation': {
    percent: 90,
    onOxygen: true,
    device: 'mask',
    litresPerMinute: 4,
    scale: 2,
    scalePrescriber: 'Dr Larch (invented)',
    probe: 'finger',
    pulsePerMinute: 92,
  },
  pain: { score: 7, tool: 'numeric', moving: true, where: 'left knee' },
  consciousness: { level: 'voice', glasgow: { eyes: 3, verbal: 'not-testable', motor: 6 } },
  weight: { kg: 70, how: 'measured' },
  height: { cm: 170, how: 'stated', lying: false },
} as const;

const contentOf = (of: (typeof SIGNS)[number]) => signContent({ of, ...READ[of] });

describe.each(SIGNS)('the content of a sign: %s', (of) => {
  const content = contentOf(of);

  test('comes back the same from JSON and from its schema', () => {
    const entry = frame('sign', content);
    expect(readEntry(JSON.parse(JSON.stringify(entry)))).toEqual({ ok: true, value: entry });
    expect(content.evidence.sign).toMatchObject({ of, ...READ[of] });
    expect(signOf(kept(entry))).toBe(of);
  });

  test('takes no key less and no key more', () => {
    const bent = bentByOneKey(content);
    expect(bent.length).toBeGreaterThan(15);
    expect(bent.filter(({ content: one }) => readEntry(frame('sign', one)).ok)).toEqual([]);
  });

  test('names its rule and no preset: it goes by no section of the protocol', () => {
    expect(content.computedBy).toEqual({
      program: TEST_PROGRAM,
      rule: 'sign-1',
      preset: null,
      presetVersion: NO_PROTOCOL.presetVersion,
    });
  });

  test('stands in a round', () => {
    expect(placesOf(readEntry(frame('sign', content, { round: null })))).toEqual(['/round']);
  });
});

test('what is wrong is refused at its field', () => {
  const content = contentOf('temperature');
  const sign = { ...content.evidence.sign, celsius: '38.1' };
  const bent = { ...content, evidence: { ...content.evidence, sign } };
  expect(placesOf(readEntry(frame('sign', bent)))).toEqual(['/content/evidence/sign/celsius']);
});

// 98.6 degF are 37 degC, 150 lb are 68.0388555 kg, 66.5 in are 168.91 cm, each exact (UCUM 2.1: [lb_av] is 0.45359237 kg, [in_i] 2.54 cm).
describe('the number as it was typed', () => {
  const as = (of: 'temperature' | 'weight' | 'height' | 'pain', more: object, typed: unknown) => {
    const content = signContent({ of, ...READ[of], ...more });
    return readEntry(frame('sign', { ...content, evidence: { ...content.evidence, typed } }));
  };

  test.each([
    ['temperature', { celsius: 37 }, { value: 98.6, unit: '[degF]' }],
    ['temperature', { celsius: 37 }, { value: 37, unit: 'Cel' }],
    ['weight', { kg: 68.0388555 }, { value: 150, unit: '[lb_av]' }],
    ['height', { cm: 168.91 }, { value: 66.5, unit: '[in_i]' }],
    ['height', { cm: 168.91 }, null],
  ] as const)('%s %j is kept beside %j', (of, more, typed) => {
    const read = as(of, more, typed);
    expect(read).toMatchObject({
      ok: true,
      value: { content: { evidence: { typed, sign: { of, ...more } } } },
    });
  });

  test.each([
    ['temperature', { celsius: 37 }, { value: 98.7, unit: '[degF]' }],
    ['temperature', { celsius: 37 }, { value: 37, unit: 'kg' }],
    ['weight', { kg: 70 }, { value: 70, unit: 'cm' }],
    ['pain', { score: 7 }, { value: 7, unit: 'cm' }],
  ] as const)('%s %j is refused beside %j: it is another number, or of something else', (of, more, typed) => {
    expect(placesOf(as(of, more, typed))).toEqual(['/content/evidence/typed']);
  });

  test('in schema 1 nobody kept it; from schema 2 on that is said', () => {
    const content = contentOf('temperature');
    const { typed: _unsaid, ...evidence } = content.evidence;
    const older = { ...content, evidence };
    const read = readEntry(frame('sign', older, { schema: 1 }));
    expect(read).toMatchObject({ ok: true, value: { content: { evidence: { typed: null } } } });
    expect(placesOf(readEntry(frame('sign', older, { schema: 2 })))).toEqual(['/content/evidence/typed']);
  });
});
