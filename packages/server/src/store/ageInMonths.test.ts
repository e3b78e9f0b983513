import { ageInMonths } from '@evenfall/record';
import { expect, test } from 'vitest';
import { withMemory } from '../database/testing.js';

// The rule of the record against another program's: PostgreSQL's own function of ages.
test('an age in completed months agrees with PostgreSQL over every pair of two years with a leap day', async () => {
  await withMemory(async ({ pool }) => {
    const { rows } = await pool.query<{ born: string; day: string; months: number }>(`
      select born::date::text as born, day::date::text as day,
        (extract(year from age(day, born)) * 12 + extract(month from age(day, born)))::int as months
      from generate_series(timestamp '2019-12-20', '2020-03-10', '1 day') as born,
        generate_series(timestamp '2020-03-11', '2021-04-05', '1 day') as day`);
    const differing = rows.filter(({ born, day, months }) => ageInMonths(born, day) !== months);
    expect(rows).toHaveLength(82 * 391);
    expect(differing).toEqual([]);
  });
}, 30_000);
