import type { ChartedSeries } from '@evenfall/record';
import { expect, test } from 'vitest';
import { besideHref, besideIn } from './besideHref.js';

const series = (id: string, of: 'home' | 'ambulatory', isInError = false) =>
  ({ id, isInError, content: { of } }) as unknown as ChartedSeries;

test('the newest two of one kind stand side by side; else the newest two; one alone beside nothing', () => {
  const of = (...all: ChartedSeries[]) => besideHref('ada', all);
  expect(of()).toBeNull();
  expect(of(series('a', 'home'))).toBeNull();
  expect(of(series('a', 'home'), series('b', 'home', true))).toBeNull();
  expect(of(series('a', 'home'), series('b', 'ambulatory'))).toBe('/people/ada/away/a?beside=b');
  expect(of(series('a', 'home'), series('b', 'ambulatory'), series('c', 'ambulatory'))).toBe(
    '/people/ada/away/b?beside=c',
  );
  expect(of(series('a', 'home'), series('b', 'ambulatory'), series('c', 'home'))).toBe(
    '/people/ada/away/a?beside=c',
  );
});

test('the address says which other one, and of a series alone nothing', () => {
  expect(besideIn('beside=c')).toBe('c');
  expect(besideIn('')).toBe('');
});
