import { expect, test } from 'vitest';
import { id } from './id.js';

// RFC 9562, appendix A.6: an example of a UUIDv7. Section 4: digits are written in lower case and read in either.
const EXAMPLE = '017f22e2-79b0-7cc3-98c4-dc0c0c07398f';

test('an id is one id in either case, kept in lower case', () => {
  expect(id.parse(EXAMPLE)).toBe(EXAMPLE);
  expect(id.parse(EXAMPLE.toUpperCase())).toBe(EXAMPLE);
});

test.each([
  // Appendix A.3: a UUIDv4, which has no order in time.
  ['a UUID of another version', '919108f7-52d1-4320-9bac-f847db4148a8'],
  ['a UUID of another variant', '017f22e2-79b0-7cc3-08c4-dc0c0c07398f'],
  ['no dashes', EXAMPLE.replaceAll('-', '')],
  ['braces', `{${EXAMPLE}}`],
  ['a space', ` ${EXAMPLE}`],
  ['nothing', ''],
])('%s is none', (_, text) => {
  expect(id.safeParse(text).success).toBe(false);
});
