import { expect, test } from 'vitest';
import { AVERAGING_ORIGINS } from './averagingOrigins.js';
import { AVERAGING_RULE_IDS, averagingRule } from './averagingRules.js';

test.each(AVERAGING_RULE_IDS)('%s is followed with the numbers of which it says the source', (id) => {
  const { source, gap, difference } = AVERAGING_ORIGINS[id];
  const rule = averagingRule(id);
  expect(source).not.toBe('');
  expect(gap.value).toBe(rule.gapSeconds);
  expect(difference?.value).toBe(rule.difference?.limit);
});
