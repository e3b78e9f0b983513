import { categoryRules, listPresets, readingsRules } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import { choiceOf, guidelines, NOTHING_CHOSEN_YET, protocolOf, withGuideline } from './protocolForm.js';

const made = (...of: Parameters<typeof protocolOf>) => {
  const read = protocolOf(...of);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return read.value;
};

// Conventions 1: a guideline has one id everywhere.
test('one guideline sets every section that has a preset of it, and leaves the others', () => {
  expect(guidelines()).toContain('esc-2024');
  const chosen = withGuideline({ presets: { count: 'full-minute' }, own: {} }, 'esc-2024');
  const protocol = made(chosen);
  expect(protocol.presets).toMatchObject({
    count: 'full-minute',
    readings: 'esc-2024',
    category: 'esc-2024',
  });
  expect(categoryRules(protocol).adultScheme).toBe('esc-2024');
  expect(readingsRules(protocol).rule).toBe('esc-2024');
});

test('every guideline that is offered gives a protocol', () => {
  for (const guideline of guidelines()) {
    const { presets } = made(withGuideline(NOTHING_CHOSEN_YET, guideline));
    const sections = listPresets().filter(({ id }) => id === guideline);
    expect(sections.length).toBeGreaterThan(1);
    for (const { section } of sections) expect(presets[section]).toBe(guideline);
  }
});

test('a value of the place wins and the published one stays beside it; a bad one is refused at its field', () => {
  const own = { 'readings/gapSeconds': '90', 'round/palpateFirst': 'false' };
  const protocol = made({ presets: {}, own });
  expect(protocol.sections.readings?.gapSeconds).toMatchObject({
    value: 90,
    source: 'local',
    replaces: { value: 60 },
  });
  expect(choiceOf(protocol).own).toEqual(own);
  expect(made(choiceOf(protocol))).toEqual(protocol);
  expect(protocolOf({ presets: {}, own: { 'readings/gapSeconds': 'soon' } })).toMatchObject({
    ok: false,
    refusals: [{ field: '/sections/readings/gapSeconds/value', code: 'not-a-number' }],
  });
});
