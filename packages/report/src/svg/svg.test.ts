import { expect, test } from 'vitest';
import { coordinate, element, escaped, pathThrough } from './svg.js';

test('text and attributes cannot end what holds them', () => {
  expect(escaped('<b> & "q"')).toBe('&lt;b&gt; &amp; &quot;q&quot;');
  expect(element('text', { class: '"><script>' }, [escaped('</text>')])).toBe(
    '<text class="&quot;&gt;&lt;script&gt;">&lt;/text&gt;</text>',
  );
});

test('a coordinate has two decimals, and one that is no number is a fault', () => {
  expect(coordinate(12.345678)).toBe('12.35');
  expect(() => coordinate(Number.NaN)).toThrow();
  expect(() => coordinate(Number.POSITIVE_INFINITY)).toThrow();
});

test('a path is broken where a point is missing', () => {
  expect(pathThrough([[0, 1], [2, 3], null, [4, 5]])).toBe('M0 1L2 3M4 5');
  expect(pathThrough([null, null])).toBe('');
});
