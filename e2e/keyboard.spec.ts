import { expect, expectAccessible, test } from './evenfall.js';

test('by keyboard alone: a person chosen, a pulse tapped on the space bar, the round signed', async ({
  page,
  demo,
}) => {
  /** Tab until what has the focus is named so; fails if it cannot be reached. */
  const tabTo = async (name: RegExp) => {
    for (let presses = 0; presses < 60; presses += 1) {
      await page.keyboard.press('Tab');
      const focused = page.locator(':focus');
      if ((await focused.count()) === 0) continue;
      const text = await focused.evaluate((element) => {
        const labels =
          'labels' in element ? [...((element.labels as NodeListOf<HTMLElement> | null) ?? [])] : [];
        const labelled = labels.map((label) => label.textContent).join(' ');
        return `${element.getAttribute('aria-label') ?? ''} ${labelled} ${element.textContent ?? ''}`;
      });
      if (name.test(text)) return;
    }
    throw new Error(`nothing named ${name} can be reached by the Tab key`);
  };

  await page.goto(`${demo.address}/`);
  await expect(page.getByLabel('Who is measuring?')).toBeVisible();
  await tabTo(/Who is measuring/);
  await page.keyboard.type('Dr Ines');
  await tabTo(/Edda Rook/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: /Edda Rook/ })).toBeVisible();
  await tabTo(/Take a round/);
  await page.keyboard.press('Enter');
  await tabTo(/They match/);
  await page.keyboard.press('Enter');
  await tabTo(/All as it should be/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Start' })).toBeVisible();

  // Choose tapping with the keys of a radio group.
  await tabTo(/Count/);
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('button', { name: 'Tap here' })).toBeVisible();
  await tabTo(/Tap here/);
  for (let beat = 0; beat < 12; beat += 1) {
    await page.keyboard.press('Space');
    await page.waitForTimeout(600);
  }
  await expect(page.getByRole('img', { name: '12 taps so far' })).toBeVisible();
  await tabTo(/^\s*Stop/);
  await page.keyboard.press('Enter');
  await expect(page.getByText(/Likely range/)).toBeVisible();
  await expectAccessible(page);

  await page.goto(page.url().replace(/\/round.*$/, '/round'));
  await expect(page.getByRole('region', { name: 'Breaths' })).toBeVisible();
  for (const _sign of ['Breaths', 'Pressure']) {
    await tabTo(/Not done …/);
    await page.keyboard.press('Enter');
    await tabTo(/the person/);
    await page.keyboard.press('Space');
    await tabTo(/Keep this reason/);
    await page.keyboard.press('Enter');
  }
  await tabTo(/^\s*Sign\s*$/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Chart' })).toBeVisible();
  await expect(page.getByText(/12 taps in/).first()).toBeVisible();
});
