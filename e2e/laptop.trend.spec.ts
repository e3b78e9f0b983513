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

test('what others say is drawn apart, told in words in the table, and can be left out', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByRole('link', { name: /Tomas Varga/ }).click();
  await page.getByRole('link', { name: 'Trend over time' }).click();
  const rows = page.locator('.trend-table tbody tr');
  await expect(page.locator('.trend-table')).toBeVisible();
  const before = await rows.count();
  const person = /people\/([^/]+)\//.exec(page.url())?.[1] ?? '';
  const heading =
    'schema,notice,person,entry,sign,standing,measuredAt,systolic,diastolic,perMinute,saidBy,posture';
  const about = (entry: number, sign: string) =>
    `evenfall-chart-3,INVENTED,01950000-0000-7000-8000-0000000000aa,01950000-0000-7000-8000-00000000010${entry},${sign},stands,2026-02-01T09:30:00+00:00`;
  const file = [
    heading,
    `${about(1, 'pressure')},152,94,,Ines Larch (invented),sitting`,
    `${about(2, 'pulse')},,,71,Ines Larch (invented),sitting`,
  ].join('\r\n');
  const agents = await (await page.request.get(`${demo.address}/api/agents`)).json();
  const came = await page.request.post(`${demo.address}/api/books/care/persons/${person}/import`, {
    data: { file, agent: agents.agents[0].id, keep: true },
  });
  expect(came.status()).toBe(201);
  await page.reload();

  await expect(rows).toHaveCount(before + 1);
  const row = rows.filter({ hasText: 'From elsewhere: Said by Ines Larch (invented), sitting' });
  await expect(row).toContainText('152/94');
  await expect(row).toContainText('71');
  await expect(page.getByText('hollow triangles: said by another system or a table')).toBeVisible();
  await expect(page.getByRole('img', { name: /rounds? and 1 time from elsewhere, from/ })).toBeVisible();
  await page.getByRole('slider', { name: 'Round to read out' }).focus();
  await page.keyboard.press('Home');
  await expect(page.getByRole('status')).toContainText('From elsewhere: Said by Ines Larch (invented)');
  await page.getByRole('link', { name: 'To what others say, in the chart' }).click();
  await expect(page.getByRole('region', { name: 'From elsewhere' })).toBeInViewport();
  await page.goBack();
  await expectAccessible(page);

  await page.getByLabel('What others say').uncheck();
  await expect(rows).toHaveCount(before);
  await expect(page.getByText('hollow triangles: said by another system or a table')).toHaveCount(0);
});
