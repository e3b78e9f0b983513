import type { Page } from '@playwright/test';
import { beginRound, expect, test } from './evenfall.js';

/** Touches keys one after the other at the place where each stood before the first of them, as a thumb does. */
async function touchBlind(page: Page, keys: readonly string[]): Promise<void> {
  const middle = async (name: string) => {
    const box = await page.getByRole('button', { name, exact: true }).boundingBox();
    if (box === null) throw new Error(`no key ${name}`);
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  };
  const stood = new Map<string, { x: number; y: number }>();
  for (const key of new Set(keys)) stood.set(key, await middle(key));
  for (const key of keys) {
    const at = stood.get(key) ?? { x: 0, y: 0 };
    await page.touchscreen.tap(at.x, at.y);
    for (const [name, was] of stood) {
      const now = await middle(name);
      expect(Math.abs(now.y - was.y), `${name} after ${key}`).toBeLessThan(1);
    }
  }
}

test.use({ viewport: { width: 390, height: 844 } });

test('no key of the pressure moves between two touches: by feel, heard with the line how far to pump, and after a refusal', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Bram Oyelaran/ }).click();
  await beginRound(page);
  await page.goto(page.url().replace(/\/round.*$/, '/round/pressure'));
  await page.getByRole('button', { name: 'The cuff is on' }).tap();

  await page.getByRole('button', { name: 'Let the cuff go' }).tap();
  await expect(page.locator('#felt-wrong')).toBeVisible();
  await touchBlind(page, ['1', 'Rub out', '1', '5', '0']);
  await expect(page.getByLabel('Pulse lost at (mmHg)')).toHaveValue('150');
  await page.getByRole('button', { name: 'Let the cuff go' }).tap();

  await page.getByRole('button', { name: 'Pump up now' }).tap();
  await expect(page.getByText('Pump up to 180')).toBeVisible();
  await touchBlind(page, ['1', '4', '8', '9', '2']);
  await expect(page.getByLabel('Pressure (mmHg)')).toHaveValue('148/92');
  await expect(page.getByText('Pump up to 180')).toBeVisible();
  await page.getByLabel('Pressure (mmHg)').fill('80/120');
  await page.getByRole('button', { name: 'Keep this reading' }).tap();
  await expect(page.locator('#numbers-wrong')).toBeVisible();
  await touchBlind(page, ['Rub out', 'Rub out', 'Rub out', '6', '4']);
  await expect(page.getByLabel('Pressure (mmHg)')).toHaveValue('80/64');
});

test('no key of the typed set moves between two touches, though what must be done now comes up above it', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
  await page
    .getByRole('listitem')
    .filter({ hasText: 'Rufus Adeyemi' })
    .getByRole('link', { name: 'Type a set' })
    .tap();
  await touchBlind(page, ['1', '9', '2', '7', '8']);
  const four = page.getByRole('button', { name: '4', exact: true });
  const before = await four.boundingBox();
  await expect(
    page.getByRole('group', { name: 'Act now' }).or(page.locator('.act-now')).first(),
  ).toBeVisible();
  expect(Math.abs(((await four.boundingBox())?.y ?? 0) - (before?.y ?? 0))).toBeLessThan(1);
  await touchBlind(page, ['Rub out', 'Rub out', '7', '4']);
  await expect(page.getByLabel(/Pressure and pulse/)).toHaveValue('192/74');
});
