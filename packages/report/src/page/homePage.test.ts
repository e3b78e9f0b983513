import { homeResult, homeRules, NOTHING_BY_HAND, presetProtocol } from '@evenfall/clinical';
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
  const page = homePage({ readings: H1, result, rules, ...said }, words);
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
    const { blocks } = homePage({ readings, result, rules, ...said }, words);
    return blocks.flatMap((block) => (block.kind === 'lines' ? block.lines : [])).join(' ');
  };
  expect(cautions(H1)).not.toContain('wrist');
  const wrist = H1.map((one) => (one.index === 9 ? { ...one, site: 'wrist' as const } : one));
  expect(cautions(wrist)).toContain(
    'A wrist below the heart reads too high, above it too low: by about 0.8 mmHg',
  );
});
