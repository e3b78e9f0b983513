import { expect, test } from 'vitest';
import { plainApp } from './reachRoutes.js';

const app = plainApp({ lan: () => null, authority: () => null, isInvented: () => true });

// RFC 9110, 12.4.2 and 12.5.4: the weight orders the languages, and one of weight 0 is not acceptable.
test.each([
  ['es', 'es'],
  ['fr, en;q=0.3, es-MX;q=0.8', 'es-MX'],
  ['es;q=0', 'en'],
  ['es;q=0, en', 'en'],
  ['es;q=0, fr', 'en'],
])('a browser that asks for %s gets the page in %s', async (asked, language) => {
  const page = await app.request('/phone', { headers: { 'accept-language': asked } });
  expect(await page.text()).toContain(`<html lang="${language}">`);
});
