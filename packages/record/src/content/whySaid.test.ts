import { UNKNOWN_CIRCUMSTANCES } from '@evenfall/clinical';
import { describe, expect, test } from 'vitest';
import { chartCount } from './chartCount.js';
import { chartTaps } from './chartTaps.js';
import { NOTHING_CHOSEN } from './inForce.js';
import { whySaid } from './whySaid.js';

const BY_HAND = { override: null, note: null };
const circumstances = { ...UNKNOWN_CIRCUMSTANCES, strength: 'weak' as const };

// Bedside handbook 1.5 and 2.1: a weak pulse, and breaths, are counted for the full minute.
describe('why a longer count was asked for', () => {
  test('of a count', () => {
    const count = { of: 'pulse', n: 38, windowSeconds: 30, clock: 'any', first: 1 } as const;
    const { value } = chartCount({ ...BY_HAND, count, circumstances }, NOTHING_CHOSEN, 'test');
    expect(whySaid(value).map(({ code }) => code)).toEqual(['weak']);
  });

  test('of taps, after why a statistic could not be told', () => {
    const taps = { of: 'breaths', source: 'key', seconds: [0, 4, 8] } as const;
    const { value } = chartTaps({ ...BY_HAND, taps, circumstances, repair: true }, NOTHING_CHOSEN, 'test');
    const codes = whySaid(value).map(({ code }) => code);
    expect(codes).toContain('too-few-for-statistics');
    expect(codes.at(-1)).toBe('breaths-full-minute');
  });
});
