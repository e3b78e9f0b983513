import type { Page } from '@playwright/test';
import { expect } from './evenfall.js';

/** What the needle shows: 300 mmHg over 300 degrees, zero at -150 (gaugeGeometry). */
export const mmHg = (page: Page): Promise<number> =>
  page
    .getByTestId('needle')
    .evaluate((one) => Number(/rotate\(([-\d.]+)/.exec(one.getAttribute('transform') ?? '')?.[1]) + 150);

/** From here on the clock of the page stands, and is put on by hand; what hands do is of that clock, and there is no other one, of a sound card. */
export async function clockByHand(page: Page): Promise<void> {
  await page.addInitScript(() => {
    Reflect.deleteProperty(window, 'AudioContext');
    Object.defineProperty(Event.prototype, 'timeStamp', { get: () => performance.now() });
  });
  await page.clock.install();
  await page.clock.pauseAt(Date.now() + 1000);
}

/** Lets the clock of the page go on by hand until the needle stands below: every picture of it is still drawn. */
export async function untilBelow(page: Page, wanted: number): Promise<void> {
  await expect(async () => {
    await page.clock.runFor(400);
    expect(await mmHg(page)).toBeLessThan(wanted);
  }).toPass({ intervals: [0], timeout: 60_000 });
}

/** Visits of the practice room beside those of `laptop.practice` and `phone.practice`: whose arm takes which cuff, how high it is pumped, what is written (invented). */
export const VISITS = [
  { scenario: 'hidden-shelf', title: 'Hidden shelf', cuff: 'adult', toMmHg: 190, written: '17896' },
  { scenario: 'wide-sleeve', title: 'Wide sleeve', cuff: 'large adult', toMmHg: 170, written: '13684' },
  { scenario: 'slow-hill', title: 'Slow hill', cuff: 'adult', toMmHg: 150, written: '11270' },
] as const;

/** Reads the debrief that is come to: of this person, with the truth beside what was written, and one thing to do differently. */
export async function readDebrief(page: Page, title: string, written: string): Promise<void> {
  await expect(page).toHaveURL(/\/practice\/exercises\//);
  await expect(page.getByRole('heading', { level: 1 })).toContainText(title);
  const main = page.getByRole('main');
  await expect(main).toContainText('SIMULATED');
  await expect(main).toContainText(String(Number(written.slice(0, 3))));
  await expect(page.getByRole('heading', { name: 'What moved your numbers' })).toBeVisible({
    timeout: 60_000,
  });
}

/** Goes on with the Tab key to what has a name, and no pointer is ever used. */
export async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let step = 0; step < 120; step++) {
    await page.keyboard.press('Tab');
    const found = await page.evaluate(() => {
      const one = document.activeElement;
      if (one === document.body) return '';
      return one?.getAttribute('aria-label') ?? one?.closest('label')?.textContent ?? one?.textContent ?? '';
    });
    if (name.test(found)) return;
  }
  throw new Error(`nothing called ${name} is reached`);
}
