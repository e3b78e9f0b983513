import { expect, expectAccessible, test } from './evenfall.js';

/** Of many addresses the first of each kind of page: those that differ by the id of a person alone are of one. */
function firstOfEachKind(addresses: readonly string[]): readonly string[] {
  const kinds = new Map<string, string>();
  for (const address of addresses) {
    const kind = address.replaceAll(/[0-9a-f-]{36}/g, 'ID');
    if (!kinds.has(kind)) kinds.set(kind, address);
  }
  return [...kinds.values()];
}

test('every page of the demo says INVENTED, on the screen, in the title and in print', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await expect(page.getByRole('link', { name: /Orla Wickstead/ })).toBeVisible();
  const hrefs = await page
    .locator('main a')
    .evaluateAll((links) => links.map((link) => (link as HTMLAnchorElement).href));
  const person = hrefs.find((href) => /\/people\/[0-9a-f-]{36}$/.test(href)) ?? '';
  expect(person).not.toBe('');
  const pages = [
    `${demo.address}/`,
    ...hrefs.filter((href) => !href.includes('/api/')),
    `${person}/round`,
    `${demo.address}/nowhere`,
  ];
  for (const address of firstOfEachKind(pages)) {
    await page.goto(address);
    await expect(page.getByText(/INVENTED/).first(), address).toBeVisible();
    await expect(page, address).toHaveTitle(/INVENTED/);
    await page.emulateMedia({ media: 'print' });
    await expect(page.getByText(/INVENTED/).first(), `${address} printed`).toBeVisible();
    await page.emulateMedia({ media: null });
    await expectAccessible(page);
  }
});

test('the chart shows amendments that disagree, both of them, and an error as an error', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await expect(page.getByRole('link', { name: /Edda Rook/ })).toContainText(/65 or 58|58 or 65/);
  await page.getByRole('link', { name: /Edda Rook/ }).click();
  await expect(page.getByText('Two amendments disagree; both are shown.')).toBeVisible();
  for (const rate of ['65', '58']) await expect(page.getByText(rate, { exact: true }).first()).toBeVisible();
  await page.goBack();
  await page.getByRole('link', { name: /Tomas Varga/ }).click();
  await expect(page.getByText('Entered in error').first()).toBeVisible();
  await expect(page.getByText('Preliminary').first()).toBeVisible();
  await expect(page.locator('del, s').getByText('88').first()).toBeVisible();
});

test('dark and light are both accessible, with every story open', async ({ page, demo }) => {
  for (const media of [{ colorScheme: 'dark' }, { colorScheme: 'light' }] as const) {
    await page.emulateMedia(media);
    await page.goto(`${demo.address}/`);
    await page.getByRole('link', { name: /Orla Wickstead/ }).click();
    await expect(page.getByRole('heading', { name: 'Chart' })).toBeVisible();
    for (const opener of await page.getByText('How this number came about').all()) await opener.click();
    await expectAccessible(page);
  }
});

test('a person is erased: the entries stay, without a name', async ({ page, demo }) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Dr Ines Abara (invented)' });
  await page.getByRole('link', { name: /Orla Wickstead/ }).click();
  await page
    .getByRole('button', { name: /Erase who this person is/ })
    .or(page.getByText(/Erase who this person is/))
    .first()
    .click();
  const dialog = page.getByRole('dialog');
  await expect(dialog).toBeVisible();
  await expectAccessible(page);
  await dialog.getByLabel('Why is it erased?').fill('asked to be erased');
  await dialog.getByRole('button', { name: 'Erase this identity' }).click();
  await expect(dialog.getByText('This is not the name as it stands.')).toBeVisible();
  await dialog.getByLabel(/^Type the name/).fill('Orla Wickstead');
  await dialog.getByRole('button', { name: 'Erase this identity' }).click();
  await expect(page.getByText('Orla Wickstead')).toHaveCount(0);
  await expect(page.getByText('How this number came about').first()).toBeVisible();
});
