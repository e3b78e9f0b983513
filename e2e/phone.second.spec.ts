import type { Browser, Page } from '@playwright/test';
import { beginRound, expect, expectAccessible, notDone, test, typePressure } from './evenfall.js';

/** A round of a person up to the moment before the cuff goes up, felt for at 132, with a second person to mark. */
async function readyForSecond(page: Page, address: string, person: RegExp): Promise<string> {
  await page.goto(`${address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: person }).click();
  await beginRound(page);
  await page.goto(page.url().replace(/\/round.*$/, '/round/pressure'));
  await page.getByRole('button', { name: 'The cuff is on' }).tap();
  await typePressure(page, '132', 'Let the cuff go');
  await page.getByText('A second person marks').tap();
  const code = page.locator('.second-code-letters');
  await expect(code).toHaveText(/^[A-Z2-9]{3} [A-Z2-9]{3}$/);
  return ((await code.textContent()) ?? '').toLowerCase();
}

/** A device of its own: nothing of the first one's browser is on it. */
async function otherDevice(browser: Browser, address: string): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true });
  const other = await context.newPage();
  await other.goto(`${address}/`);
  await other.getByRole('link', { name: 'Mark for somebody else' }).click();
  return other;
}

async function joinBy(other: Page, code: string): Promise<void> {
  await other.getByLabel('Code').fill(code);
  await other.getByRole('button', { name: 'Join' }).tap();
}

const touchPlace = (page: Page) => page.getByRole('button', { name: /^Touch|^Again/ });

test('a second person marks on another device; the gauge is read back here, and the chart says who marked', async ({
  page,
  browser,
  demo,
}) => {
  const code = await readyForSecond(page, demo.address, /Bram Oyelaran/);
  await expect(page.getByText('If you pump up now, you mark the sounds yourself.')).toBeVisible();
  await expectAccessible(page);
  const other = await otherDevice(browser, demo.address);

  await test.step('a wrong code is answered in words, the right one joins', async () => {
    await expect(other.getByRole('heading', { name: 'Mark for somebody else' })).toBeVisible();
    await expectAccessible(other);
    await joinBy(other, 'AAAAAA');
    await expect(other.getByText(/No run waits under this code/)).toBeVisible();
    await joinBy(other, code);
    await expect(touchPlace(other)).toBeVisible();
    await expect(page.getByText('The other device is ready')).toBeVisible();
    await expectAccessible(other);
  });

  await test.step('the device that marks knows nothing of the person nor of any reading', async () => {
    await expect(other.getByText(/Bram|Oyelaran|1[0-9]{2}\/|132|162/)).toHaveCount(0);
  });

  await test.step('what is touched before the cuff goes up is not of the run', async () => {
    await expect(other.getByText(/not going up yet/)).toBeVisible();
    await touchPlace(other).tap();
    await expect(other.getByText('1 touch so far')).toBeVisible();
    await page.getByRole('button', { name: 'Pump up now' }).tap();
    await expect(page.getByText('Pump up to 162')).toBeVisible();
    await expect(other.getByText('0 touches so far')).toBeVisible();
    await expect(page.getByText('0 touches so far')).toBeVisible();
    await expectAccessible(page);
  });
  await test.step('marked by touch, by a clicker and by the space bar, one of them without the network', async () => {
    await touchPlace(other).tap();
    await expect(page.getByText('1 touch so far')).toBeVisible();
    await other.waitForTimeout(6000);
    await other.context().setOffline(true);
    await other.keyboard.press('PageDown');
    await expect(other.getByText(/Not connected. What you mark is kept here/)).toBeVisible();
    await other.waitForTimeout(3000);
    // Nothing new comes here meanwhile, and that is said.
    await expect(page.getByText(/Nothing is heard of the other device/)).toBeVisible();
    await expect(page.getByText('1 touch so far')).toBeVisible();
    await other.context().setOffline(false);
    await expect(page.getByText('2 touches so far')).toBeVisible();
    await other.waitForTimeout(1000);
    await other.getByText('Code').first().click();
    await expect(other.getByText('All your touches have arrived.')).toBeVisible();
    await expect(page.getByText('3 touches so far: Valve opened · First sound · Last sound')).toBeVisible();
    // A touch too many is taken back there, and here with it.
    await other.waitForTimeout(400);
    await other.keyboard.press(' ');
    await expect(page.getByText(/4 touches so far/)).toBeVisible();
    await other.getByRole('button', { name: 'Take one back' }).tap();
    await expect(page.getByText(/3 touches so far/)).toBeVisible();
    // A touch on this device marks nothing.
    await page.getByRole('heading', { name: /Bram Oyelaran/ }).tap();
    await expect(page.getByText(/3 touches so far/)).toBeVisible();
    await expectAccessible(page);
  });

  await page.getByRole('button', { name: 'Read the gauge' }).tap();
  await expect(other.getByText(/That run is over; the next one is marked here too/)).toBeVisible();
  await expect(page.getByText(/agree (only )?within \d+ ms/)).toBeVisible();
  for (const [name, mmHg] of [
    ['Valve opened', '162'],
    ['First sound', '146'],
    ['Last sound', '118'],
  ] as const)
    await page.getByRole('textbox', { name: `${name} (mmHg)` }).fill(mmHg);
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Keep this reading' }).tap();
  await expect(page.getByRole('status').getByText('146/118')).toBeVisible();

  await test.step('the next reading needs no new code', async () => {
    await page
      .getByRole('button', { name: /Take the next reading|One more reading/ })
      .first()
      .tap();
    await expect(page.getByText('The other device is ready')).toBeVisible();
    await page.getByRole('button', { name: 'Pump up now' }).tap();
    await expect(other.getByText(/not going up yet/)).toHaveCount(0);
    for (const touches of [1, 2]) {
      await touchPlace(other).tap();
      await expect(page.getByText(new RegExp(`^${touches} touch`))).toBeVisible();
      await other.waitForTimeout(1200);
    }
    await page.getByRole('button', { name: 'Read the gauge' }).tap();
    await page.getByRole('textbox', { name: 'First sound (mmHg)' }).fill('140');
    await page.getByRole('textbox', { name: 'Last sound (mmHg)' }).fill('116');
    await page.getByRole('button', { name: 'Keep this reading' }).tap();
    await expect(page.getByRole('status').getByText('140/116')).toBeVisible();
  });

  await test.step('the chart keeps the times, and says that a second person marked them', async () => {
    await page.getByRole('link', { name: 'Round', exact: true }).click();
    for (const sign of ['Pulse', 'Breaths']) await notDone(page, sign);
    await page.getByRole('button', { name: 'No', exact: true }).tap();
    await page.getByRole('button', { name: 'Sign', exact: true }).tap();
    await expect(page.getByText('146/118').first()).toBeVisible();
    const story = page.locator('.whole-story').filter({ hasText: 'First sound 146' }).first();
    await story.locator('summary').click();
    await expect(
      story.getByText(/a second person on another device\. The clocks .* agree (only )?within \d+ ms/),
    ).toBeVisible();
    await expect(story.getByText(/First sound 146 at 6\.\d s/)).toBeVisible();
  });

  await test.step('with the readings the code is over', async () => {
    await expect(other.getByText('Nothing is marked for that device any more. Thank you.')).toBeVisible();
    await joinBy(other, code);
    await expect(other.getByText(/No run waits under this code/)).toBeVisible();
  });
  await other.context().close();
});

test('when the other device goes silent, whoever measures goes on alone and keeps what was marked', async ({
  page,
  browser,
  demo,
}) => {
  const code = await readyForSecond(page, demo.address, /Juno Castellane/);
  const other = await otherDevice(browser, demo.address);
  await joinBy(other, code);
  await expect(page.getByText('The other device is ready')).toBeVisible();
  await page.getByRole('button', { name: 'Pump up now' }).tap();
  await touchPlace(other).tap();
  await expect(page.getByText('1 touch so far')).toBeVisible();

  await test.step('a reload of the device that marks loses no touch', async () => {
    await other.waitForTimeout(800);
    await touchPlace(other).tap();
    await other.reload();
    await expect(other.getByText('2 touches so far', { exact: false })).toBeVisible();
    await expect(page.getByText(/2 touches so far/)).toBeVisible();
  });

  await other.context().setOffline(true);
  await other.waitForTimeout(500);
  await page.getByRole('button', { name: 'I mark from here on' }).tap();
  await page.waitForTimeout(1000);
  await page.keyboard.press('b');
  await expect(page.getByText('Valve opened · First sound · Last sound')).toBeVisible();
  // What the other one touches from now on is not of this run.
  await other.keyboard.press('b');
  await page.getByRole('button', { name: 'Read the gauge' }).tap();
  await other.context().setOffline(false);
  await expect(other.getByText(/1 touch of yours may have come too late/)).toBeVisible();
  for (const [name, mmHg] of [
    ['First sound', '128'],
    ['Last sound', '118'],
  ] as const)
    await page.getByRole('textbox', { name: `${name} (mmHg)` }).fill(mmHg);
  await page.getByRole('button', { name: 'Keep this reading' }).tap();
  await expect(page.getByRole('status').getByText('128/118')).toBeVisible();
  await page.goto(page.url().replace(/\/round.*$/, '/round'));
  for (const sign of ['Pulse', 'Breaths']) await notDone(page, sign);
  await page.getByRole('button', { name: 'No', exact: true }).tap();
  await page.getByRole('button', { name: 'Sign', exact: true }).tap();
  const story = page.locator('.whole-story').filter({ hasText: 'First sound 128' }).first();
  await story.locator('summary').click();
  await expect(
    story.getByText(/a second person on another device \(First sound\), the rest by whoever measured/),
  ).toBeVisible();
  await other.context().close();
});
