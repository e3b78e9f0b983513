import {
  overrideFields,
  presetProtocol,
  protocolVersion,
  type Run,
  UNKNOWN_CIRCUMSTANCES,
} from '@evenfall/clinical';
import { describe, expect, test } from 'vitest';
import { chartCount } from '../content/chartCount.js';
import { chartRun } from '../content/chartRun.js';
import { type InForce, inForceUnder } from '../content/inForce.js';
import type { EntryFrame } from '../entry/entry.js';
import { readEntry } from '../entry/readEntry.js';
import {
  countContent,
  frame,
  idOf,
  NO_PROTOCOL,
  roundContent,
  runContent,
  signContent,
  tapsContent,
} from '../testing/work.js';
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

describe('a run and a sign, recomputed,', () => {
  const RUN = runContent({
    method: 'auscultation',
    pulsePerMinute: 60,
    peak: { mmHg: 160, atSeconds: 0 },
    moments: [
      { what: 'first sound', mmHg: 130, atSeconds: 12 },
      { what: 'last sound', mmHg: 80, atSeconds: 32 },
    ],
  });
  const SIGN = signContent({ of: 'temperature', celsius: 38, site: 'oral' });

  test('are the same', () => {
    // Bedside handbook 8, C040: 160 to 130 in 12 s is 2.5 mmHg a second.
    expect(RUN.value.earlyDeflationRateMmHgPerSecond).toBe(2.5);
    expect(again('run', RUN)).toEqual({ state: 'same' });
    expect(again('sign', SIGN)).toEqual({ state: 'same' });
  });

  test.each<[string, object]>([
    ['/content/value/systolic', { systolic: 132 }],
    ['/content/value/diastolicUsed', { diastolicUsed: null }],
    ['/content/value/systolicRange/1', { systolicRange: [129, 140] }],
    ['/content/value/flags', { flags: [{ code: 'to-zero', figures: {} }] }],
    ['/content/value/isAveraged', { isAveraged: false }],
    ['/content/value/biasMmHg', { biasMmHg: { systolic: 0, diastolic: 0 } }],
  ])('differ at %s when a run says otherwise', (at, bent) => {
    expect(again('run', { ...RUN, value: { ...RUN.value, ...bent } })).toMatchObject({
      state: 'differs',
      at,
    });
  });

  test('differ when the flags of a sign say otherwise', () => {
    expect(again('sign', { ...SIGN, value: { flags: [], why: [] } })).toMatchObject({
      state: 'differs',
      at: '/content/value/flags',
    });
  });

  test('cannot be from evidence that cannot be', () => {
    const run = { ...RUN.evidence.run, moments: [...RUN.evidence.run.moments].reverse() };
    expect(again('run', { ...RUN, evidence: { ...RUN.evidence, run } })).toMatchObject({
      state: 'impossible-evidence',
    });
    const sign = { of: 'temperature', celsius: 400, site: 'oral' } as const;
    expect(again('sign', { ...SIGN, evidence: { ...SIGN.evidence, sign } })).toMatchObject({
      state: 'impossible-evidence',
      refusals: [{ field: '/content/evidence/sign/celsius', code: 'out-of-range' }],
    });
  });

  test('cannot be told under another rule', () => {
    const by = (content: { computedBy: object }) => ({ computedBy: { ...content.computedBy, rule: 'x-9' } });
    expect(again('run', { ...RUN, ...by(RUN) })).toEqual({ state: 'unknown-rule' });
    expect(again('sign', { ...SIGN, ...by(SIGN) })).toEqual({ state: 'unknown-rule' });
  });

  test('a run goes by the preset of letting down, not by that of counting', () => {
    const preset = presetProtocol({ count: 'full-minute', deflation: 'two-a-beat' });
    if (!preset.ok) throw new Error('the preset is gone');
    const version = protocolVersion(preset.value);
    const inForce = inForceUnder(preset.value, version);
    const rules = (asked: string | null) => (asked === version ? inForce : known(asked));
    const { run, ...evidence } = RUN.evidence;
    const done = { ...evidence, run: run as Run, override: null, note: null };
    const content = chartRun(done, inForce, 'evenfall test');
    expect(content.computedBy.preset).toBe('two-a-beat');
    // 2.5 mmHg a second at 60 a minute is 2.5 a beat, over the 2 of this preset (bedside handbook 3.6).
    expect(content.value.flags.map(({ code }) => code)).toContain('too-fast-per-beat');
    expect(again('run', content, rules)).toEqual({ state: 'same' });
    const computedBy = { ...content.computedBy, preset: 'full-minute' };
    expect(again('run', { ...content, computedBy }, rules)).toMatchObject({ state: 'differs' });
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
