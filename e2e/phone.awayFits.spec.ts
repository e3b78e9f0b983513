import type { Locator } from '@playwright/test';
import { expect, expectAccessible, test } from './evenfall.js';

type Row = { id: string; identity: { name: string } | null; latest: { diaries: { entry: string }[] } };

/** No part of the page stands beyond its right edge, where nothing shows that there is more. */
async function fits(page: Locator): Promise<boolean> {
  return page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth);
}

test('at a phone’s size the drawing of a week says that it scrolls and is readable, times stand in two lines, a diary is whole', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  const listed = await page.request.get(`${demo.address}/api/books/care/persons`);
  const { persons } = (await listed.json()) as { persons: Row[] };
  const mira = persons.find(({ identity }) => identity?.name === 'Mira Tolland');
  await page.goto(`${demo.address}/people/${mira?.id}`);
  await page
    .getByRole('link', { name: /^At home/ })
    .first()
    .tap();
  const cue = page.getByText('This is wider than the screen', { exact: false });
  await expect(cue).toBeVisible();
  const frame = page.locator('.away-figure-frame').first();
  const drawn = await frame.evaluate((place) => {
    const sizes = [...place.querySelectorAll('text')].map((text) => {
      const svg = text.closest('svg') as SVGSVGElement;
      const box = svg.viewBox.baseVal.width;
      return (Number(text.getAttribute('font-size')) * svg.getBoundingClientRect().width) / box;
    });
    return { least: Math.min(...sizes), isWider: place.scrollWidth > place.clientWidth, count: sizes.length };
  });
  expect(drawn.count).toBeGreaterThan(5);
  expect(drawn.isWider).toBe(true);
  // 11 px is the least that is read at arm's length without pinching; project decision.
  expect(drawn.least).toBeGreaterThanOrEqual(11);
  const lines = await page.locator('.away-readings tbody th').evaluateAll((cells) =>
    cells.map((cell) => {
      // As a time that nobody said is written, in the longest of the ways in which dates are.
      cell.textContent = 'about Nov 19, 07:00';
      const range = document.createRange();
      range.selectNodeContents(cell);
      return new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size;
    }),
  );
  expect(Math.max(...lines)).toBeLessThanOrEqual(2);
  const out = await page
    .getByRole('button', { name: /Take out/ })
    .last()
    .boundingBox();
  expect((out?.x ?? 999) + (out?.width ?? 0)).toBeLessThanOrEqual(390);
  expect(await fits(page.locator('html'))).toBe(true);
  await expectAccessible(page);

  // A recording: its table of periods is wider than the screen, says so above it, and the keys reach it.
  await page.goto(`${demo.address}/people/${mira?.id}`);
  await page
    .getByRole('link', { name: /^Over 24 hours/ })
    .first()
    .tap();
  const periods = page.getByRole('group', { name: 'What it comes to' });
  await expect(periods).toBeVisible();
  await expect(periods).toHaveAccessibleDescription(/^This is wider than the screen/);
  await periods.focus();
  await expect(periods).toBeFocused();
  expect(await fits(page.locator('html'))).toBe(true);
  await expectAccessible(page);

  const handed = persons.find(({ latest }) => latest.diaries.length > 0);
  await page.goto(`${demo.address}/people/${handed?.id}/diary/${handed?.latest.diaries[0]?.entry}`);
  await expect(page.locator('.diary-table')).toBeVisible();
  expect(await fits(page.locator('html'))).toBe(true);
  const { right, overflow } = await page.locator('.diary-readings').evaluate((place) => ({
    right: place.getBoundingClientRect().right,
    overflow: getComputedStyle(place).overflowX,
  }));
  expect(right).toBeLessThanOrEqual(390);
  expect(overflow).toBe('auto');
  await expect(page.getByText('This is wider than the screen', { exact: false })).toBeVisible();
  await expectAccessible(page);
});
