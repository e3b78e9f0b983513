import type { DecidedReading } from '@evenfall/record';
import { expect, test } from 'vitest';
import { decisionFor } from './decisionFor.js';

const put = (decision: 'in' | 'out') => ({ decision }) as DecidedReading;

test.each([
  ['used by the rule', null, undefined, 'out'],
  ['left out by the rule', 'dropped-day', undefined, 'in'],
  ['taken out by hand', 'rejected', put('out'), 'by-rule'],
  ['put back by hand', null, put('in'), 'by-rule'],
  ['put back by hand, and left out for another reason', 'duplicate', put('in'), 'in'],
] as const)('a reading %s is turned over', (_of, dropped, byHand, decision) => {
  expect(decisionFor(dropped, byHand)).toBe(decision);
});
