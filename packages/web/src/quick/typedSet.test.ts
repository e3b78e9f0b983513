import { NOTHING_CHOSEN } from '@evenfall/record';
import { describe, expect, test } from 'vitest';
import { setKey } from '../pressure/setKey.js';
import { readTypedSet, type SetMethod } from './typedSet.js';

const COUNTED = { windowSeconds: 30, clock: 'any', first: 1 } as const;
const read = (text: string, method: SetMethod = 'auscultation', windowSeconds = 30) =>
  readTypedSet(text, { method, counted: { ...COUNTED, windowSeconds } }, NOTHING_CHOSEN);
const wrong = (text: string, windowSeconds = 30) => {
  const { wrong: found } = read(text, 'auscultation', windowSeconds);
  return found === null ? null : [found.field, found.code];
};

// The trade's shorthand: bedside handbook 3.4, 3.7, 7.2; docs/conventions.md section 1.
describe('a set in the trade’s shorthand', () => {
  test('is a reading and the count behind its pulse', () => {
    expect(read('148/92 76').set).toMatchObject({
      method: 'auscultation',
      numbers: '148/92',
      run: {
        pulsePerMinute: 76,
        peak: null,
        moments: [
          { what: 'first sound', mmHg: 148, atSeconds: null },
          { what: 'last sound', mmHg: 92, atSeconds: null },
        ],
      },
      pulse: { of: 'pulse', n: 38, windowSeconds: 30, clock: 'any', first: 1 },
    });
  });

  test('may be felt only, go down to zero, or come off a display', () => {
    expect(read('122/P').set).toMatchObject({ method: 'palpation', pulse: null });
    expect(read('118/62/0 68').set?.run.moments.map(({ mmHg }) => mmHg)).toEqual([118, 62, 0]);
    expect(read('148/92', 'device').set).toMatchObject({ method: 'device' });
  });

  test('keeps an arm and a posture that were typed beside it', () => {
    expect(read('L 148/92 lie').set).toMatchObject({ side: 'left', posture: 'lie', numbers: '148/92' });
  });

  test('C007: a pulse that its window cannot give is refused, and so is whatever would be left out', () => {
    expect(wrong('148/92 73', 15)).toEqual(['/pulse', 'impossible']);
    expect(wrong('148/92 73', 60)).toBeNull();
    expect(wrong('148/92 L-cuff')).toEqual(['/text', 'unknown-id']);
    expect(wrong('148/92 thigh')).toEqual(['/text', 'unknown-id']);
    expect(wrong('186/94, gap 186-152')).toEqual(['/text', 'unknown-id']);
    expect(wrong('148/92 stand')).toEqual(['/text', 'unknown-id']);
    expect(wrong('148/92x2')).toEqual(['/readings', 'out-of-range']);
    expect(wrong('148')).toEqual(['/diastolic', 'missing']);
    expect(wrong('400')).toEqual(['/systolic', 'out-of-range']);
    expect(wrong('92/148')).toEqual(['/diastolic', 'not-below-systolic']);
    expect(wrong('')).toEqual(['/systolic', 'missing']);
  });
});

describe('the keypad', () => {
  const typed = (keys: string) => [...keys].reduce(setKey, '');

  test.each([
    ['14892 76', '148/92 76'],
    ['148/92 76', '148/92 76'],
    ['122P', '122/P'],
    ['122/P 68', '122/P 68'],
    ['11862/0', '118/62/0'],
    ['9860 68', '98/60 68'],
    ['400', '400'],
    ['4000 ', '400'],
    // What cannot come next does nothing.
    [' 148', '148'],
    ['148 ', '148'],
    ['P148', '148'],
    ['122P5', '122/P'],
    ['148/92P', '148/92'],
    ['148/92  76', '148/92 76'],
    ['148/92 7654', '148/92 765'],
    ['148/92 7/6', '148/92 76'],
  ])('%s gives %s', (keys, text) => {
    expect(typed(keys)).toBe(text);
  });
});
