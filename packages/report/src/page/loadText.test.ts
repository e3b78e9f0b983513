import { presetProtocol } from '@evenfall/clinical';
import { loadWords } from '@evenfall/words';
import { expect, test } from 'vitest';
import { ambulatoryRules } from '../../../clinical/src/protocol/rules.js';
import { loadText, periodLoadText, sidedText } from './loadText.js';

const protocol = presetProtocol({ ambulatory: 'esc-2024' });
if (!protocol.ok) throw new Error('esc-2024');
const rules = ambulatoryRules(protocol.value);
const BOTH = { systolic: 60, diastolic: 60 };

// Out-of-office handbook 8 (135/85 by day, 120/70 by night) and 11: the combined load of A1 in 19 is 60 % and 60 %.
test.each([
  ['en', 'systolic 60 %, diastolic 60 %', '(135/85 by day, 120/70 by night), not that of 24 hours'],
  ['es', 'sistólica 60 %, diastólica 60 %', '(135/85 de día, 120/70 de noche), no en el de 24 horas'],
] as const)('the load of 24 hours says what limits it is over: %s', async (language, load, limits) => {
  const text = loadText(BOTH, rules, await loadWords(language));
  expect(text).toContain(load);
  expect(text).toContain(limits);
});

test('half a load is said as half, with a dash for the limit that is not there; none is not said', async () => {
  const words = await loadWords('en');
  const text = loadText({ systolic: 60, diastolic: null }, { ...rules, nightDiastolic: null }, words);
  expect(text).toContain('systolic 60 % of readings');
  expect(text).toContain('120/- by night');
  expect(loadText({ systolic: null, diastolic: null }, rules, words)).toBeNull();
});

// Out-of-office handbook 8.1 (the early proposals say over 140/90 by day) and 11: whether from or over is printed, for it changes the answer.
test('a load says whether its limit is of it: from it, over it, or each number by its sign', async () => {
  const [en, es] = [await loadWords('en'), await loadWords('es')];
  const early = presetProtocol({ ambulatory: 'early-proposals-over-24-hours' });
  if (!early.ok) throw new Error('early');
  const over = ambulatoryRules(early.value);
  const load = { percent: { systolic: 31, diastolic: 22 } };
  expect(periodLoadText('day', load, rules, en)).toContain('of readings at or above 135/85');
  expect(periodLoadText('day', load, over, en)).toContain('of readings over 140/90');
  expect(periodLoadText('night', load, over, es)).toContain('de las lecturas por encima de 125/75');
  expect(loadText(BOTH, over, en)).toContain('each over the limit of its own period (140/90 by day');
  const mixed = { ...over, dayDiastolic: rules.dayDiastolic };
  expect(periodLoadText('day', load, mixed, en)).toContain('of readings past > 140/≥ 85');
  expect(loadText(BOTH, mixed, es)).toContain('más allá del límite de su propio período (> 140/≥ 85 de día');
  expect(periodLoadText('day', null, rules, en)).toBeNull();
  expect(sidedText({ comparison: '>', limit: 140 }, en)).toBe('> 140');
});
