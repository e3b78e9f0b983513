import type { Page } from '@playwright/test';
import { expect, test } from './evenfall.js';
import { clockByHand, mmHg, readDebrief, tabTo, untilBelow, VISITS } from './visits.js';

/** Goes on with the Tab key to what has a name, and presses a key there. */
async function at(page: Page, name: RegExp, key: string): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press(key);
}

// The others come in by touch.
for (const { scenario, title, cuff, toMmHg, written } of VISITS.slice(0, 1)) {
  test(`by the keyboard: ${title} comes in, is measured, written down, and the debrief is read`, async ({
    page,
    demo,
  }) => {
    await clockByHand(page);
    await page.goto(`${demo.address}/`);
    await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
    await page.goto(`${demo.address}/practice/${scenario}`);
    await page.getByRole('button', { name: /Come in/ }).waitFor();
    await at(page, /Come in/, 'Enter');
    await expect(page.getByTestId('needle')).toBeVisible();
    await at(page, /^Arm$/, 'Enter');
    await at(page, new RegExp(`^${cuff}\\b`), 'Enter');
    await at(page, /Put the chest piece on/, 'Enter');
    await at(page, /Squeeze the bulb/, 'Shift');
    for (let stroke = 0; stroke < 40 && (await mmHg(page)) < toMmHg; stroke++) {
      await page.keyboard.press('Space');
      await page.clock.runFor(400);
    }
    const peak = await mmHg(page);
    expect(peak).toBeGreaterThan(toMmHg - 5);
    for (let step = 0; step < 7; step++) await page.keyboard.press('ArrowRight');
    await untilBelow(page, peak - 30);
    await page.keyboard.press('m');
    await untilBelow(page, peak - 60);
    await page.keyboard.press('r');
    await untilBelow(page, 4);
    await at(page, /^Write the pressure$/, 'Enter');
    // The first sound was touched: both are read back on the gauge.
    for (const mmHg of [written.slice(0, 3), written.slice(3)]) {
      await page.keyboard.type(mmHg);
      await page.keyboard.press('Enter');
    }
    await at(page, /^Finish the visit$/, 'Enter');
    // Two answers of one question: the arrow keys go between them.
    await at(page, /Yes, now/, 'ArrowDown');
    await at(page, /Keep the exercise/, 'Enter');
    await expect(page.getByText('Kept. SIMULATED, in no chart.')).toBeVisible();
    await at(page, /See what each habit cost/, 'Enter');
    await readDebrief(page, title, written);
  });
}
