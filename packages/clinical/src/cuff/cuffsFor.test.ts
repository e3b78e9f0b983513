import { expect, test } from 'vitest';
import { carriedCuff, cuffRulesFor, isCuffOf } from './cuffsFor.js';
import { DEFAULT_CUFF_RULES as RULES } from './rules.js';
import { cuffScheme } from './schemes.js';

// Bedside handbook 3.2: only the paediatric set of the Fourth Report has cuffs for a newborn, an infant and a child.
test('a child of 8 is measured with a scheme that has a child’s cuff, an adult with that of the place', () => {
  const { scheme } = cuffRulesFor(RULES, 8 * 12);
  expect(cuffScheme(scheme).cuffs.map(({ id }) => id)).toContain('child');
  expect(cuffRulesFor(RULES, 18 * 12)).toBe(RULES);
  expect(cuffRulesFor(RULES, null)).toBe(RULES);
  const ofThePlace = { ...RULES, scheme: 'fourth-report-2004' } as const;
  expect(cuffRulesFor(ofThePlace, 8 * 12)).toBe(ofThePlace);
  expect(cuffRulesFor({ ...RULES, childUnderMonths: 144 }, 13 * 12).scheme).toBe('aha-2005');
});

test('a cuff of another scheme is not carried over, even under the same name: its bladder is another', () => {
  const child = { scheme: 'fourth-report-2004', id: 'child' } as const;
  expect(carriedCuff(child, cuffRulesFor(RULES, 96))).toBe(child);
  expect(carriedCuff(child, RULES)).toBeNull();
  expect(carriedCuff({ scheme: 'fourth-report-2004', id: 'adult' }, RULES)).toBeNull();
  expect(carriedCuff(null, RULES)).toBeNull();
  expect(isCuffOf('aha-2005', 'child')).toBe(false);
  expect(isCuffOf('aha-2005', 'adult')).toBe(true);
});
