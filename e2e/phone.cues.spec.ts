import { beginRound, expect, expectAccessible, test, unfold } from './evenfall.js';

declare global {
  interface Window {
    heard: number[];
    locks: { asked: number; released: number };
  }
}

test('a count is silent unless a tick was chosen; the screen stays awake; a slip is put back in one step', async ({
  page,
  demo,
}) => {
  // What the page asks of the device, counted: sounds, and the screen to stay awake.
  await page.addInitScript(() => {
    window.heard = [];
    window.locks = { asked: 0, released: 0 };
    window.AudioContext = class extends AudioContext {
      override createOscillator() {
        window.heard.push(performance.now());
        return super.createOscillator();
      }
    };
    const lock = { release: async () => void window.locks.released++ };
    Object.defineProperty(navigator, 'wakeLock', {
      value: {
        request: async () => {
          window.locks.asked++;
          return lock;
        },
      },
    });
  });
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Edda Rook/ }).tap();
  await beginRound(page);
  const heard = () => page.evaluate(() => window.heard.length);
  const count = async (beats: string) => {
    await page.getByText('15 s', { exact: true }).tap();
    await page.getByRole('button', { name: 'Start', exact: true }).tap();
    await expect(page.getByText('Stop. How many?')).toBeVisible({ timeout: 17_000 });
    await page.getByLabel('Number counted').fill(beats);
    await page.getByRole('button', { name: 'Done' }).tap();
  };

  await test.step('silent by default, with the screen awake while it runs', async () => {
    await page.getByText('15 s', { exact: true }).tap();
    await page.getByRole('button', { name: 'Start', exact: true }).tap();
    await expect.poll(() => page.evaluate(() => window.locks)).toEqual({ asked: 1, released: 0 });
    // A tab that comes back asks again, since the browser let go of the lock.
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await expect.poll(() => page.evaluate(() => window.locks.asked)).toBe(2);
    await expect(page.getByText('Stop. How many?')).toBeVisible({ timeout: 17_000 });
    await expect.poll(() => page.evaluate(() => window.locks.released)).toBeGreaterThan(0);
    await page.getByLabel('Number counted').fill('19');
    await page.getByRole('button', { name: 'Done' }).tap();
    expect(await heard()).toBe(0);
  });

  await test.step('what was removed is put back in one step, which says what comes back', async () => {
    await expect(page.getByText('76', { exact: true }).first()).toBeVisible();
    await page.getByRole('button', { name: 'Remove' }).tap();
    await expect(page.getByText('Removed.')).toBeVisible();
    await expect(page.getByText('76', { exact: true })).toHaveCount(0);
    await expectAccessible(page);
    await page.reload();
    await page.getByRole('button', { name: 'Put 76 back' }).tap();
    await expect(page.getByText('Put back: 76.')).toBeVisible();
    await page.goto(page.url().replace(/\/round.*$/, '/round'));
    await expect(page.getByRole('region', { name: 'Pulse' }).getByText('76', { exact: true })).toBeVisible();
  });

  await test.step('a tick at the start and at the stop once it was chosen, kept over a reload', async () => {
    await unfold(page, 'Pulse');
    await page.getByRole('region', { name: 'Pulse' }).getByRole('link', { name: 'Take another' }).tap();
    await page.getByText('Press Start at any moment').first().tap();
    await page.getByRole('group', { name: 'Start and stop are' }).getByText('a tick').tap();
    await expectAccessible(page);
    await page.reload();
    await count('18');
    expect(await heard()).toBe(2);
    const [start = 0, stop = 0] = await page.evaluate(() => window.heard);
    expect((stop - start) / 1000).toBeCloseTo(15, 0);
  });
});
