import { expect, test } from 'vitest';
import { actNow } from '../round/actNow.js';
import { DEFAULT_ACT_NOW_ORIGINS, DEFAULT_ACT_NOW_RULES } from '../round/actNowRules.js';
import { DEFAULT_ARMS_RULES } from '../round/armsRules.js';
import { AVERAGING_RULE_IDS, type AveragingRuleId } from '../round/averagingRules.js';
import { NOTHING_KNOWN } from '../round/knownSigns.js';
import { DEFAULT_READINGS_RULES, readingsRulesOf } from '../round/readingsRules.js';
import { DEFAULT_RECHECK_RULES } from '../round/recheckRules.js';
import { DEFAULT_SIGNING_RULES } from '../round/signingRules.js';
import { type Override, overrideFields } from './override.js';
import { listPresets, presetProtocol } from './presetProtocol.js';
import type { Presets, Protocol } from './protocol.js';
import { actNowOrigins, actNowRules, armsRules, readingsRules, recheckRules, signingRules } from './rules.js';

function preset(chosen: Partial<Presets> = {}): Protocol {
  const found = presetProtocol(chosen);
  if (!found.ok) throw new Error(JSON.stringify(found.refusals));
  return found.value;
}

function decided(protocol: Protocol, ...overrides: Override[]): Protocol {
  const changed = overrideFields(protocol, overrides);
  if (!changed.ok) throw new Error(JSON.stringify(changed.refusals));
  return changed.value;
}

const idsOf = (name: string) =>
  listPresets()
    .filter(({ section }) => section === name)
    .map(({ id }) => id);

test('without a protocol, and under the first presets, a round goes by the defaults', () => {
  for (const protocol of [null, preset()]) {
    // With none chosen they are the general rule, and no guideline of the place.
    const isGeneral = protocol === null ? { isGeneral: true } : {};
    expect(readingsRules(protocol)).toEqual({ ...DEFAULT_READINGS_RULES, ...isGeneral });
    expect(armsRules(protocol)).toEqual(DEFAULT_ARMS_RULES);
    expect(recheckRules(protocol)).toEqual(DEFAULT_RECHECK_RULES);
    expect(actNowRules(protocol)).toEqual(DEFAULT_ACT_NOW_RULES);
    expect(actNowOrigins(protocol)).toEqual(DEFAULT_ACT_NOW_ORIGINS);
    expect(signingRules(protocol)).toEqual(DEFAULT_SIGNING_RULES);
  }
});

test('a learner’s round is countersigned and a class leaves nothing, unless the place decides otherwise', () => {
  // DESIGN section 2, principle 6; bedside handbook 7.5 (practice until signed).
  expect(signingRules(preset())).toEqual({ countersignLearners: true, deleteClassAtEnd: true });
  const kept = decided(preset(), { section: 'signing', key: 'deleteClassAtEnd', value: false });
  expect(signingRules(kept)).toEqual({ countersignLearners: true, deleteClassAtEnd: false });
});

test('a guideline has one id: its preset of readings is its rule of averaging', () => {
  expect(idsOf('readings')).toEqual(AVERAGING_RULE_IDS);
  for (const id of AVERAGING_RULE_IDS) {
    expect(readingsRules(preset({ readings: id }))).toEqual(readingsRulesOf(id));
  }
});

// Bedside handbook 3.10 and 3.11: how far two readings may be apart, and the side of the number.
test.each<[AveragingRuleId, string | null]>([
  ['esc-2024', '> 10'],
  ['esc-esh-2018', '> 10'],
  ['esh-2023', '>= 10'],
  ['ish-2020', null],
  ['acc-aha-2017', null],
  ['acc-aha-2025', null],
  ['aha-2005', '> 5'],
  ['two-within-10', '> 10'],
  ['jsh-2019', '>= 5'],
  ['nice-ng136', '> 10'],
  ['hypertension-canada', null],
  ['korea-2013', null],
  ['aap-2017', null],
  ['who-2021', null],
])('%s asks for another at a difference of %s', (id, expected) => {
  const { difference, gapSeconds, stopAtReadings } = readingsRules(preset({ readings: id }));
  expect(difference === null ? null : `${difference.comparison} ${difference.limit}`).toBe(expected);
  expect([gapSeconds, stopAtReadings]).toEqual([60, 5]);
});

// Bedside handbook 3.12.
test.each([
  ['nice-ng136', 15],
  ['ish-2020', 10],
  ['esc-2024', 10],
  ['esc-esh-2018', 10],
  ['esh-2023', 10],
])('by %s the arms differ over %d', (arms, limit) => {
  expect(armsRules(preset({ arms }))).toEqual({
    limitMmHg: { comparison: '>', limit },
    pairsNeeded: 2,
    lookFurtherMmHg: 20,
  });
});

// Bedside handbook 3.16.
test.each([
  ['nice-ng136', '>=', 180, 120],
  ['acc-aha-2017', '>', 180, 120],
  ['acc-aha-2025', '>', 180, 120],
  ['esh-2023', '>=', 180, 110],
])('by %s a pressure is severe %s %d or %d', (id, comparison, systolic, diastolic) => {
  const rules = actNowRules(preset({ actNow: id }));
  expect(rules.severeSystolic).toEqual({ comparison, limit: systolic });
  expect(rules.severeDiastolic).toEqual({ comparison, limit: diastolic });
  expect(rules.switchedOff).toEqual([]);
});

test('what a place sets itself is its own: the alert says so and asks for no confirmation', () => {
  const local = decided(
    preset(),
    { section: 'actNow', key: 'pregnancySystolic', value: 155 },
    { section: 'actNow', key: 'pregnancyDiastolic', value: 105 },
  );
  const known = { ...NOTHING_KNOWN, systolic: 156, diastolic: 100, pregnant: true };
  expect(actNow(known, actNowRules(local), actNowOrigins(local))).toEqual([
    {
      condition: 'severe-in-pregnancy',
      figures: { systolic: 156, diastolic: 100 },
      source: 'local',
      sure: 'decision',
      confirmLocally: false,
    },
  ]);
  expect(actNow(known, actNowRules(null))).toEqual([]);
});

test('a condition that is switched off stays visible in the protocol, and the others stay on', () => {
  const quiet = decided(preset(), { section: 'actNow', key: 'switchedOff', value: ['low-oxygen'] });
  expect(quiet.sections.actNow?.switchedOff).toMatchObject({ value: ['low-oxygen'], source: 'local' });
  const known = { ...NOTHING_KNOWN, percentOxygen: 80, pulsePerMinute: 30 };
  expect(actNow(known, actNowRules(quiet)).map(({ condition }) => condition)).toEqual(['very-slow-pulse']);
});

test('a protocol of an older schema alerts by the defaults', () => {
  const { sections, presets } = preset();
  const older: Protocol = {
    schema: 2,
    presets: { count: presets.count },
    sections: { count: sections.count },
  };
  expect(actNowRules(older)).toEqual(DEFAULT_ACT_NOW_RULES);
  expect(actNowOrigins(older)).toEqual(DEFAULT_ACT_NOW_ORIGINS);
});

test.each<[string, string, unknown, string[]]>([
  ['readings', 'rule', 'esc', ['/sections/readings/rule/value unknown-id']],
  [
    'readings',
    'difference',
    { comparison: '<', limit: 10 },
    ['/sections/readings/difference/value/comparison unknown-id'],
  ],
  ['readings', 'stopAtReadings', 2, ['/sections/readings/stopAtReadings/value out-of-range']],
  ['readings', 'irregularReadings', 6, ['/sections/readings/irregularReadings/value contradicts']],
  ['readings', 'irregularReadings', 5, []],
  ['arms', 'limitMmHg', null, ['/sections/arms/limitMmHg/value missing']],
  ['recheck', 'abnormalSoonSeconds', 121, ['/sections/recheck/abnormalSoonSeconds/value contradicts']],
  ['recheck', 'abnormalSoonSeconds', 120, []],
  [
    'recheck',
    'abnormalLaterWithinSeconds',
    599,
    ['/sections/recheck/abnormalLaterSeconds/value contradicts'],
  ],
  ['recheck', 'pregnancyWithinSeconds', 901, ['/sections/recheck/pregnancyWithinSeconds/value out-of-range']],
  ['actNow', 'mediumTotal', 7, ['/sections/actNow/mediumTotal/value contradicts']],
  ['actNow', 'mediumTotal', 6, []],
  [
    'actNow',
    'severeSystolic',
    { comparison: '>', limit: 201 },
    ['/sections/actNow/severeSystolic/value/limit out-of-range'],
  ],
  ['actNow', 'switchedOff', ['everything'], ['/sections/actNow/switchedOff/value/0 unknown-id']],
  ['signing', 'countersignLearners', 'yes', ['/sections/signing/countersignLearners/value unknown-id']],
])('%s/%s %j', (section, key, value, expected) => {
  const changed = overrideFields(preset(), [{ section, key, value }]);
  expect(changed.ok ? [] : changed.refusals.map(({ field, code }) => `${field} ${code}`)).toEqual(expected);
});

test('two that do not differ need a difference to be held against', () => {
  const none = { section: 'readings', key: 'difference', value: null };
  expect(overrideFields(preset({ readings: 'jsh-2019' }), [none])).toMatchObject({
    ok: false,
    refusals: [{ field: '/sections/readings/difference/value', code: 'contradicts' }],
  });
  expect(readingsRules(decided(preset(), none)).difference).toBeNull();
});
