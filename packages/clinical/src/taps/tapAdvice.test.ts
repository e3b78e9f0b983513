import { describe, expect, test } from 'vitest';
import { type Circumstances, UNKNOWN_CIRCUMSTANCES } from '../count/circumstances.js';
import { DEFAULT_COUNT_RULES } from '../count/rules.js';
import { tapAdvice } from './tapAdvice.js';
import { tapResult } from './tapResult.js';

/** Advice after so many even taps at a rate. */
function advised(perMinute: number, taps: number, known: Partial<Circumstances> = {}) {
  const seconds = Array.from({ length: taps }, (_, beat) => (beat * 60) / perMinute);
  const result = tapResult({ of: 'pulse', source: 'key', seconds }, { repair: true });
  const advice = tapAdvice('pulse', result, { ...UNKNOWN_CIRCUMSTANCES, ...known }, DEFAULT_COUNT_RULES);
  return {
    ...advice,
    codes: advice.nextWhy.map(({ code }) => code),
    flagged: advice.flags.map(({ code }) => code),
  };
}

// Bedside handbook 1.5: when a full minute is required (marks as there; practice and memory).
describe('the full-minute rules for taps', () => {
  test('an even pulse of 72 with nothing else known stands', () => {
    expect(advised(72, 30)).toMatchObject({ nextWindowSeconds: null, codes: [], flagged: [] });
  });

  test.each([
    [{ rhythmFelt: 'irregular' }, 'irregular'],
    [{ strength: 'weak' }, 'weak'],
    [{ firstOnPerson: true }, 'first-set'],
    [{ ageMonths: 12 }, 'young'],
    [{ site: 'apical' }, 'apical'],
    [{ heartRateDrug: true }, 'heart-rate-drug'],
    [{ previousPerMinute: 90 }, 'disagrees'],
  ] as const)('%j asks for a full minute: %s', (known, code) => {
    expect(advised(72, 30, known)).toMatchObject({ nextWindowSeconds: 60, codes: [code] });
  });

  test('a rhythm felt irregular is flagged however long was tapped, and whatever the taps show', () => {
    expect(advised(72, 30, { rhythmFelt: 'irregular' }).flagged).toEqual(['rhythm-irregular']);
    expect(advised(72, 80, { rhythmFelt: 'irregular' })).toMatchObject({
      flagged: ['rhythm-irregular'],
      nextWindowSeconds: null,
    });
  });

  test.each([48, 56, 97, 110])('%s a minute tapped for a whole minute stands', (perMinute) => {
    expect(advised(perMinute, perMinute + 1).codes).toEqual([]);
  });

  test('slow and fast ask for a full minute; one already tapped for a minute stands', () => {
    expect(advised(55, 20).codes).toEqual(['slow-on-short-count']);
    expect(advised(108, 30).codes).toEqual(['fast-on-short-count']);
    expect(advised(108, 110)).toMatchObject({ nextWindowSeconds: null, codes: [] });
  });

  test('a rate far out says to look at the person first', () => {
    expect(advised(36, 20).flagged).toEqual(['very-slow']);
    expect(advised(150, 40).flagged).toEqual(['very-fast']);
  });

  test('a rhythm tapped irregular asks for one, whatever was felt', () => {
    const seconds = Array.from({ length: 41 }, (_, beat) => beat * 0.75 + (beat % 2) * 0.25);
    const result = tapResult({ of: 'pulse', source: 'key', seconds }, { repair: true });
    expect(result.rhythm).toBe('regularly-irregular');
    const { nextWhy } = tapAdvice('pulse', result, UNKNOWN_CIRCUMSTANCES, DEFAULT_COUNT_RULES);
    expect(nextWhy.map(({ code }) => code)).toContain('irregular');
  });

  test('one tap has no rate and no advice', () => {
    expect(advised(72, 1)).toMatchObject({ nextWindowSeconds: null, codes: [], flagged: [] });
  });
});
