import { beginRound, expect, expectAccessible, test, typeOnKeypad } from './evenfall.js';

/** What a round goes on with, and what is made of taps. */
const REST = /\/assets\/(goOnPages|asidePages|tapRules)-[^/]+\.js$/;

test.beforeEach(async ({ page }) => {
  // Without a service worker, which would have brought the rest meanwhile.
  await page.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'serviceWorker'));
});

test('a round begins and is counted while the rest of it is still on its way; what it waits for is said', async ({
  page,
  demo,
}) => {
  const held: (() => void)[] = [];
  await page.route(REST, (route) => {
    held.push(() => void route.continue());
  });
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
  await page.locator('.person-line').first().tap();
  await beginRound(page);

  const waits = page.getByText('The rest of the round is still being fetched.', { exact: false });
  await test.step('tapping waits, and says so; counting by the watch does not', async () => {
    await page.getByText('Tap', { exact: true }).tap();
    await expect(waits).toBeVisible();
    await expectAccessible(page);
    await page.getByText('Count', { exact: true }).tap();
    await expect(waits).toBeHidden();
  });
  await page.getByText('15 s', { exact: true }).tap();
  await page.getByRole('button', { name: 'Start' }).tap();
  await expect(page.getByRole('group', { name: 'Keypad' })).toBeVisible({ timeout: 20_000 });
  await typeOnKeypad(page, '19');
  await expect(waits).toBeVisible();
  const range = page.getByText(/over 72, under 80/);

  await test.step('what came out is shown at once, and what is made with it as soon as it is here', async () => {
    await expect(range).toBeVisible();
    for (const go of held) go();
    await expect(waits).toBeHidden();
    await expect(range).toBeVisible();
    await expect(page.getByRole('button', { name: 'Change the number' })).toBeVisible();
  });
});

test('where the rest of a round could not be fetched, that is said, and what was counted is there after the page is loaded again', async ({
  page,
  demo,
}) => {
  await page.route(REST, (route) => route.abort('connectionfailed'));
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
  await page.locator('.person-line').nth(1).tap();
  await beginRound(page);
  await page.getByText('15 s', { exact: true }).tap();
  await page.getByRole('button', { name: 'Start' }).tap();
  await expect(page.getByRole('group', { name: 'Keypad' })).toBeVisible({ timeout: 20_000 });
  await typeOnKeypad(page, '19');
  await expect(page.getByText('The rest of the round could not be fetched.', { exact: false })).toBeVisible();
  // The rate with its range, and what is said of it, need no network.
  await expect(page.getByText(/over 72, under 80/)).toBeVisible();
  await expectAccessible(page);
  await page.unroute(REST);
  await page.getByRole('button', { name: 'Load it again' }).tap();
  await expect(page.getByText(/over 72, under 80/)).toBeVisible();
});
