import type { Page } from '@playwright/test';
import { beginRound, expect, expectAccessible, test, typePressure } from './evenfall.js';

declare global {
  interface Window {
    locksHeld: number;
  }
}

/** Counts the wake locks that the page holds, in place of the device's own. */
function countLocks(): void {
  window.locksHeld = 0;
  const request = () => {
    window.locksHeld += 1;
    return Promise.resolve({
      release: () => {
        window.locksHeld -= 1;
        return Promise.resolve();
      },
    });
  };
  Object.defineProperty(navigator, 'wakeLock', { value: { request } });
}

const minutesField = (page: Page) => page.getByLabel('Minutes since standing up');

/** Moves the clock on until a reading is due, and five seconds more: it stays due for half a minute. */
async function untilDue(page: Page, minutes: number): Promise<void> {
  const line = page.getByText(new RegExp(`^Reading at ${minutes} min: pump up in `));
  const [, min = '', sec = ''] = /in (\d+):(\d+)/.exec((await line.textContent()) ?? '') ?? [];
  await page.clock.runFor((60 * Number(min) + Number(sec) + 5) * 1000);
}

// Bedside handbook 3.14: pressure and pulse at 1 and 3 minutes on the feet.
test('a clock since standing up: begun by a touch, it says what is due, outlives a reload, and the reading keeps its minutes', async ({
  page,
  demo,
}) => {
  await page.addInitScript(countLocks);
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Rufus Adeyemi/ }).tap();
  await beginRound(page);
  await page.goto(page.url().replace(/\/round.*$/, '/round/pressure'));
  await page.getByText('lies on the back', { exact: true }).tap();
  await page.getByRole('button', { name: 'The cuff is on' }).tap();
  await page.getByRole('button', { name: 'Go on without feeling' }).tap();
  for (const numbers of ['150/90', '150/90']) {
    await page.getByRole('button', { name: 'Already taken: type it' }).tap();
    await typePressure(page, numbers);
    const again = page.getByRole('button', { name: 'Take the next reading' });
    if (await again.isVisible()) await again.tap();
  }
  await page.getByRole('button', { name: 'Also lying and standing' }).tap();
  await page.getByRole('button', { name: 'Take it standing' }).tap();
  const stands = page.getByRole('button', { name: 'They stand up now' });
  await expect(stands).toHaveClass(/button-first/);
  const pump = page.getByRole('button', { name: 'Pump up now' });
  await expect(pump).not.toHaveClass(/button-first/);

  await test.step('a touch too early is taken back', async () => {
    await stands.tap();
    await expect(page.getByText(/^On their feet 0:\d\d$/)).toBeVisible();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Stop this clock' }).tap();
    await expect(stands).toBeVisible();
  });

  await test.step('and a stop that was the slip too, with the time that went by', async () => {
    await page.getByRole('button', { name: /^They stood all along: 0:\d\d$/ }).tap();
    await expect(page.getByText(/^On their feet 0:\d\d$/)).toBeVisible();
    await page.getByRole('button', { name: 'Stop this clock' }).tap();
    await expectAccessible(page);
  });

  await page.clock.install();
  await page.reload();
  await stands.tap();
  await page.clock.runFor(33_000);
  await expect(page.getByText(/^On their feet 0:3\d$/)).toBeVisible();

  await test.step('a device that slept does not shorten the standing, and the screen says by which clock it goes on', async () => {
    await expect(page.getByText(/^This device slept meanwhile/)).toHaveCount(0);
    // Sleep as most devices have it: the wall clock goes on, the monotonic one stands.
    await page.clock.setSystemTime((await page.evaluate(() => Date.now())) + 10_000);
    await expect(page.getByText(/^On their feet 0:4\d$/)).toBeVisible();
    await expect(page.getByText(/^This device slept meanwhile/)).toBeVisible();
  });
  await expect(page.getByText(/^Reading at 1 min: pump up in 0:1\d\.$/)).toBeVisible();

  await test.step('a reload ends no standing, and the screen says by which clock it goes on', async () => {
    await page.reload();
    await expect(page.getByText(/^On their feet 0:[45]\d$/)).toBeVisible();
    await expect(page.getByText(/loaded anew by this device’s clock/)).toBeVisible();
  });

  await untilDue(page, 1);
  await expect(page.getByText('Reading at 1 min: pump up now.')).toBeVisible();
  await expect(pump).toHaveClass(/button-first/);
  await pump.tap();
  await page.clock.runFor(30_000);
  await expect(minutesField(page)).toHaveValue(/^1\.[1-4]$/);
  await expect(page.getByText(/^Counted\. Change it/)).toBeVisible();
  await typePressure(page, '146/88');

  await test.step('the next one is the third minute, on every page of the round', async () => {
    await expect(page.getByText(/^Reading at 3 min: pump up in 1:/)).toBeVisible();
    await expect.poll(() => page.evaluate(() => window.locksHeld)).toBeGreaterThan(0);
    await page.goto(page.url().replace('/pressure', '/pulse'));
    await expect(page.getByText(/^Reading at 3 min: pump up in 1:/)).toBeVisible();
    await expect.poll(() => page.evaluate(() => window.locksHeld)).toBeGreaterThan(0);
    await page.goto(page.url().replace('/pulse', '/pressure'));
  });
  await untilDue(page, 3);
  await page.getByRole('button', { name: 'Take it standing' }).tap();
  await expect(page.getByText('Reading at 3 min: pump up now.')).toBeVisible();

  await test.step('what was measured can be put right by hand', async () => {
    await page.getByRole('button', { name: 'Already taken: type it' }).tap();
    await expect(minutesField(page)).toHaveValue(/^3(\.[1-4])?$/);
    await minutesField(page).fill('2.8');
    await typePressure(page, '144/88');
  });
  await page.goto(page.url().replace(/\/round.*$/, '/round'));
  await expect(page.getByText(/146\/88/).first()).toBeVisible();
});
