import { presetProtocol } from '@evenfall/clinical';
import { loadWords } from '@evenfall/words';
import { expect, test } from 'vitest';
import { ambulatoryRules } from '../../../clinical/src/protocol/rules.js';
import { loadText } from './loadText.js';

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
