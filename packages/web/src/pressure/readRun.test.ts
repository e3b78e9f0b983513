import { DEFAULT_DEFLATION_RULES, type Method } from '@evenfall/clinical';
import { describe, expect, test } from 'vitest';
import type { RunField } from './pressureDraft.js';
import { readRun } from './readRun.js';

const AROUND = { pulsePerMinute: 72, lostMmHg: 132 };
const typed = (
  numbers: string,
  fields: Partial<Record<RunField, string>> = {},
  method: Method = 'auscultation',
) => readRun({ method, typed: numbers, fields, reinflated: false }, AROUND, DEFAULT_DEFLATION_RULES);
const wrongOf = (...of: Parameters<typeof typed>) => {
  const { wrong } = typed(...of);
  return Object.entries(wrong ?? {}).map(([field, { code }]) => `${field} ${code}`);
};

describe('the numbers of a run as the trade writes them', () => {
  // Bedside handbook 7.2: the shorthand; 3.7: three numbers are first sound, muffling, last sound.
  test('two, three, by feel, and off a display', () => {
    expect(typed('148/92').run?.moments.map(({ what, mmHg }) => `${what} ${mmHg}`)).toEqual([
      'first sound 148',
      'last sound 92',
    ]);
    expect(typed('118/62/0').run?.moments).toMatchObject([
      { mmHg: 118 },
      { what: 'muffled', mmHg: 62 },
      { mmHg: 0 },
    ]);
    for (const numbers of ['122', '122/P', ' 122/p '])
      expect(typed(numbers, {}, 'palpation').run).toMatchObject({
        method: 'palpation',
        moments: [{ what: 'pulse back', mmHg: 122 }],
      });
    expect(typed('131/77', {}, 'device').run?.method).toBe('device');
  });

  test('the pulse of the round and the estimate by feel go with it', () => {
    expect(typed('148/92').run).toMatchObject({ pulsePerMinute: 72, palpated: { lostMmHg: 132 } });
  });

  // Bedside handbook 8, C046: 80/120 is refused.
  test('are refused at the numbers, never guessed', () => {
    expect(wrongOf('80/120')).toEqual(['typed not-below-systolic']);
    expect(wrongOf('')).toEqual(['typed missing']);
    expect(wrongOf('148')).not.toEqual([]);
    expect(wrongOf('148,5/92')).not.toEqual([]);
  });
});

describe('what is typed beside the numbers', () => {
  test('peak and times give a deflation that can be judged', () => {
    const { run } = typed('148/92', { peak: '162', firstAtSeconds: '6', lastAtSeconds: '28' });
    expect(run).toMatchObject({
      peak: { mmHg: 162, atSeconds: 0 },
      moments: [{ atSeconds: 6 }, { atSeconds: 28 }],
    });
  });

  test('a blank is not known, never zero', () => {
    const { run } = typed('148/92', { peak: ' ', firstAtSeconds: '' });
    expect(run).toMatchObject({ peak: null, moments: [{ atSeconds: null }, { atSeconds: null }] });
  });

  // Bedside handbook 3.5 and 7.2: 186/94, gap 186-152.
  test('a gap stands between the sounds', () => {
    expect(typed('186/94', { gapFrom: '186', gapTo: '152' }).run?.moments.map(({ mmHg }) => mmHg)).toEqual([
      186, 186, 152, 94,
    ]);
    expect(wrongOf('186/94', { gapFrom: '152', gapTo: '186' })).toEqual(['gapFrom out-of-order']);
  });

  test('what is wrong stands beside the field in which it was typed', () => {
    expect(wrongOf('148/92', { peak: '140' })).not.toEqual([]);
    expect(wrongOf('148/92', { peak: 'high' })).toEqual(['peak not-a-number']);
    expect(wrongOf('148/92', { peak: '162', firstAtSeconds: 'x' })).toEqual(['firstAtSeconds not-a-number']);
    expect(wrongOf('148/92', { peak: '162', firstAtSeconds: '20', lastAtSeconds: '12' })).toEqual([
      'lastAtSeconds out-of-order',
    ]);
  });
});
