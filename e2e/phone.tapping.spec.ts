import { beginRound, expect, expectAccessible, notDone, test } from './evenfall.js';

test('a tapped pulse keeps the moment of each tap, and narrows as one taps', async ({ page, demo }) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Juno Castellane/ }).tap();
  await beginRound(page);
  await page.getByText('Tap', { exact: true }).tap();
  await expectAccessible(page);

  // 75 a minute, by real touches: a beat every 800 ms.
  const pad = page.getByRole('button', { name: 'Tap here' });
  const began = Date.now();
  for (let beat = 0; beat < 14; beat += 1) {
    await page.waitForTimeout(Math.max(0, began + beat * 800 - Date.now()));
    await pad.tap();
  }
  await expect(page.getByRole('img', { name: '14 taps so far' })).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Take back the last tap' }).tap();
  await expect(page.getByRole('img', { name: '13 taps so far' })).toBeVisible();
  await page.getByRole('button', { name: 'Stop', exact: true }).tap();
  const rate = Number(await page.getByRole('status').locator('.rate-number').first().textContent());
  expect(rate).toBeGreaterThan(71);
  expect(rate).toBeLessThan(79);
  await expect(page.getByText(/Likely range/)).toBeVisible();

  await page.getByRole('link', { name: 'Go on' }).tap();
  await page.goBack();
  await page.goto(`${page.url().replace(/\/round\/.*$/, '/round')}`);
  await notDone(page, 'Breaths', 'the person was asleep');
  await notDone(page, 'Pressure');
  await page.getByRole('button', { name: 'Sign', exact: true }).tap();
  await expect(page.getByText(/13 taps in/).first()).toBeVisible();
  await expect(page.getByText('Breaths not done: the person was asleep').first()).toBeVisible();
  await expectAccessible(page);
});

test('an interrupted count is void: no number comes of it', async ({ page, demo }) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Pia Lindqvist/ }).tap();
  await beginRound(page);
  await page.getByRole('button', { name: 'Start' }).tap();
  await page.getByRole('button', { name: 'Interrupted' }).tap();
  await expect(page.getByText(/void/i).first()).toBeVisible();
  await expect(page.getByRole('group', { name: 'Keypad' })).toHaveCount(0);
  await expectAccessible(page);
});

test('a screen that is left while a count runs makes it void', async ({ page, demo }) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Tomas Varga/ }).tap();
  await beginRound(page);
  await page.getByRole('button', { name: 'Start' }).tap();
  await expect(page.getByRole('button', { name: 'Interrupted' })).toBeVisible();
  await page.evaluate(() => {
    Object.defineProperty(document, 'visibilityState', { configurable: true, get: () => 'hidden' });
    Object.defineProperty(document, 'hidden', { configurable: true, get: () => true });
    document.dispatchEvent(new Event('visibilitychange'));
  });
  await expect(page.getByText(/void/i).first()).toBeVisible();
  await expect(page.getByRole('group', { name: 'Keypad' })).toHaveCount(0);
});

test('a round signed while the server is gone stays on the device, says so, and is kept once when it is back', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Bram Oyelaran/ }).tap();
  await expect(page.getByText('How this number came about').first()).toBeVisible();
  const before = await page.getByText('How this number came about').count();
  const declinedBefore = await page.getByText('Pulse not done: the person declined').count();
  await beginRound(page);
  await page.goto(page.url().replace(/\/round.*$/, '/round'));
  for (const sign of ['Pulse', 'Breaths', 'Pressure']) await notDone(page, sign);
  await demo.kill();
  await page.getByRole('button', { name: 'Sign', exact: true }).tap();
  await expect(page.getByText(/waiting for the server/i).first()).toBeVisible();
  await demo.start();
  await page.reload();
  await expect(page.getByText(/waiting for the server/i)).toHaveCount(0, { timeout: 60_000 });
  // Once: the newest round has it, and no other is of the same moment.
  await expect(page.getByText('Pulse not done: the person declined')).toHaveCount(declinedBefore + 1);
  expect(await page.getByText('How this number came about').count()).toBe(before);
});
