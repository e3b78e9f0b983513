import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import type { PlaceProtocols } from '../store/known.js';
import { guidelines } from './protocolForm.js';
import { choiceText, valueText, versionText } from './protocolText.js';

const words = wordsFor('en-GB');
const HASHES = ['a', 'b'].map((one) => one.repeat(64)) as [string, string];
const made = (version: string | null, day: number, agent: string) => ({
  entry: `entry-${day}`,
  version,
  agent,
  at: `2026-11-${day}T10:02:00.000+01:00`,
  recordedAt: `2026-11-${day}T09:02:00.000Z`,
});
const place: PlaceProtocols = {
  protocols: [],
  agents: [{ id: 'wren', name: 'Wren (invented)' }],
  choices: [
    made(HASHES[0], 20, 'wren'),
    made(HASHES[1], 21, 'nobody'),
    made(null, 22, 'wren'),
    made(HASHES[0], 23, 'wren'),
  ],
};

// A round taken under version 3 still shows version 3.
test('a version is named by its number, the day of its first use, who put it in force, and the start of its hash', () => {
  expect(versionText(HASHES[0], place, words)).toBe(
    'version 1, of 20 Nov 2026, by Wren (invented) (aaaaaaaaaaaa)',
  );
  expect(versionText(HASHES[1], place, words)).toBe(
    'version 2, of 21 Nov 2026, by somebody not known here (bbbbbbbbbbbb)',
  );
  expect(versionText('c'.repeat(64), place, words)).toBe('version cccccccccccc, kept and never in force');
  expect(versionText(HASHES[0], null, words)).toBe('protocol version aaaaaaaaaaaa');
});

test('going without a protocol is a choice that is told as one', () => {
  expect(place.choices.map((choice) => choiceText(choice, place, words)).slice(1, 3)).toEqual([
    '21 Nov 2026, 10:02: version 2, by somebody not known here',
    '22 Nov 2026, 10:02: no protocol, by Wren (invented)',
  ]);
});

test('a value is said with its unit, a limit with its side, and a word by its title', () => {
  expect(valueText('inflation/marginMmHg', 25, 'mmHg', words)).toBe('25 mmHg');
  expect(valueText('arms/limitMmHg', { comparison: '>', limit: 10 }, 'mmHg', words)).toBe('> 10 mmHg');
  expect(valueText('readings/difference', null, 'mmHg', words)).toBe('none');
  expect(valueText('round/palpateFirst', false, null, words)).toBe('no');
  expect(valueText('readings/rule', 'aha-2005', null, words)).toMatch(/^AHA 2005/);
  expect(valueText('actNow/switchedOff', ['very-slow-pulse'], null, words)).toBe('Very slow pulse');
});

test('every guideline that is offered has a title, AHA 2005 too', () => {
  for (const id of guidelines()) expect(words.title('guideline', id), id).not.toBe(id);
});
