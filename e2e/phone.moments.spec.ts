import type { Page } from '@playwright/test';
import { beginRound, expect, expectAccessible, notDone, test, typePressure } from './evenfall.js';

/** A round of a person up to the moment before the cuff goes up, felt for at 132. */
async function readyToPump(page: Page, address: string, person: RegExp): Promise<void> {
  await page.goto(`${address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: person }).click();
  await beginRound(page);
  await page.goto(page.url().replace(/\/round.*$/, '/round/pressure'));
  await page.getByRole('button', { name: 'The cuff is on' }).tap();
  await typePressure(page, '132', 'Let the cuff go');
  await page.getByText('Mark each sound').tap();
}

/** Puts a finger on the gauge where a pressure stands: 0 to 300 over 300 degrees, 150 at the top. */
async function dragTo(page: Page, mmHg: number): Promise<void> {
  const box = await page.getByRole('slider').boundingBox();
  if (box === null) throw new Error('no gauge');
  const place = (value: number) => {
    const angle = ((value - 150) * Math.PI) / 180;
    const radius = box.width * 0.35;
    return [
      box.x + box.width / 2 + radius * Math.sin(angle),
      box.y + box.height / 2 - radius * Math.cos(angle),
    ] as const;
  };
  await page.mouse.move(...place(mmHg + 40));
  await page.mouse.down();
  await page.mouse.move(...place(mmHg + 10), { steps: 4 });
  await page.mouse.move(...place(mmHg), { steps: 4 });
  await page.mouse.up();
}

test('moments marked by touch, the gauge read back by drag, step and typing, and only then the deflation judged', async ({
  page,
  demo,
}) => {
  await readyToPump(page, demo.address, /Bram Oyelaran/);
  await page.getByRole('button', { name: 'Pump up now' }).tap();
  await expect(page.getByText('Pump up to 162')).toBeVisible();
  await expectAccessible(page);
  const area = page.getByRole('button', { name: /Touch|Again/ });
  await area.tap();
  await page.waitForTimeout(6000);
  // Anywhere is good enough: here on the name of the person.
  await page.getByRole('heading', { name: /Bram Oyelaran/ }).tap();
  await page.waitForTimeout(5000);
  await page.keyboard.press('PageUp');
  await expect(page.getByText('Valve opened · First sound · Last sound')).toBeVisible();
  // Nothing is judged and no number of an earlier reading stands here.
  await expect(page.getByText(/mmHg a second|fast|slow/)).toHaveCount(0);
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Read the gauge' }).tap();

  await test.step('the first sound is dragged to on the face', async () => {
    await expect(page.getByRole('slider', { name: 'First sound, on the gauge' })).toHaveAttribute(
      'aria-valuetext',
      'not read yet',
    );
    await dragTo(page, 148);
    await expect(page.getByRole('slider')).toHaveAttribute('aria-valuetext', '148 mmHg');
    await expectAccessible(page);
  });

  await test.step('the last one is typed and stepped, and a reload loses neither value nor time', async () => {
    await page.getByRole('button', { name: 'Next: Last sound' }).tap();
    await page.getByRole('textbox', { name: 'Last sound (mmHg)' }).fill('116');
    await page.getByRole('button', { name: 'One mark higher' }).tap();
    await page.getByRole('radio', { name: /Valve opened/ }).check();
    await page.getByRole('textbox', { name: 'Valve opened (mmHg)' }).fill('162');
    await page.reload();
    await expect(page.getByRole('textbox', { name: 'First sound (mmHg)' })).toHaveValue('148');
    await expect(page.getByRole('textbox', { name: 'Last sound (mmHg)' })).toHaveValue('118');
    await expect(page.locator('.mark-row').getByText(/at 1[01]\.\d s/)).toBeVisible();
  });

  await page.getByRole('button', { name: 'Keep this reading' }).tap();
  await expect(page.getByRole('status').getByText('148/118', { exact: true })).toBeVisible();
  // 30 mmHg in 5 s is 6 a second: twice the fastest that is taught (bedside handbook 3.6).
  await expect(page.getByText(/On the whole the cuff fell by [56](\.\d)? mmHg a second/)).toBeVisible();
  await expectAccessible(page);

  await test.step('a slip goes back to the gauge as it was marked', async () => {
    await page.getByRole('button', { name: 'Change the numbers' }).tap();
    await expect(page.getByRole('textbox', { name: 'First sound (mmHg)' })).toHaveValue('148');
    await page.getByRole('button', { name: 'Keep this reading' }).tap();
  });

  await test.step('the chart keeps the moments with their times', async () => {
    await page.goto(page.url().replace(/\/round.*$/, '/round'));
    for (const sign of ['Pulse', 'Breaths']) await notDone(page, sign);
    await page.getByRole('button', { name: 'No', exact: true }).tap();
    await page.getByRole('button', { name: 'Sign', exact: true }).tap();
    await expect(page.getByText('148/118').first()).toBeVisible();
    await expect(page.getByText('Times as they were taken.').first()).toBeVisible();
  });
});

test('a run whose screen was left keeps its numbers, and says that its times are void', async ({
  page,
  demo,
}) => {
  await readyToPump(page, demo.address, /Juno Castellane/);
  await page.getByRole('button', { name: 'Pump up now' }).tap();
  await page.keyboard.press('b');
  await page.waitForTimeout(400);
  await page.keyboard.press('PageDown');
  await page.evaluate(() => {
    Object.defineProperty(document, 'visibilityState', { configurable: true, get: () => 'hidden' });
    document.dispatchEvent(new Event('visibilitychange'));
  });
  await expect(page.getByText(/its times are void/)).toBeVisible();
  await page.getByRole('textbox', { name: 'First sound (mmHg)' }).fill('130');
  await page.reload();
  await expect(page.getByText(/its times are void/)).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'First sound (mmHg)' })).toHaveValue('130');
  await expectAccessible(page);
  await page.getByRole('textbox', { name: 'First sound (mmHg)' }).fill('128');
  await page.getByRole('textbox', { name: 'Last sound (mmHg)' }).fill('76');
  await page.getByRole('button', { name: 'Keep this reading' }).tap();
  await expect(page.getByRole('status').getByText('128/76', { exact: true })).toBeVisible();
  await expect(page.getByText('No range: it needs the pulse and the times of the run.')).toBeVisible();
});
