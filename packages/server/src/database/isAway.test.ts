import pg from 'pg';
import { expect, test } from 'vitest';
import { isAway } from './isAway.js';

const fault = (code: string) => Object.assign(new Error('x'), { code });

test('nobody listens: the driver’s own fault is known', async () => {
  const client = new pg.Client({ host: '127.0.0.1', port: 1, connectionTimeoutMillis: 2_000 });
  const error = await client.connect().catch((found: unknown) => found);
  expect(isAway(error)).toBe(true);
});

// PostgreSQL documentation, appendix A: error codes.
test.each(['08006', '08001', '53300', '57P01', '57P02', '57P03', 'ECONNREFUSED', 'ECONNRESET'])(
  '%s is away',
  (code) => {
    expect(isAway(fault(code))).toBe(true);
    expect(isAway(new Error('outer', { cause: fault(code) }))).toBe(true);
  },
);

test.each(['23505', '42P01', '57014', '0', ''])('%s is a fault of its own', (code) => {
  expect(isAway(fault(code))).toBe(false);
});

test('what is no such fault', () => {
  expect(isAway(new Error('Connection terminated unexpectedly'))).toBe(true);
  for (const other of [new Error('anything'), null, undefined, 'ECONNREFUSED', {}])
    expect(isAway(other)).toBe(false);
});
