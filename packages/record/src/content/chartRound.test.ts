import { ROUND_RULE, UNKNOWN_SIGN_CIRCUMSTANCES } from '@evenfall/clinical';
import { describe, expect, test } from 'vitest';
import type { EntryFrame } from '../entry/entry.js';
import { readEntry } from '../entry/readEntry.js';
import { recomputeRound } from '../recompute/recomputeRound.js';
import { bentByOneKey } from '../testing/shapes.js';
import {
  countContent,
  frame,
  idOf,
  NO_EVIDENCE,
  NO_PROTOCOL,
  placesOf,
  roundContent,
  runContent,
  signContent,
  signingContent,
} from '../testing/work.js';
import { roundInputOf } from './roundInputOf.js';

const run = (id: number, systolic: number, diastolic: number, more: Partial<EntryFrame> = {}) =>
  frame(
    'run',
    runContent({
      method: 'auscultation',
      moments: [
        { what: 'first sound', mmHg: systolic },
        { what: 'last sound', mmHg: diastolic },
      ],
    }),
    { id: idOf(id), sequence: id, ...more },
  );
const pulse = frame('count', countContent({ n: 36, windowSeconds: 30 }), { id: idOf(2), sequence: 2 });
const warm = frame('sign', signContent({ of: 'temperature', celsius: 38.4, site: 'oral' }), {
  id: idOf(3),
  sequence: 3,
});
const ENTRIES = [run(5, 148, 92), pulse, warm, run(6, 146, 90), run(7, 144, 88)];
const SIGNS = [
  { sign: 'pulse' as const, entries: [idOf(2)] },
  { sign: 'temperature' as const, entries: [idOf(3)] },
  { sign: 'pressure' as const, entries: [idOf(5), idOf(6), idOf(7)] },
];
const signing = (content: object) => frame('round', content, { schema: 4 });
const again = (content: object, entries = ENTRIES) =>
  recomputeRound(signing(content) as never, entries as never, () => NO_PROTOCOL);

describe('what is made of a round', () => {
  const content = signingContent(SIGNS, ENTRIES);

  // Without a protocol: ESC 2024, mean of the second and third (bedside handbook 3.10).
  test('is made of the entries it names, in the order of the work', () => {
    expect(content.value?.pressure).toMatchObject({ systolic: 145, diastolic: 89, used: [idOf(6), idOf(7)] });
    expect(content.computedBy).toMatchObject({ rule: ROUND_RULE, preset: null, presetVersion: null });
  });

  // Bedside handbook 4.2 (common practice): an oximeter whose pulse is more than 10 from the felt one, 36 in 30 s.
  test.each([
    [82, false],
    [83, true],
    [98, true],
  ])(
    'knows of a saturation read with a pulse of %i whether it is not to be relied on: %j',
    (shown, isDoubtful) => {
      const sign = { of: 'oxygen-saturation', percent: 97, onOxygen: false, pulsePerMinute: shown };
      const known = { ...UNKNOWN_SIGN_CIRCUMSTANCES, feltPulsePerMinute: 72 };
      const read = frame('sign', signContent(sign, known), { id: idOf(9), sequence: 9 });
      const { oxygen } = roundInputOf([read] as never, NO_EVIDENCE);
      expect(oxygen).toEqual({ percent: 97, onOxygen: false, isDoubtful });
    },
  );

  test('looks at no entry that the signing does not name', () => {
    const two = signingContent([{ sign: 'pressure', entries: [idOf(5), idOf(6)] }], ENTRIES);
    expect(two.value?.pressure).toMatchObject({ systolic: null, why: [{ code: 'too-few' }] });
  });

  test('comes back the same from JSON and from its schema, and from its entries', () => {
    const entry = signing(content);
    expect(readEntry(JSON.parse(JSON.stringify(entry)))).toEqual({ ok: true, value: entry });
    expect(again(content).state).toBe('same');
  });

  test('is told from something else that was put in its place, and where', () => {
    const pressure = { ...content.value?.pressure, systolic: 135 };
    expect(again({ ...content, value: { ...content.value, pressure } })).toMatchObject({
      state: 'differs',
      at: '/content/value/pressure/systolic',
      kept: { pressure: { systolic: 135 } },
      computed: { pressure: { systolic: 145 } },
    });
    expect(again(content, [run(5, 148, 92), pulse, warm, run(6, 146, 90), run(7, 150, 88)]).state).toBe(
      'differs',
    );
    expect(again({ ...content, computedBy: { ...content.computedBy, rule: 'round-99' } }).state).toBe(
      'unknown-rule',
    );
  });

  test('takes a pressure set by hand in place of the computed one', () => {
    const byHand = run(8, 148, 92);
    const override = { systolic: 138, diastolic: 86, reason: 'sleeve under the cuff' };
    const set = { ...byHand, content: { ...byHand.content, override } };
    const { value } = signingContent([{ sign: 'pressure', entries: [idOf(8)] }], [set]);
    expect(value?.pressure?.why).toMatchObject([{ code: 'too-few' }]);
    const three = signingContent(
      [{ sign: 'pressure', entries: [idOf(8), idOf(6), idOf(7)] }],
      [set, ...ENTRIES],
    );
    expect(three.value?.pressure).toMatchObject({ systolic: 141, diastolic: 87, used: [idOf(7), idOf(8)] });
  });

  test('keeps an alert of one reading that the average would hide', () => {
    const facts = { ...NO_EVIDENCE.facts, isPregnant: true };
    const entries = [run(5, 166, 104), run(6, 138, 86), run(7, 136, 84)];
    const { value } = signingContent(SIGNS.slice(2), entries, { facts });
    expect(value?.actNow.map(({ condition }) => condition)).toEqual(['severe-in-pregnancy']);
  });
});

describe('the schema of a signing', () => {
  const content = signingContent(SIGNS, ENTRIES, { features: ['fit'], exceptions: ['not-talking'] });

  test('takes exactly what is made: no key less and no key more', () => {
    const bent = bentByOneKey(content);
    expect(bent.length).toBeGreaterThan(60);
    const taken = bent.filter((one) => readEntry(signing(one.content)).ok);
    // Figures and parts of a score have the keys that their rule gives them.
    expect(taken.filter(({ what }) => !/figures|parts|falls/.test(what))).toEqual([]);
  });

  test('has evidence, value and what made it together, or none of them', () => {
    expect(placesOf(readEntry(signing({ ...content, value: null })))).toEqual(['/content/value']);
    const none = { ...content, evidence: null, value: null, computedBy: null };
    expect(readEntry(signing(none)).ok).toBe(true);
  });

  test('of before reads as one of which nothing was made', () => {
    const read = readEntry(frame('round', roundContent(idOf(2)), { schema: 1 }));
    expect(read).toMatchObject({ value: { content: { evidence: null, value: null, computedBy: null } } });
    expect(recomputeRound((read as unknown as { value: never }).value, [], () => NO_PROTOCOL).state).toBe(
      'no-value',
    );
  });
});
