import { expect, test } from './evenfall.js';
import { clockByHand, mmHg, readDebrief, untilBelow, VISITS } from './visits.js';

// The first one comes in by the keyboard.
for (const { scenario, title, cuff, toMmHg, written } of VISITS.slice(1)) {
  test(`by touch: ${title} comes in, is measured, written down, and the debrief is read`, async ({
    page,
    demo,
  }) => {
    await clockByHand(page);
    await page.goto(`${demo.address}/`);
    await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
    await page.goto(`${demo.address}/practice/${scenario}`);
    await page.getByRole('button', { name: /Come in/ }).tap();
    await page.getByRole('button', { name: 'Arm', exact: true }).tap();
    await page
      .locator('.room-cuff')
      .filter({ hasText: new RegExp(`^${cuff}\\b`) })
      .first()
      .tap();
    await page.getByRole('button', { name: 'Put the chest piece on' }).tap();
    await page.getByRole('button', { name: 'Gauge', exact: true }).tap();
    for (let stroke = 0; stroke < 40 && (await mmHg(page)) < toMmHg; stroke++) {
      await page.getByRole('button', { name: 'Squeeze the bulb' }).tap();
      await page.clock.runFor(400);
    }
    const peak = await mmHg(page);
    expect(peak).toBeGreaterThan(toMmHg - 5);
    const box = await page.getByRole('slider', { name: 'Valve' }).boundingBox();
    if (box === null) throw new Error('no valve');
    const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    await page.mouse.move(middle.x, middle.y - 40);
    await page.mouse.down();
    for (let angle = 0; angle <= 30; angle += 5) {
      const turn = (angle * Math.PI) / 180;
      await page.mouse.move(middle.x + 40 * Math.sin(turn), middle.y - 40 * Math.cos(turn));
    }
    await page.mouse.up();
    await untilBelow(page, peak - 60);
    await page.getByRole('button', { name: 'Let all air out' }).tap();
    await page.getByRole('button', { name: 'Write the pressure' }).tap();
    for (const key of written) await page.getByRole('button', { name: key, exact: true }).tap();
    await page.getByRole('button', { name: 'Keep this reading' }).tap();
    await page.getByRole('button', { name: 'Finish the visit' }).tap();
    await page.getByText('No, it can wait').tap();
    await page.getByRole('button', { name: /Keep the exercise/ }).tap();
    await expect(page.getByText('Kept. SIMULATED, in no chart.')).toBeVisible();
    await page.getByRole('link', { name: /See what each habit cost/ }).tap();
    await readDebrief(page, title, written);
  });
}
