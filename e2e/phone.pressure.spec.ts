import type { Page } from '@playwright/test';
import { beginRound, expect, expectAccessible, notDone, test, typePressure } from './evenfall.js';

async function openPressure(page: Page, address: string, person: RegExp): Promise<void> {
  await page.goto(`${address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: person }).click();
  await beginRound(page);
  await page.goto(page.url().replace(/\/round.*$/, '/round/pressure'));
}

test('a pressure felt for, listened for, repeated until the rule is satisfied, signed and charted', async ({
  page,
  demo,
}) => {
  await openPressure(page, demo.address, /Bram Oyelaran/);

  await test.step('the cuff for the arm, by the scheme', async () => {
    const isOn = page.getByRole('button', { name: 'The cuff is on' });
    await expect(isOn).toBeInViewport({ ratio: 1 });
    await page.setViewportSize({ width: 320, height: 640 });
    await expect(isOn).toBeInViewport({ ratio: 1 });
    // What the keyboard comes to is not under the bar that stays in sight.
    await page.getByLabel('Cuff used').focus();
    const isSeen = await page.getByLabel('Cuff used').evaluate((field) => {
      const { left, bottom } = field.getBoundingClientRect();
      return field.contains(document.elementFromPoint(left + 8, bottom - 2));
    });
    expect(isSeen).toBe(true);
    await page.setViewportSize({ width: 390, height: 844 });
    await page.getByLabel(/Circumference/).fill('30');
    // Bedside handbook 3.2: 27 to 34 cm, adult, 16 x 30.
    await expect(page.getByText('For this arm: Adult, bladder 16 × 30 cm.')).toBeVisible();
    await page.getByLabel(/Circumference/).fill('300');
    await page.getByRole('button', { name: 'The cuff is on' }).click();
    await expect(page.locator('.field-wrong').first()).toBeVisible();
    await page.getByLabel(/Circumference/).fill('30');
    await page.getByLabel('Cuff used').selectOption({ label: 'Adult' });
    await expectAccessible(page);
    await page.getByRole('button', { name: 'The cuff is on' }).click();
  });

  await test.step('the pulse is lost at 132, so the cuff goes up to 162', async () => {
    await page.getByRole('button', { name: 'Let the cuff go' }).click();
    await expect(page.getByText('Type where the pulse was lost')).toBeVisible();
    await expectAccessible(page);
    await typePressure(page, '132', 'Let the cuff go');
    await expect(page.getByText('Pump up to 162')).toBeVisible();
    await expect(page.getByText(/^Wait \d+ seconds?:/)).toBeVisible();
    await expectAccessible(page);
  });

  await test.step('80/120 is refused beside the numbers, 152/94 is kept, and a reload loses nothing', async () => {
    await page.getByRole('button', { name: 'Already taken: type it' }).click();
    await typePressure(page, '80/120');
    await expect(page.locator('#numbers-wrong')).toBeVisible();
    await expectAccessible(page);
    for (let key = 0; key < 6; key += 1) await page.getByRole('button', { name: 'Rub out' }).click();
    const keys = page.getByRole('group', { name: 'Numbers' });
    for (const key of '152') await keys.getByRole('button', { name: key, exact: true }).click();
    await page.reload();
    await expect(page.getByLabel('Pressure (mmHg)')).toHaveValue('152');
    await typePressure(page, '94');
    await expect(page.getByRole('status').getByText('152/94', { exact: true })).toBeVisible();
    await expect(page.getByText('The next reading in')).toBeVisible();
    await expectAccessible(page);
  });

  await test.step('earlier readings are hidden until the new one is in', async () => {
    await page.getByRole('button', { name: 'Take the next reading' }).click();
    await page.getByRole('button', { name: 'Already taken: type it' }).click();
    await expect(page.getByText('152/94')).toHaveCount(0);
    await typePressure(page, '14690');
    await page.getByRole('button', { name: 'One more reading' }).click();
    await page.getByRole('button', { name: 'Already taken: type it' }).click();
    await typePressure(page, '14488');
  });

  await test.step('the round comes to 147/91, the mean of all three', async () => {
    await page.goto(page.url().replace(/\/round.*$/, '/round'));
    for (const sign of ['Pulse', 'Breaths']) await notDone(page, sign);
    const result = page.getByRole('region', { name: 'What the round comes to' });
    // Bedside handbook 8, C050; the demo’s clinic goes by ACC/AHA 2017.
    await expect(result.getByText(/147\/91/).first()).toBeVisible();
    await expect(page.getByText(/falls in/).first()).toBeVisible();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Sign', exact: true }).click();
    await expect(page.getByRole('heading', { name: 'Chart' })).toBeVisible();
    for (const numbers of ['152/94', '146/90', '144/88'])
      await expect(page.getByText(numbers).first()).toBeVisible();
    await expectAccessible(page);
  });
  expect(JSON.parse(await demo.run('check', '--json'))).toMatchObject({ findings: [] });
});

test('by feel alone there is one number, and sounds to zero keep three', async ({ page, demo }) => {
  await openPressure(page, demo.address, /Juno Castellane/);
  await page.getByRole('button', { name: 'The cuff is on' }).click();
  await page.getByRole('button', { name: 'By feel alone' }).click();
  await typePressure(page, '122');
  // Bedside handbook 3.4: 122/P, no diastolic, never a guess.
  await expect(page.getByRole('status').getByText('122/P', { exact: true })).toBeVisible();
  await expectAccessible(page);
  await page
    .getByRole('button', { name: /One more reading|Take the next reading/ })
    .first()
    .click();
  await page.getByRole('button', { name: 'Already taken: type it' }).click();
  await typePressure(page, '118/62/0');
  // Bedside handbook 3.7 and 8, C045: first sound, muffled, last sound.
  await expect(page.getByRole('status').getByText('118/62/0', { exact: true })).toBeVisible();
  await page.goto(page.url().replace(/\/round.*$/, '/round'));
  for (const sign of ['Pulse', 'Breaths']) await notDone(page, sign);
  await page.getByRole('button', { name: 'Sign', exact: true }).click();
  await expect(page.getByText('122/P').first()).toBeVisible();
  await expect(page.getByText('118/62/0').first()).toBeVisible();
});

test('lying, with arm and cuff known, goes straight on; feeling is offered and in nobody’s way', async ({
  page,
  demo,
}) => {
  await openPressure(page, demo.address, /Bram Oyelaran/);
  await page.getByRole('button', { name: 'The cuff is on' }).click();
  await typePressure(page, '132', 'Let the cuff go');
  const take = async (numbers: string) => {
    await page.getByRole('button', { name: 'Already taken: type it' }).click();
    await typePressure(page, numbers);
  };
  await take('118/76');
  await page.getByRole('button', { name: 'Also lying and standing' }).click();
  const lying = page.getByRole('button', { name: 'Take it lying' });
  const next = page.getByRole('button', { name: /Take the next reading|Take the other arm|Take it lying/ });
  for (let reading = 0; reading < 4; reading += 1) {
    await expect(next).toBeVisible();
    if (await lying.isVisible()) break;
    const isOther = (await next.textContent()) === 'Take the other arm';
    await next.click();
    if (isOther) {
      // Another arm is looked at before the cuff goes on it, and felt for.
      await page.getByRole('button', { name: 'The cuff is on' }).click();
      await typePressure(page, '132', 'Let the cuff go');
    }
    await take('118/76');
  }
  await lying.click();
  await expect(page.getByText(/lying on the back/)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Change arm, posture or cuff' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Pump up now' })).toBeInViewport({ ratio: 1 });
  await page.getByRole('button', { name: 'Feel first' }).click();
  await page.getByRole('button', { name: 'Go on without feeling' }).click();
  await expectAccessible(page);
  await take('116/76');
  await page.getByRole('button', { name: 'Take it standing' }).click();
  await expect(page.getByText(/arm, standing/)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Pump up now' })).toBeInViewport({ ratio: 1 });
});
