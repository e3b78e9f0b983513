import { expect, test } from 'vitest';
import { DEFAULT_SCORE_RULES } from '../score/rules.js';
import { overrideFields } from './override.js';
import { presetProtocol } from './presetProtocol.js';
import type { Presets, Protocol } from './protocol.js';
import { scoreRules } from './rules.js';

function preset(chosen: Partial<Presets> = {}): Protocol {
  const found = presetProtocol(chosen);
  if (!found.ok) throw new Error(JSON.stringify(found.refusals));
  return found.value;
}

test('no score is shown before a place has chosen; a saturation is on scale 1', () => {
  // Bedside handbook 7.5: the local protocol wins for the scoring system and the oxygen scale.
  for (const protocol of [null, preset()]) {
    const { oxygenScale, ...shown } = scoreRules(protocol);
    expect(oxygenScale).toBe(1);
    expect(Object.values(shown)).not.toContain(true);
  }
});

test('the early-warning score alone, with its source', () => {
  const protocol = preset({ score: 'adult-early-warning' });
  expect(scoreRules(protocol)).toEqual({ ...DEFAULT_SCORE_RULES, earlyWarning: true });
  expect(protocol.sections.score?.earlyWarning).toMatchObject({
    source: expect.stringMatching(/Royal College of Physicians/),
    sure: 'second-hand',
  });
});

test.each([
  ['oxygenScale', 2, []],
  ['oxygenScale', 3, ['/sections/score/oxygenScale/value unknown-id']],
  ['sepsisScreen', true, []],
  ['sepsisScreen', 'yes', ['/sections/score/sepsisScreen/value unknown-id']],
] as const)('a place that sets %s to %j is refused %j', (key, value, refusals) => {
  const changed = overrideFields(preset(), [{ section: 'score', key, value }]);
  expect(changed.ok ? [] : changed.refusals.map(({ field, code }) => `${field} ${code}`)).toEqual(refusals);
  if (changed.ok) expect(scoreRules(changed.value)).toEqual({ ...DEFAULT_SCORE_RULES, [key]: value });
});
