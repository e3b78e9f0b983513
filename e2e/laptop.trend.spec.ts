import { expect, expectAccessible, test } from './evenfall.js';

/** How many pages a PDF has. */
function pagesOf(pdf: Buffer): number {
  return (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length;
}

test('a trend is read by keys and by pointer, seen closer, filtered, and printed whole', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByRole('link', { name: /Rufus Adeyemi/ }).click();
  await page.getByRole('link', { name: 'Trend over time' }).click();
  await expect(page.getByRole('heading', { name: 'Trend: Rufus Adeyemi' })).toBeVisible();
  await expect(
    page.getByRole('img', { name: /rounds from .* to .*; every number stands in the table/ }),
  ).toBeVisible();
  await expectAccessible(page);

  const read = page.getByRole('status');
  const newest = await read.textContent();
  expect(newest).toMatch(/Pressure mean of 2: \d+\/\d+ \(\d+\/\d+, \d+\/\d+\)/);
  const line = page.getByRole('slider', { name: 'Round to read out' });
  await line.focus();
  await page.keyboard.press('Home');
  await expect(read).not.toHaveText(newest ?? '');
  await expect(line).toHaveAttribute('aria-valuetext', /\d{4}, \d\d:\d\d/);
  await page.keyboard.press('End');
  await expect(read).toHaveText(newest ?? '');

  const drawing = page.locator('svg.trend');
  await drawing.hover({ position: { x: 60, y: 100 } });
  await expect(read).not.toHaveText(newest ?? '');

  const rows = page.locator('.trend-table tbody tr');
  const before = await rows.count();
  await page.mouse.down();
  await drawing.hover({ position: { x: 160, y: 100 } });
  await page.mouse.up();
  await expect.poll(() => rows.count()).toBeLessThan(before);
  await page.getByLabel('How far back').selectOption({ label: 'everything' });
  await expect(rows).toHaveCount(before);
  await page.getByRole('button', { name: 'Closer' }).click();
  await page.getByRole('button', { name: 'Later' }).click();
  await expect(page.getByRole('button', { name: 'Later' })).toBeDisabled();
  await page.getByRole('button', { name: 'Wider' }).click();
  await expect(rows).toHaveCount(before);

  await page.getByLabel('Pulse', { exact: true }).uncheck();
  await expect(page.locator('.trend-table').getByText('Pulse (a minute)')).toHaveCount(0);
  await expectAccessible(page);

  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('button', { name: 'Closer' })).toBeHidden();
  await expect(page.getByText('INVENTED').first()).toBeVisible();
  await expect(page.getByText(/^Printed .*What was entered in error is left out/)).toBeVisible();
  for (const format of ['A4', 'Letter']) {
    expect(pagesOf(await page.pdf({ format }))).toBe(1);
  }
});
