import { beginRound, expect, expectAccessible, test } from './evenfall.js';

const COVERED = 'Covered. Touch, or press any key, to come back.';

test('a cover hides the round, whatever runs goes on underneath, and the focus comes back', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Bram Oyelaran/ }).click();
  await beginRound(page);
  const sheet = page.getByRole('button', { name: COVERED });

  await test.step('Escape covers a running count; nothing of it can be read or reached', async () => {
    await page.getByText('15 s', { exact: true }).tap();
    await page.getByRole('button', { name: 'Start', exact: true }).tap();
    await expect(page.getByRole('button', { name: 'Interrupted' })).toBeVisible();
    await page.keyboard.press('Escape');
    await expect(sheet).toBeVisible();
    await expect(page.getByText('Bram Oyelaran')).toBeHidden();
    // What a screen reader is left with: one button.
    await expect(page.locator('body')).toMatchAriaSnapshot(`- button "${COVERED}"`);
    expect(await page.title()).toBe('Evenfall');
    const box = await sheet.boundingBox();
    expect(box).toEqual({ x: 0, y: 0, width: 390, height: 844 });
    await page.keyboard.press('Tab');
    await expect(sheet).toBeHidden();
    await expect(page.getByRole('button', { name: 'Interrupted' })).toBeVisible();
    await page.keyboard.press('Escape');
    await expectAccessible(page);
  });

  await test.step('the count ended on time underneath, and a touch brings it back', async () => {
    await page.waitForTimeout(15_000);
    await sheet.tap();
    await expect(page.getByText('Stop. How many?')).toBeVisible();
    // A touch on the sheet is no touch of what lies behind it.
    await expect(page.getByLabel('Number counted')).toHaveValue('');
  });

  await test.step('the corner covers too, a reload uncovers nothing, and a modifier alone is no key', async () => {
    await page.getByLabel('Number counted').focus();
    await page.keyboard.press('Escape');
    await page.keyboard.press('Shift');
    await expect(sheet).toBeVisible();
    await page.keyboard.press('7');
    await expect(page.getByLabel('Number counted')).toBeFocused();
    await expect(page.getByLabel('Number counted')).toHaveValue('');
    await page.getByRole('button', { name: 'Cover', exact: true }).tap();
    await page.reload();
    await expect(sheet).toBeVisible();
    await expect(page.getByText('Bram Oyelaran')).toBeHidden();
    await sheet.tap();
    await expect(page.getByText('Bram Oyelaran').first()).toBeVisible();
  });

  await test.step('every page of a round has it', async () => {
    const round = page.url().replace(/\/round.*$/, '/round');
    for (const step of ['', '/pulse', '/breaths', '/prepare', '/pressure', '/signs']) {
      await page.goto(`${round}${step}`);
      await page.getByRole('button', { name: 'Cover', exact: true }).tap();
      await expect(sheet).toBeVisible();
      await sheet.tap();
      await expect(page.getByText('Bram Oyelaran').first()).toBeVisible();
    }
  });
});
