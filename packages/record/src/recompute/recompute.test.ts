import { overrideFields, presetProtocol, protocolVersion, UNKNOWN_CIRCUMSTANCES } from '@evenfall/clinical';
import { describe, expect, test } from 'vitest';
import { chartCount } from '../content/chartCount.js';
import { type InForce, inForceUnder } from '../content/inForce.js';
import type { EntryFrame } from '../entry/entry.js';
import { readEntry } from '../entry/readEntry.js';
import { countContent, frame, idOf, NO_PROTOCOL, roundContent, tapsContent } from '../testing/work.js';
import { recompute } from './recompute.js';

const COUNTED = countContent({ n: 19, windowSeconds: 15 });
const TAPPED = tapsContent([0, 0.8, 1.61, 2.4, 3.2, 4.02, 4.8, 5.6]);

/** Only the place without a protocol is known here. */
const known = (version: string | null): InForce | null => (version === null ? NO_PROTOCOL : null);

function again(kind: EntryFrame['kind'], content: object, inForce = known) {
  const read = readEntry(frame(kind, content));
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return recompute(read.value, inForce);
}

describe('a value computed again from its evidence', () => {
  test('is the same when nothing was changed', () => {
    expect(again('count', COUNTED)).toEqual({ state: 'same' });
    expect(again('taps', TAPPED)).toEqual({ state: 'same' });
    const broken = countContent({ windowSeconds: 30, interrupted: { reason: 'spoken-to', atSeconds: 9 } });
    expect(again('count', broken)).toEqual({ state: 'same' });
  });

  test('is the same whatever was set over it by hand or noted', () => {
    const override = { perMinute: 90, reason: 'heard at the apex' };
    expect(again('count', { ...COUNTED, override, note: 'moved' })).toEqual({ state: 'same' });
  });

  test('differs at its place, with both values', () => {
    // 19 beats in 15 s are 60 n / W = 76 a minute (conventions 5).
    const value = { ...COUNTED.value, perMinute: 77 };
    expect(again('count', { ...COUNTED, value })).toMatchObject({
      state: 'differs',
      at: '/content/value/perMinute',
      kept: { perMinute: 77 },
      computed: { perMinute: 76 },
    });
    expect(
      again('taps', { ...TAPPED, value: { ...TAPPED.value, rhythm: 'regular', beats: 7 } }),
    ).toMatchObject({
      state: 'differs',
      at: '/content/value/beats',
    });
  });

  test('differs where taps kept another advice than their evidence and rules give', () => {
    const value = { ...TAPPED.value, nextWindowSeconds: 60 };
    expect(again('taps', { ...TAPPED, value })).toMatchObject({
      state: 'differs',
      at: '/content/value/nextWindowSeconds',
    });
    const circumstances = { ...TAPPED.evidence.circumstances, strength: 'weak' };
    const bent = { ...TAPPED, evidence: { ...TAPPED.evidence, circumstances } };
    expect(again('taps', bent)).toMatchObject({
      state: 'differs',
      computed: { nextWhy: [{ code: 'weak' }] },
    });
  });

  test('differs when its evidence was changed and the value was not', () => {
    const count = { ...COUNTED.evidence.count, n: 18 };
    const bent = { ...COUNTED, evidence: { ...COUNTED.evidence, count } };
    expect(again('count', bent)).toMatchObject({ state: 'differs', computed: { perMinute: 72 } });
  });

  test('is the same within the last bits that two machines may differ in, and differs beyond', () => {
    const nudged = (factor: number) => {
      const value = { ...TAPPED.value, perMinute: (TAPPED.value.perMinute ?? 0) * factor };
      return again('taps', { ...TAPPED, value }).state;
    };
    expect(nudged(1 + 1e-10)).toBe('same');
    expect(nudged(1 + 1e-8)).toBe('differs');
  });

  test('cannot be told when this program does not have the rule', () => {
    const by = (rule: string) => ({ computedBy: { ...COUNTED.computedBy, rule } });
    expect(again('count', { ...COUNTED, ...by('count-99') })).toEqual({ state: 'unknown-rule' });
    expect(again('taps', { ...TAPPED, ...by('count-1') })).toEqual({ state: 'unknown-rule' });
  });

  test('cannot be told when the protocol is not kept here', () => {
    const computedBy = { ...COUNTED.computedBy, preset: 'full-minute', presetVersion: 'ab'.repeat(32) };
    expect(again('count', { ...COUNTED, computedBy })).toEqual({ state: 'unknown-protocol' });
  });

  test('differs when it names another preset than its protocol version is of', () => {
    const computedBy = { ...COUNTED.computedBy, preset: 'full-minute' };
    expect(again('count', { ...COUNTED, computedBy })).toEqual({
      state: 'differs',
      at: '/content/computedBy/preset',
      kept: 'full-minute',
      computed: null,
    });
  });

  test('is refused when its evidence cannot be, with every place', () => {
    const count = { ...COUNTED.evidence.count, n: 101 };
    const over = { ...COUNTED, evidence: { ...COUNTED.evidence, count } };
    // Over 400 a minute is refused as impossible (conventions 5).
    expect(again('count', over)).toMatchObject({
      state: 'impossible-evidence',
      refusals: [{ field: '/content/evidence/count/n', code: 'impossible' }],
    });
    const taps = { ...TAPPED.evidence.taps, seconds: [0, 2, 1, 0.5] };
    const unordered = { ...TAPPED, evidence: { ...TAPPED.evidence, taps } };
    expect(again('taps', unordered)).toMatchObject({
      state: 'impossible-evidence',
      refusals: [
        { field: '/content/evidence/taps/seconds/2', code: 'out-of-order' },
        { field: '/content/evidence/taps/seconds/3', code: 'out-of-order' },
      ],
    });
  });
});

test('uses the rules of the protocol that the value names', () => {
  const preset = presetProtocol({ count: 'thirty-seconds' });
  if (!preset.ok) throw new Error('the preset is gone');
  const local = overrideFields(preset.value, [{ section: 'count', key: 'slowPerMinute', value: 55 }]);
  if (!local.ok) throw new Error(JSON.stringify(local.refusals));
  const presetVersion = protocolVersion(local.value);
  const inForce = inForceUnder(local.value, presetVersion);
  // 13 beats in 15 s are 52 a minute: slow below 55, not slow below the 50 of no protocol.
  const count = { of: 'pulse', n: 13, windowSeconds: 15, clock: 'any', first: 1 } as const;
  const done = { count, circumstances: UNKNOWN_CIRCUMSTANCES, override: null, note: null };
  const content = chartCount(done, inForce, 'evenfall test');
  expect(content.value.why).not.toEqual(chartCount(done, NO_PROTOCOL, 'evenfall test').value.why);
  const rules = (version: string | null) => (version === presetVersion ? inForce : known(version));
  expect(again('count', content, rules)).toEqual({ state: 'same' });
  const claimed = { ...content, computedBy: { ...content.computedBy, preset: null, presetVersion: null } };
  expect(again('count', claimed, rules)).toMatchObject({ state: 'differs' });
});

test.each([
  ['round', roundContent(idOf(2))],
  ['entered-in-error', { note: null }],
  ['person', { identifiers: ['name', 'number'] }],
] as const)('a %s holds no value', (kind, content) => {
  expect(again(kind, content)).toEqual({ state: 'no-value' });
});
