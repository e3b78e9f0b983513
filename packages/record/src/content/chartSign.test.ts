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
