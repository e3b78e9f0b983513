import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect, expectAccessible, test } from './evenfall.js';

/** The invented week H1 of the out-of-office handbook 19, a heading and 28 rows. */
const WEEK = readFileSync(new URL('../docs/examples/home-week.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n');

async function paste(page: Page, person: string, address: string, rows: number): Promise<void> {
  await page.goto(`${address}/people/${person}/away/new`);
  await page.getByText('Pasted', { exact: true }).click();
  await page.getByLabel('Lines from a spreadsheet or a message').fill(WEEK.slice(0, rows + 1).join('\n'));
  const zone = page.getByLabel(/In which time zone was its clock\?/);
  if (await zone.isVisible()) {
    await zone.fill('Europe/Lisbon');
    await page.getByRole('button', { name: 'Use this zone' }).click();
  }
}

const sign = (page: Page) => page.getByRole('button', { name: 'Sign', exact: true }).click();

test('the memory of a device brought in again with more days goes on with its series, and says who added what', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/protocol`);
  await page.getByLabel('Who is measuring?').first().selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('combobox', { name: 'Start from one guideline' }).click();
  await page
    .getByRole('option', { name: /^ISH 2020/ })
    .first()
    .click();
  await page.getByRole('button', { name: 'Put this protocol in force' }).click();
  await expect(page.getByText('It is in force from now on.')).toBeVisible();
  await page.goto(`${demo.address}/`);
  await page
    .getByRole('link', { name: /Edda Rook/ })
    .first()
    .click();
  await page.getByRole('heading', { level: 1, name: /Edda Rook/ }).waitFor();
  const person = /people\/([^/?#]+)/.exec(page.url())?.[1] ?? '';
  await paste(page, person, demo.address, 20);
  const agent = page.getByLabel('Who is measuring?');
  await page.getByRole('heading', { name: 'Before you sign' }).waitFor();
  if (await agent.isVisible()) await agent.selectOption({ index: 1 });
  const note = page.getByLabel('Note', { exact: true });
  await note.fill('a'.repeat(800));
  await sign(page);
  await page.getByRole('heading', { level: 1, name: 'At home, 3 Mar 2025 to 7 Mar 2025' }).waitFor();
  const series = page.url();

  await paste(page, person, demo.address, 28);
  await expect(page.getByText('20 readings are in the record already', { exact: false })).toBeVisible();
  const goesOn = page.getByRole('group', { name: /^These readings go on with the series of 3 Mar 2025/ });
  await expect(goesOn).toBeVisible();
  await sign(page);
  await expect(page.getByText('Say whether it is added to the series', { exact: false })).toBeVisible();
  await expectAccessible(page);
  // Kept apart, its own first day would be left out: 4 of 8 readings.
  await goesOn.getByText('Keep apart, as a series of its own').click();
  const comesTo = page.getByRole('region', { name: 'What it comes to' });
  await expect(comesTo.getByText(/the mean of 4 of 8 readings/)).toBeVisible();
  await goesOn.getByText('Add to that series', { exact: false }).click();
  // H1: the first day left out, 136.5833/84.9583, n = 24.
  await expect(comesTo.getByText('137/84.96')).toBeVisible();
  await expect(comesTo.getByText(/the mean of 24 of 28 readings/)).toBeVisible();
  // Both notes are kept as one of 1000 characters and a line between them: what does not fit is said where it is typed.
  await note.fill('b'.repeat(200));
  await expect(page.getByText('1 character too many', { exact: false })).toBeVisible();
  await expect(note).toHaveValue('b'.repeat(200));
  await sign(page);
  await page.getByRole('link', { name: /^The note is too long/ }).click();
  await expect(note).toBeFocused();
  await expectAccessible(page);
  await note.fill('b'.repeat(199));
  await expect(page.getByText('too many', { exact: false })).toHaveCount(0);
  await sign(page);

  await page.getByRole('heading', { level: 1, name: 'At home, 3 Mar 2025 to 9 Mar 2025' }).waitFor();
  expect(page.url()).toBe(series);
  // On paper it stands once more, before the list.
  await expect(page.getByText(/^Brought in by /).filter({ visible: true })).toHaveCount(1);
  await expect(page.getByText(/^8 more readings added by /).filter({ visible: true })).toHaveCount(1);
  await expectAccessible(page);

  await test.step('of what was added a hand decides too', async () => {
    await page
      .getByRole('button', { name: /^Take out 133\/82, / })
      .last()
      .click();
    await page.getByLabel('Why?').fill('talked');
    await page.getByRole('button', { name: 'Keep this for 1 reading' }).click();
    await expect(page.getByText('Taken out by hand: talked')).toBeVisible();
  });
});

test('a series that is signed without network waits on the device, is shown as waiting, and is kept exactly once', async ({
  page,
  context,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page
    .getByRole('link', { name: /Nils Okonjo/ })
    .first()
    .click();
  await page.getByRole('heading', { level: 1, name: /Nils Okonjo/ }).waitFor();
  const person = /people\/([^/?#]+)/.exec(page.url())?.[1] ?? '';
  await paste(page, person, demo.address, 12);
  const agent = page.getByLabel('Who is measuring?');
  await page.getByRole('heading', { name: 'Before you sign' }).waitFor();
  if (await agent.isVisible()) await agent.selectOption({ index: 1 });
  await context.setOffline(true);
  await sign(page);
  const away = page.getByRole('region', { name: /away/i }).first();
  await expect(away.getByText('Signed on this device, waiting for the server')).toBeVisible();
  await expect(away.getByText('At home, 3 Mar 2025 to 5 Mar 2025', { exact: false })).toBeVisible();
  await expect(page.getByText('1 series of readings signed on this device', { exact: false })).toBeVisible();
  await expectAccessible(page);

  await context.setOffline(false);
  await expect(page.getByText('waiting for the server')).toHaveCount(0, { timeout: 60_000 });
  await expect(away.getByRole('link', { name: /^At home, 3 Mar 2025 to 5 Mar 2025/ })).toHaveCount(1);
  const record = await page.request.get(`${demo.address}/api/books/care/persons/${person}`);
  const { entries } = (await record.json()) as { entries: { kind: string }[] };
  expect(entries.filter(({ kind }) => kind === 'series')).toHaveLength(1);
});

test("a learner's series is preliminary until a supervisor signs for it; what the device marked stands beside its reading", async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page
    .getByRole('link', { name: /Greta Lomax/ })
    .first()
    .click();
  await page.getByRole('heading', { level: 1, name: /Greta Lomax/ }).waitFor();
  const person = /people\/([^/?#]+)/.exec(page.url())?.[1] ?? '';
  await page.goto(`${demo.address}/people/${person}/away/new`);
  await page.getByText('Pasted', { exact: true }).click();
  const rows = WEEK.map((row, k) => {
    const mark = k === 0 ? 'irregular pulse' : k === 5 ? 'yes' : 'no';
    // In one row a letter stands before the systolic.
    return `${k === 6 ? row.replace(/,(?=\d)/, ',l') : row},${mark}`;
  });
  await page.getByLabel('Lines from a spreadsheet or a message').fill(rows.join('\n'));
  const zone = page.getByLabel(/In which time zone was its clock\?/);
  if (await zone.isVisible()) {
    await zone.fill('Europe/Lisbon');
    await page.getByRole('button', { name: 'Use this zone' }).click();
  }
  const mend = page.getByLabel('Row 7 as it should be');
  await mend.fill((await mend.inputValue()).replace(',l', ','));
  await page.getByRole('button', { name: 'Read row 7 again' }).click();
  await expect(
    page.getByText('The device marked an irregular pulse (line 6)', { exact: false }),
  ).toBeVisible();
  const agent = page.getByLabel('Who is measuring?');
  await agent.selectOption({ index: 2 });
  await page.getByLabel('I am learning', { exact: false }).check();
  await sign(page);

  await page.getByRole('heading', { level: 1, name: /^At home, 3 Mar 2025/ }).waitFor();
  const preliminary = page.getByText('Preliminary: brought in by somebody who is learning', { exact: false });
  await expect(preliminary).toBeVisible();
  await expect(
    page.getByText('The device marked an irregular pulse at 1 reading', { exact: false }),
  ).toBeVisible();
  const list = page.getByRole('region', { name: 'All readings' });
  await expect(list.getByText('irregular pulse, marked by the device')).toBeVisible();
  await expect(list.getByText(/put right before signing; it said: .*,l/)).toBeVisible();
  await expectAccessible(page);
  const series = page.url();

  await page.goto(`${demo.address}/countersign`);
  await page.getByRole('link', { name: /^At home, 3 Mar 2025/ }).click();
  await expect(page).toHaveURL(series);
  await page.getByRole('button', { name: 'Countersign' }).click();
  await page.getByLabel('Who countersigns?').selectOption({ index: 1 });
  await page.getByText('Yes, it stands').click();
  await page.getByRole('button', { name: 'Sign as supervisor' }).click();
  await expect(preliminary).toHaveCount(0);
  await expect(
    page.getByText('Countersigned', { exact: false }).filter({ visible: true }).first(),
  ).toBeVisible();
});

test('a series that the server refuses is back in its form, with why beside the button', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page
    .getByRole('link', { name: /Bram Oyelaran/ })
    .first()
    .click();
  await page.getByRole('heading', { level: 1, name: /Bram Oyelaran/ }).waitFor();
  const person = /people\/([^/?#]+)/.exec(page.url())?.[1] ?? '';
  await paste(page, person, demo.address, 20);
  await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
  // On its way the value is bent: one that its readings do not give is refused.
  await page.route('**/api/entries', async (route) => {
    const [entry] = route.request().postDataJSON().entries;
    const content = { ...entry.content, value: { ...entry.content.value, used: 1 } };
    await route.continue({ postData: JSON.stringify({ entries: [{ ...entry, content }] }) });
  });
  await sign(page);
  const end = page.getByRole('region', { name: 'Before you sign' });
  await expect(page.getByRole('button', { name: 'Sign', exact: true })).toBeVisible();
  await expect(end.getByRole('alert')).toContainText('used');
  await page.unroute('**/api/entries');
  await sign(page);
  await page.getByRole('heading', { level: 1, name: 'At home, 3 Mar 2025 to 7 Mar 2025' }).waitFor();
});
