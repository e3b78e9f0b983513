import type { Page } from '@playwright/test';
import { expect, expectAccessible, test } from './evenfall.js';

/** Tab until what has the focus is named so; fails if it cannot be reached. */
function tabbing(page: Page) {
  return async (name: RegExp) => {
    for (let presses = 0; presses < 80; presses += 1) {
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
}

test('by keyboard alone: a person chosen, a pulse tapped on the space bar, the round signed', async ({
  page,
  demo,
}) => {
  const tabTo = tabbing(page);
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

test('by keyboard alone: a whole round with a pulse counted, sounds marked on the space bar and a gauge stepped', async ({
  page,
  demo,
}) => {
  await page.clock.install();
  const tabTo = tabbing(page);
  const press = async (name: RegExp) => {
    await tabTo(name);
    await page.keyboard.press('Enter');
  };
  await page.goto(`${demo.address}/`);
  await expect(page.getByLabel('Who is measuring?')).toBeVisible();
  await tabTo(/Who is measuring/);
  await page.keyboard.type('Dr Ines');
  await press(/Juno Castellane/);
  await expect(page.getByRole('heading', { name: /Juno/ })).toBeVisible();
  await press(/Take a round/);
  await press(/They match, and agree/);
  await press(/Sits down now/);
  await press(/All as it should be/);

  await test.step('the pulse', async () => {
    await expect(page.getByRole('button', { name: 'Start', exact: true })).toBeVisible();
    await press(/^\s*Start\s*$/);
    await expect(page.getByRole('button', { name: 'Interrupted' })).toBeVisible();
    // Covered and back, both by key.
    await page.keyboard.press('Escape');
    await expect(page.getByRole('button', { name: /^Covered/ })).toBeFocused();
    await page.clock.runFor(60_100);
    await page.keyboard.press('Enter');
    await page.getByLabel('Number counted').waitFor();
    await tabTo(/Number counted/);
    await page.keyboard.type('72');
    await page.keyboard.press('Enter');
    await expect(page.getByRole('status').getByText('72', { exact: true })).toBeVisible();
  });

  await test.step('the breaths are not done, for a reason', async () => {
    await page.goto(page.url().replace(/\/round.*$/, '/round'));
    await page.getByRole('region', { name: 'Breaths' }).waitFor();
    await press(/Not done …/);
    await tabTo(/the person/);
    await page.keyboard.press('Space');
    await press(/Keep this reason/);
  });

  await test.step('the pressure, when the rest is over', async () => {
    await page.goto(page.url().replace(/\/round.*$/, '/round/pressure'));
    await page.getByRole('button', { name: 'The cuff is on' }).waitFor();
    await press(/^\s*The cuff is on\s*$/);
    await expect(page.getByText('The cuff goes up when the rest is over.')).toBeVisible();
    await page.clock.runFor(300_000);
    await expect(page.getByLabel('Pulse lost at (mmHg)')).toBeFocused();
    await page.keyboard.type('124');
    await page.keyboard.press('Enter');
    await page.clock.runFor(20_000);
    await tabTo(/Remember/);
    await page.keyboard.press('ArrowRight');
    await press(/Pump up now/);
    await expect(page.getByText('Pump up to 154')).toBeVisible();
    await page.clock.runFor(5_000);
    for (const [key, seconds] of [
      ['Space', 5],
      ['Enter', 24],
      ['Space', 1],
    ] as const) {
      await page.keyboard.press(key);
      await page.clock.runFor(seconds * 1000);
    }
    await expect(page.getByText('Valve opened · First sound · Last sound')).toBeVisible();
    await expectAccessible(page);
    await press(/Read the gauge/);
  });

  await test.step('the gauge is typed on and stepped by its keys, over a reload', async () => {
    await expect(page.getByRole('slider')).toBeFocused();
    await page.keyboard.type('142');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await expect(page.getByRole('slider', { name: 'Last sound, on the gauge' })).toBeFocused();
    await page.reload();
    await expect(page.getByRole('textbox', { name: 'First sound (mmHg)' })).toHaveValue('138');
    await expect(page.getByRole('slider', { name: 'Last sound, on the gauge' })).toBeFocused();
    for (let step = 0; step < 5; step += 1) await page.keyboard.press('PageDown');
    await page.keyboard.press('ArrowUp');
    await expect(page.getByRole('slider')).toHaveAttribute('aria-valuetext', '90 mmHg');
    await page.keyboard.press('Enter');
    await expect(page.getByRole('status').getByText('138/90', { exact: true })).toBeVisible();
    await expectAccessible(page);
  });

  await test.step('signed, with the times in the chart', async () => {
    await press(/Go on to review/);
    await page.getByRole('region', { name: 'Pulse' }).waitFor();
    await press(/^\s*Sign\s*$/);
    await expect(page.getByRole('heading', { name: 'Chart' })).toBeVisible();
    await expect(page.getByText('Times as they were taken.').first()).toBeVisible();
    await expectAccessible(page);
  });
});
