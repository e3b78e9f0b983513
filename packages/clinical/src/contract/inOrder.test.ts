import { expect, test } from 'vitest';
import { inOrder } from './inOrder.js';

const ordered = (...fields: string[]) =>
  inOrder(
    fields.map((field) => ({ field })),
    ['of', 'seconds'],
  ).map(({ field }) => field);

test('what is refused as a whole comes first, then the fields as documented, unknown ones last', () => {
  expect(ordered('/colour', '/seconds', '/of', '')).toEqual(['', '/of', '/seconds', '/colour']);
});

test('refusals within one field keep the order they came in', () => {
  expect(ordered('/seconds/10', '/of', '/seconds/9')).toEqual(['/of', '/seconds/10', '/seconds/9']);
});
