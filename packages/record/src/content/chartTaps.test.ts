import { parseTaps, TAPS_RULE, UNKNOWN_CIRCUMSTANCES } from '@evenfall/clinical';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readEntry } from '../entry/readEntry.js';
import { bentByOneKey } from '../testing/shapes.js';
import { frame, NO_PROTOCOL, placesOf, TEST_PROGRAM, tapsContent } from '../testing/work.js';
import { chartTaps } from './chartTaps.js';

/** Taps of any rhythm, from 0.2 to 3 s apart, with a tap missed or a finger that bounced now and then. */
const anyTaps = fc
  .record({
    of: fc.constantFrom('pulse', 'breaths'),
    source: fc.constantFrom('touch', 'key', 'file'),
    intervalsMs: fc.oneof(
      fc.array(fc.integer({ min: 200, max: 3000 }), { maxLength: 80 }),
      fc.array(fc.constantFrom<number>(800, 805, 798, 1602, 160, 640), { maxLength: 80 }),
      fc.array(fc.constant<number>(800), { maxLength: 80 }),
    ),
  })
  .map(({ of, source, intervalsMs }) => {
    const timesMs = [0];
    for (const ms of intervalsMs) timesMs.push((timesMs.at(-1) ?? 0) + ms);
    return { of, source, seconds: timesMs.map((ms) => ms / 1000) };
  });

describe('the content of taps', () => {
  test('comes back the same from JSON and from its schema, whatever was tapped', () => {
    fc.assert(
      fc.property(anyTaps, fc.boolean(), (given, repair) => {
        const read = parseTaps(given);
        fc.pre(read.ok);
        if (!read.ok) return;
        const done = {
          taps: read.value,
          repair,
          circumstances: UNKNOWN_CIRCUMSTANCES,
          override: null,
          note: null,
        };
        const content = chartTaps(done, NO_PROTOCOL, TEST_PROGRAM);
        const entry = frame('taps', content);
        // A NaN or an infinity would come back from JSON as null.
        expect(readEntry(JSON.parse(JSON.stringify(entry)))).toEqual({ ok: true, value: entry });
        expect(content.evidence).toEqual({ taps: given, repair, circumstances: UNKNOWN_CIRCUMSTANCES });
      }),
    );
  });

  test('is a copy: what is charted does not change with what it was made from', () => {
    const seconds = [0, 0.8, 1.6];
    const content = tapsContent(seconds);
    seconds[2] = 9;
    expect(content.evidence.taps.seconds).toEqual([0, 0.8, 1.6]);
  });

  test('names the program, the rule and the protocol in force', () => {
    expect(tapsContent([0, 0.8]).computedBy).toEqual({
      program: TEST_PROGRAM,
      rule: TAPS_RULE,
      preset: null,
      presetVersion: null,
    });
  });

  test('has no rate for one tap: null with its reason, never zero (conventions 5)', () => {
    const { value } = tapsContent([4.2]);
    expect(value).toMatchObject({ perMinute: null, beats: 1, why: [{ code: 'too-few' }] });
    expect(readEntry(frame('taps', tapsContent([4.2]))).ok).toBe(true);
  });
});

describe('what to do next', () => {
  // Twelve even taps at 75 a minute; bedside handbook 1.5: felt irregular asks for a full minute (practice).
  const seconds = Array.from({ length: 12 }, (_, beat) => beat * 0.8);
  const done = {
    taps: { of: 'pulse', source: 'key', seconds },
    repair: true,
    override: null,
    note: null,
  } as const;
  const charted = (rhythmFelt: 'irregular' | null, inForce = NO_PROTOCOL) =>
    chartTaps({ ...done, circumstances: { ...UNKNOWN_CIRCUMSTANCES, rhythmFelt } }, inForce, TEST_PROGRAM)
      .value;

  test('comes from what was noticed', () => {
    expect(charted(null)).toMatchObject({ nextWindowSeconds: null, nextWhy: [], flags: [] });
    expect(charted('irregular')).toMatchObject({
      nextWindowSeconds: 60,
      nextWhy: [{ code: 'irregular' }],
      flags: [{ code: 'rhythm-irregular' }],
    });
  });

  test('comes from the rules in force', () => {
    const countRules = { ...NO_PROTOCOL.countRules, fullMinuteWhenIrregular: false };
    expect(charted('irregular', { ...NO_PROTOCOL, countRules })).toMatchObject({
      nextWindowSeconds: null,
      nextWhy: [],
      flags: [{ code: 'rhythm-irregular' }],
    });
  });
});

describe('the schema of taps takes exactly what is made', () => {
  // Steady at 75 a minute with one tap missed after the sixth, so that there is a repair to keep.
  const seconds = Array.from({ length: 24 }, (_, beat) => beat * 0.8 + 0.004 * (beat % 3)).filter(
    (_, beat) => beat !== 6,
  );
  const content = tapsContent(seconds);

  test('no key less and no key more', () => {
    expect(content.value.repairs).toEqual([{ index: 6, what: 'missed', added: 1 }]);
    const bent = bentByOneKey(content);
    expect(bent.length).toBeGreaterThan(40);
    expect(bent.filter(({ content }) => readEntry(frame('taps', content)).ok)).toEqual([]);
  });

  test.each([
    ['/content/evidence/taps/seconds', { seconds: [] }],
    ['/content/evidence/taps/seconds', { seconds: Array.from({ length: 2001 }, (_, at) => at) }],
    ['/content/evidence/taps/seconds/1', { seconds: [0, '0.8'] }],
    ['/content/evidence/taps/source', { source: 'camera' }],
  ])('is refused at %s', (place, bent) => {
    const evidence = { ...content.evidence, taps: { ...content.evidence.taps, ...bent } };
    expect(placesOf(readEntry(frame('taps', { ...content, evidence })))).toEqual([place]);
  });

  test('a rhythm has one of the words of conventions 5, and no arrhythmia is named', () => {
    for (const rhythm of [
      'regular',
      'regular-with-breathing',
      'occasionally-irregular',
      'regularly-irregular',
      'irregularly-irregular',
      'undecided',
    ]) {
      expect(readEntry(frame('taps', { ...content, value: { ...content.value, rhythm } })).ok).toBe(true);
    }
    const named = { ...content.value, rhythm: 'atrial-fibrillation' };
    expect(placesOf(readEntry(frame('taps', { ...content, value: named })))).toEqual([
      '/content/value/rhythm',
    ]);
  });
});
