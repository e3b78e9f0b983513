import { expect, test } from 'vitest';
import { NEVER_FACTS } from '../cuff/facts.js';
import { DEFAULT_CUFF_RULES } from '../cuff/rules.js';
import { DEFAULT_RUN_RULES } from '../deflation/rules.js';
import { type Override, overrideFields } from './override.js';
import { listPresets, presetProtocol } from './presetProtocol.js';
import type { Presets, Protocol } from './protocol.js';
import { cuffRules, runRules } from './rules.js';

function preset(chosen: Partial<Presets> = {}): Protocol {
  const found = presetProtocol(chosen);
  if (!found.ok) throw new Error(JSON.stringify(found.refusals));
  return found.value;
}

function refused(...overrides: Override[]): string[] {
  const changed = overrideFields(preset(), overrides);
  return changed.ok ? [] : changed.refusals.map(({ field, code }) => `${field} ${code}`);
}

test('without a protocol, and under the first presets, a run and a cuff go by the defaults', () => {
  for (const protocol of [null, preset()]) {
    expect(runRules(protocol)).toEqual(DEFAULT_RUN_RULES);
    expect(cuffRules(protocol)).toEqual(DEFAULT_CUFF_RULES);
  }
});

// Bedside handbook 3.5: 10 (one learning page), 20 (a journal's table), 30 (teaching pages).
test.each([
  ['margin-thirty', 30, 20],
  ['margin-twenty', 20, 20],
  ['margin-ten', 10, 10],
])('%s pumps %d above, and under %d is small', (inflation, marginMmHg, smallMarginMmHg) => {
  expect(runRules(preset({ inflation }))).toEqual({
    ...DEFAULT_RUN_RULES,
    inflation: { ...DEFAULT_RUN_RULES.inflation, marginMmHg, smallMarginMmHg },
  });
});

// Bedside handbook 3.6 (Korean guideline 2013: per heart beat for all) and 3.9 (survey protocols: next mark above).
test.each([
  ['two-to-three-a-second', 'slow-or-irregular', 'nearest'],
  ['two-a-beat', 'always', 'nearest'],
  ['mark-above', 'slow-or-irregular', 'mark-above'],
])('%s judges the drop of a beat %s and reads %s', (deflation, perBeatWhen, gaugeReading) => {
  expect(runRules(preset({ deflation }))).toEqual({
    ...DEFAULT_RUN_RULES,
    deflation: { ...DEFAULT_RUN_RULES.deflation, perBeatWhen, gaugeReading },
  });
});

test('each cuff scheme of the handbook (3.2) can be chosen, in its order', () => {
  const ids = listPresets()
    .filter(({ section }) => section === 'cuff')
    .map(({ id }) => id);
  expect(ids).toEqual(['aha-2005', 'uk-arm-bands', 'fourth-report-2004']);
  for (const cuff of ids) expect(cuffRules(preset({ cuff })).scheme).toBe(cuff);
});

test.each<[string, string, unknown, string[]]>([
  // Bedside handbook 3.5: the margin is a setting, default 30, allowed 10 to 40 (common practice, no source).
  ['inflation', 'marginMmHg', 9, ['value out-of-range']],
  ['inflation', 'marginMmHg', 20, []],
  ['inflation', 'marginMmHg', 40, []],
  ['inflation', 'marginMmHg', 41, ['value out-of-range']],
  ['inflation', 'smallMarginMmHg', 30, []],
  ['inflation', 'smallMarginMmHg', 31, ['value contradicts']],
  ['inflation', 'waitAfterEstimateSeconds', 0, []],
  ['inflation', 'waitAfterEstimateSeconds', -1, ['value out-of-range']],
  ['deflation', 'slowestMmHgPerSecond', 3, []],
  ['deflation', 'slowestMmHgPerSecond', 3.1, ['value contradicts']],
  ['deflation', 'perBeatWhen', 'never', []],
  ['deflation', 'perBeatWhen', 'sometimes', ['value unknown-id']],
  ['deflation', 'gaugeReading', 'mark-below', ['value unknown-id']],
  ['deflation', 'gaugeStepMmHg', 10, []],
  ['deflation', 'gaugeStepMmHg', 10.1, ['value out-of-range']],
  ['deflation', 'gaugeStepMmHg', 0, ['value out-of-range']],
  ['deflation', 'highestSystolic', 301, ['value out-of-range']],
  ['cuff', 'scheme', 'uk-arm-bands', []],
  ['cuff', 'scheme', 'by-eye', ['value unknown-id']],
  ['cuff', 'preferOtherFor', [], []],
  ['cuff', 'neverFor', [...NEVER_FACTS, 'lymphoedema'], []],
  ['cuff', 'neverFor', [...NEVER_FACTS, 'tattoo'], ['value/5 unknown-id']],
])('%s %s set to %j is refused as %j', (section, key, value, places) => {
  const at = `/sections/${section}/${key}`;
  expect(refused({ section, key, value })).toEqual(places.map((place) => `${at}/${place}`));
});

// Bedside handbook 3.15: fistula, graft, shunt and drip cannot be overridden.
test.each(NEVER_FACTS)('no place can free an arm with: %s', (fact) => {
  const value = NEVER_FACTS.filter((one) => one !== fact);
  expect(refused({ section: 'cuff', key: 'neverFor', value })).toEqual([
    '/sections/cuff/neverFor/value contradicts',
  ]);
});

test('a local value is what a run goes by', () => {
  const changed = overrideFields(preset(), [
    { section: 'deflation', key: 'fastestMmHgPerSecond', value: '4' },
  ]);
  expect(changed.ok && runRules(changed.value).deflation.fastestMmHgPerSecond).toBe(4);
});
