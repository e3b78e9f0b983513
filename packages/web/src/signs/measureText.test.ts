import { parseSign } from '@evenfall/clinical';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { measureText } from './measureText.js';

const words = wordsFor('en-GB');
const OXYGEN = { of: 'oxygen-saturation', percent: 91, onOxygen: true };
const GLASGOW = { of: 'consciousness', level: 'voice' };

// What stands beside each number: bedside handbook 4.1 to 4.4; the Glasgow line as in 4.3.
test.each([
  [{ of: 'temperature', celsius: 38, site: 'tympanic' }, '38.0 °C, in the ear'],
  [{ of: 'temperature', celsius: 38.05, site: 'oral' }, '38.1 °C, in the mouth'],
  [{ of: 'oxygen-saturation', percent: 97, onOxygen: false }, '97 % on air'],
  [OXYGEN, '91 % on oxygen'],
  [{ ...OXYGEN, device: 'nasal cannula', litresPerMinute: 2 }, '91 % on oxygen, nasal cannula, 2 L/min'],
  [{ ...OXYGEN, oxygenPercent: 28 }, '91 % on oxygen, 28 % oxygen'],
  [{ of: 'pain', tool: 'numeric', score: 0 }, '0 of 10'],
  [{ of: 'pain', tool: 'visual-analogue', score: 4.7 }, '47 mm of 100'],
  [{ of: 'pain', tool: 'verbal', word: 'none' }, 'no pain'],
  [{ of: 'consciousness', level: 'alert' }, 'alert'],
  [{ ...GLASGOW, glasgow: { eyes: 4, verbal: 5, motor: 6 } }, 'answers to voice, E4 V5 M6 = 15'],
  [{ ...GLASGOW, glasgow: { eyes: 4, verbal: 'not-testable', motor: 6 } }, 'answers to voice, E4 VNT M6'],
  [{ of: 'weight', kg: 3.42, how: 'measured' }, '3.42 kg, measured'],
  [{ of: 'height', cm: 168, how: 'stated' }, '168 cm, stated'],
  [{ of: 'height', cm: 52.5, how: 'measured', lying: true }, '52.5 cm lying, measured'],
])('%j reads %s', (input, text) => {
  const parsed = parseSign(input);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.refusals));
  expect(measureText(parsed.value, words)).toBe(text);
});
