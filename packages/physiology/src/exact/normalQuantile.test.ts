// @ts-expect-error: jstat ships no types
import jstat from 'jstat';
import { expect, test } from 'vitest';
import { normalQuantile } from './normalQuantile.js';

// Wichura 1988 gives -0.67448975 at 0.25, -3.09023231 at 0.001, -9.26234009 at 1e-20.
test.each([
  [0.25, -0.6744897501960817],
  [0.001, -3.090232306167814],
  [1e-20, -9.262340089798409],
  [0.975, 1.959963984540054],
])('the normal value at %f is %f', (p, z) => {
  expect(Math.abs(normalQuantile(p) - z)).toBeLessThan(2e-15 * Math.abs(z) + 1e-15);
});

test('it undoes the distribution function of another library', () => {
  for (let z = -6; z <= 6; z += 0.01) {
    const p = jstat.normal.cdf(z, 0, 1);
    // Its own error is about 1e-15 of p, divided by the density.
    const allowed = 3e-15 / (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) + 1e-13;
    expect(Math.abs(normalQuantile(p) - z)).toBeLessThan(allowed);
  }
});
