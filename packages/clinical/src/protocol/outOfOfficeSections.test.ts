import { expect, test } from 'vitest';
import { homeResult, NOTHING_BY_HAND } from '../outOfOffice/homeResult.js';
import { H1 } from '../outOfOffice/testing.js';
import { overrideFields } from './override.js';
import { parseProtocol } from './parseProtocol.js';
import { listPresets, presetProtocol } from './presetProtocol.js';
import type { Presets, Protocol } from './protocol.js';
import { ambulatoryRules, homeRules } from './rules.js';

function preset(chosen: Partial<Presets> = {}): Protocol {
  const found = presetProtocol(chosen);
  if (!found.ok) throw new Error(JSON.stringify(found.refusals));
  return found.value;
}

const idsOf = (section: string) =>
  listPresets()
    .filter((one) => one.section === section)
    .map(({ id }) => id);

test('without a choice there are means and no limit', () => {
  for (const protocol of [null, preset()]) {
    expect(homeRules(protocol)).toMatchObject({ highSystolic: null, highDiastolic: null, scheme: 'none' });
    expect(ambulatoryRules(protocol)).toMatchObject({ wholeSystolic: null, daySystolic: null });
    const found = homeResult(H1, NOTHING_BY_HAND, homeRules(protocol));
    expect(found).toMatchObject({ high: null, category: null, why: [{ code: 'no-limit' }] });
  }
});

// Out-of-office handbook 2 and 8: days left out, least days, least readings, the limits at home.
test.each([
  ['nice-ng136', 1, 4, 12, 135, 85],
  ['hypertension-canada', 1, null, 12, 135, 85],
  ['aha-ama-2020', 0, 3, 12, 130, 80],
  ['acc-aha-2017', 0, null, 12, 130, 80],
  ['acc-aha-2025', 0, null, 12, 130, 80],
  ['esc-2024', 0, 3, 12, 135, 85],
  ['esh-2023', 1, 3, 12, 135, 85],
  ['ish-2020', 1, 3, 8, 135, 85],
  ['jsh-2019', 0, 5, null, 135, 85],
  ['korea-2018', 0, 5, null, null, null],
  ['australia-2016', 1, 5, 12, 135, 85],
  ['family-practice-table', 2, 5, 12, null, null],
  ['france-rule-of-three', 0, 3, 12, 135, 85],
  ['taiwan-2022', 1, null, 12, 130, 80],
  ['early-proposals-at-home', 0, null, 12, 140, 90],
])('%s at home', (id, droppedDays, days, readings, systolic, diastolic) => {
  const rules = homeRules(preset({ home: id }));
  expect([
    rules.droppedDays,
    rules.leastDays?.limit ?? null,
    rules.leastReadings?.limit ?? null,
    rules.highSystolic?.limit ?? null,
    rules.highDiastolic?.limit ?? null,
  ]).toEqual([droppedDays, days, readings, systolic, diastolic]);
});

test('every rule set for home is in that table, in its order', () => {
  expect(idsOf('home')).toEqual([
    'means-alone-at-home',
    ...['nice-ng136', 'hypertension-canada', 'aha-ama-2020', 'acc-aha-2017', 'acc-aha-2025', 'esc-2024'],
    ...['esh-2023', 'ish-2020', 'jsh-2019', 'korea-2018', 'australia-2016', 'family-practice-table'],
    ...['france-rule-of-three', 'taiwan-2022', 'early-proposals-at-home'],
  ]);
});

// H1 of the handbook: the same diary is high under one rule set and not under another.
test.each([
  ['nice-ng136', 136.5833, 'stage-1'],
  ['ish-2020', 136.5833, 'high'],
  ['esc-2024', 138.1071, 'hypertension'],
  ['acc-aha-2025', 138.1071, 'stage-2'],
  ['taiwan-2022', 136.5833, 'high'],
  ['jsh-2019', 138.1071, 'grade-1'],
  ['korea-2018', 138.1071, null],
])('H1 by %s: %d, %s', (id, systolic, category) => {
  const found = homeResult(H1, NOTHING_BY_HAND, homeRules(preset({ home: id })));
  expect(found.mean.systolic).toBeCloseTo(systolic, 4);
  expect(found).toMatchObject({ valid: true, category });
});

/** The night that goes with each day, by the minute at which the day begins: wide, of ESH 2013, of IDACO. */
const NIGHTS: Readonly<Record<number, readonly [number, number]>> = {
  480: [1320, 480],
  540: [60, 360],
  600: [0, 360],
};

// Out-of-office handbook 5, 7 and 8.
test.each([
  ['nice-ng136', null, 14, null, null, 135, null, 480, 1320],
  ['hypertension-canada', 70, 20, 7, 130, 135, null, 480, 1320],
  ['acc-aha-2017', 70, 20, 7, 125, 130, 110, 540, 1260],
  ['acc-aha-2025', 70, 20, 7, 125, 130, 110, 540, 1260],
  ['esc-2024', 70, 20, 7, 130, 135, 120, 540, 1260],
  ['esh-2023', 70, 20, 7, 130, 135, 120, 540, 1260],
  ['ish-2020', 70, 20, 7, 130, 135, 120, 540, 1260],
  ['jsh-2019', 70, 20, 7, 130, 135, 120, 540, 1260],
  ['australia-2016', 70, 20, 7, 130, 135, 120, 540, 1260],
  ['australia-clinic-equivalents', 70, 20, 7, 133, 136, 121, 540, 1260],
  ['taiwan-2022', 70, 20, 7, 130, 130, 110, 540, 1260],
  ['early-proposals-over-24-hours', 70, 20, 7, 135, 140, 125, 540, 1260],
  ['research-levels', null, 8, 4, 130, 135, 120, 600, 1200],
  ['research-levels-older', null, 10, 5, 130, 135, 120, 600, 1200],
])('%s over 24 hours', (id, percent, day, night, whole, awake, asleep, from, to) => {
  const rules = ambulatoryRules(preset({ ambulatory: id }));
  const limit = (one: { readonly limit: number } | null) => one?.limit ?? null;
  expect([limit(rules.leastPercent), limit(rules.leastDay), limit(rules.leastNight)]).toEqual([
    percent,
    day,
    night,
  ]);
  expect([limit(rules.wholeSystolic), limit(rules.daySystolic), limit(rules.nightSystolic)]).toEqual([
    whole,
    awake,
    asleep,
  ]);
  expect([rules.dayFrom, rules.dayTo]).toEqual([from, to]);
  expect([rules.nightFrom, rules.nightTo]).toEqual(NIGHTS[from]);
});

// Out-of-office handbook 8.1: the early proposals say "over", not "from"; what a row of limits leaves open is no word of its source.
test('limits of which nothing else is known: over or from as they say, and each field with how sure it is', () => {
  const early = preset({
    ambulatory: 'early-proposals-over-24-hours',
    home: 'early-proposals-at-home',
  });
  expect(ambulatoryRules(early)).toMatchObject({
    wholeDiastolic: { comparison: '>', limit: 85 },
    dayDiastolic: { comparison: '>', limit: 90 },
    nightDiastolic: { comparison: '>', limit: 75 },
  });
  expect(homeRules(early).highDiastolic).toEqual({ comparison: '>', limit: 90 });
  const { ambulatory } = preset({ ambulatory: 'taiwan-2022' }).sections;
  expect(ambulatory).toMatchObject({
    nightSystolic: { sure: 'memory-low' },
    nightDiastolic: { value: { comparison: '>=', limit: 65 }, sure: 'memory-low' },
    judged: { sure: 'decision' },
    leastDay: { sure: 'second-hand' },
  });
  expect(ambulatoryRules(preset({ ambulatory: 'australia-clinic-equivalents' }))).toMatchObject({
    wholeDiastolic: { limit: 84 },
    dayDiastolic: { limit: 87 },
    nightDiastolic: { limit: 76 },
  });
});

test('a place sets its own limit: the name follows it', () => {
  const changed = overrideFields(preset({ home: 'nice-ng136' }), [
    { section: 'home', key: 'highSystolic', value: { comparison: '>=', limit: 140 } },
  ]);
  if (!changed.ok) throw new Error(JSON.stringify(changed.refusals));
  const found = homeResult(H1, NOTHING_BY_HAND, homeRules(changed.value));
  expect(found).toMatchObject({ high: false, category: 'below-stage-1' });
  expect(changed.value.sections.home?.highSystolic).toMatchObject({
    source: 'local',
    replaces: { value: { limit: 135 } },
  });
});

// What a place takes for high decides. H1 (out-of-office handbook 19) comes to 136.5833 after its first day; here each systolic is 15 more.
test('no name for a high mean below a limit of the place that lies beyond the second name', () => {
  const high = H1.map((one) => ({ ...one, systolic: (one.systolic ?? 0) + 15, diastolic: 70 }));
  const changed = overrideFields(preset({ home: 'nice-ng136' }), [
    { section: 'home', key: 'highSystolic', value: { comparison: '>=', limit: 155 } },
  ]);
  if (!changed.ok) throw new Error(JSON.stringify(changed.refusals));
  const rules = homeRules(changed.value);
  const found = homeResult(high, NOTHING_BY_HAND, rules);
  expect(found.mean.systolic).toBeCloseTo(151.5833, 4);
  expect(found).toMatchObject({ high: false, category: 'below-stage-1' });
  // What was kept by the rule before is made again as it was.
  expect(homeResult(high, NOTHING_BY_HAND, rules, 'home-1')).toMatchObject({ category: 'stage-2' });
  const farther = high.map((one) => ({ ...one, systolic: one.systolic + 4 }));
  expect(homeResult(farther, NOTHING_BY_HAND, rules)).toMatchObject({ high: true, category: 'stage-2' });
});

test('a name without a limit is refused at the limit', () => {
  const changed = overrideFields(preset({ home: 'ish-2020' }), [
    { section: 'home', key: 'highSystolic', value: null },
  ]);
  expect(changed.ok ? [] : changed.refusals.map(({ field, expected }) => `${field} ${expected}`)).toEqual([
    '/sections/home/highSystolic/value limit-for-names',
  ]);
});

test('a protocol of schema 5 has neither section and is read as it was', () => {
  const { presets, sections, ...now } = preset();
  const { home: _h, ambulatory: _a, ...oldPresets } = presets;
  const { home: _hf, ambulatory: _af, ...oldSections } = sections;
  const kept = { ...now, schema: 5, presets: oldPresets, sections: oldSections };
  const parsed = parseProtocol(JSON.parse(JSON.stringify(kept)));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
  expect(parsed.value).toEqual(kept);
  expect(homeRules(parsed.value).scheme).toBe('none');
});

// Out-of-office handbook 5, the older rule of research: no three hours in a row empty. No other row says so.
test('the longest stretch without a reading is limited by the older rule of research alone', () => {
  const limits = idsOf('ambulatory').map(
    (id) => [id, ambulatoryRules(preset({ ambulatory: id })).longestEmptyHours] as const,
  );
  expect(limits.filter(([, limit]) => limit !== null)).toEqual([
    ['research-levels-older', { comparison: '>=', limit: 3 }],
  ]);
});

test('a protocol of schema 6 says nothing of that stretch: it is read, keeps its version and has no such limit', () => {
  const { sections, ...now } = preset({ ambulatory: 'research-levels' });
  const { longestEmptyHours, leastHours: _l, scheme: _s, ...then } = sections.ambulatory ?? ({} as never);
  expect(longestEmptyHours.value).toBeNull();
  const { averaged: _a, ...home } = sections.home ?? ({} as never);
  const kept = { ...now, schema: 6, sections: { ...sections, home, ambulatory: then } };
  const parsed = parseProtocol(JSON.parse(JSON.stringify(kept)));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
  expect(parsed.value).toEqual(kept);
  expect(ambulatoryRules(parsed.value)).toEqual(ambulatoryRules(preset({ ambulatory: 'research-levels' })));
  const early = parseProtocol({
    ...kept,
    sections: { ...sections, home, ambulatory: { ...then, longestEmptyHours } },
  });
  expect(early.ok ? [] : early.refusals.map(({ field, code }) => `${field} ${code}`)).toEqual([
    '/sections/ambulatory/longestEmptyHours unknown-field',
  ]);
});

// Until schema 8 the names went by the preset's id, and 24 hours were asked for by the id of Hypertension Canada alone.
test.each(idsOf('ambulatory'))(
  '%s of schema 7 is read as it was: its names and its hours went by its id',
  (id) => {
    const { sections, ...now } = preset({ ambulatory: id });
    const { leastHours: _l, scheme: _s, ...then } = sections.ambulatory ?? ({} as never);
    const { averaged: _a, ...home } = sections.home ?? ({} as never);
    const kept = { ...now, schema: 7, sections: { ...sections, home, ambulatory: then } };
    const parsed = parseProtocol(JSON.parse(JSON.stringify(kept)));
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
    expect(parsed.value).toEqual(kept);
    expect(ambulatoryRules(parsed.value)).toEqual(ambulatoryRules(preset({ ambulatory: id })));
  },
);

// Out-of-office handbook 3, point 7: sittings are never averaged first unless a rule set says so; none of section 2 does.
test.each(idsOf('home'))(
  '%s averages readings, and so does one of schema 8; a place may have sittings first',
  (id) => {
    const made = preset({ home: id });
    expect(homeRules(made).averaged).toBe('readings');
    const { averaged: _new, ...then } = made.sections.home ?? ({} as never);
    const kept = { ...made, schema: 8, sections: { ...made.sections, home: then } };
    const parsed = parseProtocol(JSON.parse(JSON.stringify(kept)));
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
    expect(parsed.value).toEqual(kept);
    expect(homeRules(parsed.value)).toEqual(homeRules(made));
    const local = overrideFields(made, [{ section: 'home', key: 'averaged', value: 'sittings' }]);
    if (!local.ok) throw new Error(JSON.stringify(local.refusals));
    expect(homeRules(local.value).averaged).toBe('sittings');
  },
);

// Out-of-office handbook 5 and 8.1: whose names each guideline has for a recording, and who asks for 24 hours.
test('names of a recording and the hours it is to last stand in the rules', () => {
  const of = (id: string) => {
    const { scheme, leastHours } = ambulatoryRules(preset({ ambulatory: id }));
    return `${id} ${scheme} ${leastHours?.limit ?? '-'}`;
  };
  expect(
    idsOf('ambulatory')
      .map(of)
      .filter((one) => !one.endsWith(' high-or-not -')),
  ).toEqual([
    'nice-ng136 nice-ng136 -',
    'hypertension-canada high-or-not 24',
    'acc-aha-2017 acc-aha-2017 -',
    'acc-aha-2025 acc-aha-2017 -',
    'esc-2024 esc-2024 -',
  ]);
});
