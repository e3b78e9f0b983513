import { homeAsked, homeResult, homeRules, NOTHING_BY_HAND, presetProtocol } from '@evenfall/clinical';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { H1 } from '../../../clinical/src/outOfOffice/testing.js';
import { homePage } from './homePage.js';

const words = wordsFor('en-GB');

function limitsOn(more: object) {
  const protocol = presetProtocol({ home: 'ish-2020' });
  if (!protocol.ok) throw new Error('ish-2020');
  const rules = { ...homeRules(protocol.value), ...more };
  const result = homeResult(H1, NOTHING_BY_HAND, rules);
  const header = { name: null, born: null, device: null, arm: null, medicines: null, zone: null, madeAt: '', program: '', isInvented: true }; // biome-ignore format: one thought
  const said = { header, ruleSet: null, actFirst: [], refused: [], beside: new Map(), settled: [], office: [], target: [], chances: null }; // biome-ignore format: one thought
  const page = homePage({ readings: H1, result, rules, asked: null, ...said }, words);
  const tables = page.blocks.flatMap((block) => (block.kind === 'tables' ? block.tables : []));
  return tables[0]?.rows.find(([name]) => name === 'Limit');
}

// Source of the limit: out-of-office handbook 8.1 (ISH 2020: 135/85). A place may leave out either.
test('a limit that a place does not have is a dash beside the other one, never a zero', () => {
  expect(limitsOn({})).toEqual(['Limit', '≥ 135', '≥ 85', '']);
  expect(limitsOn({ highDiastolic: null })).toEqual(['Limit', '≥ 135', '-', '']);
  expect(limitsOn({ highSystolic: null })).toEqual(['Limit', '-', '≥ 85', '']);
  expect(limitsOn({ highSystolic: null, highDiastolic: null })).toBeUndefined();
});

// Source: out-of-office handbook 4 (a wrist held low reads falsely high; 1.05/13.595*10 = 0.7723 mmHg for each cm).
test('readings of a wrist are marked, and what its height does to them is said', () => {
  const cautions = (readings: typeof H1) => {
    const protocol = presetProtocol({ home: 'ish-2020' });
    if (!protocol.ok) throw new Error('ish-2020');
    const rules = homeRules(protocol.value);
    const result = homeResult(readings, NOTHING_BY_HAND, rules);
    const header = { name: null, born: null, device: null, arm: null, medicines: null, zone: null, madeAt: '', program: '', isInvented: true }; // biome-ignore format: one thought
    const said = { header, ruleSet: null, actFirst: [], refused: [], beside: new Map(), settled: [], office: [], target: [], chances: null }; // biome-ignore format: one thought
    const { blocks } = homePage({ readings, result, rules, asked: null, ...said }, words);
    return blocks.flatMap((block) => (block.kind === 'lines' ? block.lines : [])).join(' ');
  };
  expect(cautions(H1)).not.toContain('wrist');
  const wrist = H1.map((one) => (one.index === 9 ? { ...one, site: 'wrist' as const } : one));
  expect(cautions(wrist)).toContain(
    'A wrist below the heart reads too high, above it too low: by about 0.8 mmHg',
  );
});

// Source: out-of-office handbook 2 (28 readings are asked for over seven days) and 3 (a blank is never a zero).
test('how many were asked for and which are blank stands beside how many are used', () => {
  const protocol = presetProtocol({ home: 'ish-2020' });
  if (!protocol.ok) throw new Error('ish-2020');
  const rules = homeRules(protocol.value);
  const quality = (readings: typeof H1) => {
    const result = homeResult(readings, NOTHING_BY_HAND, rules);
    const asked = homeAsked(readings, { readingsInSitting: 2, days: 7, from: null }, rules);
    const header = { name: null, born: null, device: null, arm: null, medicines: null, zone: null, madeAt: '', program: '', isInvented: true }; // biome-ignore format: one thought
    const said = { header, ruleSet: null, actFirst: [], refused: [], beside: new Map(), settled: [], office: [], target: [], chances: null }; // biome-ignore format: one thought
    const { blocks } = homePage({ readings, result, rules, asked, ...said }, words);
    return blocks.flatMap((block) => (block.kind === 'lines' ? block.lines : [])).join(' ');
  };
  expect(quality(H1)).not.toContain('asked for');
  // The day 0 of the week is 1 January 1970.
  expect(quality(H1.filter(({ index }) => index !== 11 && index !== 12))).toContain(
    '22 of 26 readings used, on 6 days; 4 left out, 0 could not be read. 26 of the 28 readings that were asked for; the evening of 3 Jan is blank.',
  );
  expect(quality(H1.filter(({ index }) => index !== 2 && (index <= 8 || index > 12)))).toContain(
    '23 of the 28 readings that were asked for; all of 3 Jan is blank; the morning of 1 Jan has 1 of 2.',
  );
});
