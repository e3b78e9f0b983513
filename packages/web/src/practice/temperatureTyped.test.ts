import { BLANK } from '@evenfall/physiology';
import { temperatureRow } from '@evenfall/practice';
import { USUAL_MANNER, wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { temperatureTyped } from './temperatureTyped.js';

test.each([
  ['39.4', 39.4],
  ['39,4', 39.4],
  [' 37 ', 37],
  ['', null],
  ['394', null],
  ['24.9', null],
  ['45.1', null],
  ['39.42', null],
  ['102.9', null],
  ['warm', null],
])('%j typed is %s', (text, celsius) => expect(temperatureTyped(text, USUAL_MANNER)).toBe(celsius));

const FAHRENHEIT = { ...USUAL_MANNER, temperature: '[degF]' } as const;

// UCUM: [degF] is 5/9 K from 459.67: 98.6 °F is 37 °C, 77 °F 25 °C, 113 °F 45 °C.
test.each([
  ['98.6', 37],
  ['98,6', 37],
  ['77', 25],
  ['113', 45],
  ['76.9', null],
  ['113.1', null],
  ['39.4', null],
])('%j typed in °F is %s °C', (text, celsius) => {
  const got = temperatureTyped(text, FAHRENHEIT);
  if (celsius === null) expect(got).toBeNull();
  else expect(got).toBeCloseTo(celsius, 9);
});

test('a thermometer that is copied as it shows, in either unit, is right at every tenth, and a tenth beside it is wrong', () => {
  for (const manner of [USUAL_MANNER, FAHRENHEIT]) {
    const { say } = wordsFor('en-GB', manner);
    for (let tenth = 350; tenth <= 420; tenth++) {
      const scenario = { ...BLANK, temperatureC: tenth / 10 };
      const [shown = ''] = say.temperature(scenario.temperatureC).split(' ');
      const temperatureC = temperatureTyped(shown, manner);
      const entered = { temperatureC } as Parameters<typeof temperatureRow>[0]['entered'];
      expect(temperatureRow({ entered, scenario })?.isAccepted, shown).toBe(true);
      // One tenth of the unit that is shown, either way, is another number than the display had.
      for (const off of [-0.1, 0.1]) {
        const wrong = (Number(shown) + off).toFixed(1);
        const typed = { temperatureC: temperatureTyped(wrong, manner) } as typeof entered;
        expect(temperatureRow({ entered: typed, scenario })?.isAccepted, `${wrong} for ${shown}`).toBe(false);
      }
    }
  }
});
