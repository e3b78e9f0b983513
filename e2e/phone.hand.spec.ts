import { expect, expectAccessible, test, typeOnKeypad, typePressure } from './evenfall.js';

test('a full round with one thumb: rest, pulse, breaths, a pressure marked in time, covered and reloaded in between, signed', async ({
  page,
  demo,
}) => {
  await page.clock.install();
  const goOn = () => page.getByRole('link', { name: 'Go on', exact: true }).tap();
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Bram Oyelaran/ }).tap();
  await page.getByRole('button', { name: 'Take a round' }).tap();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'They match, and agree' }).tap();
  await page.getByRole('button', { name: /Sits down now/ }).tap();
  await page.getByRole('button', { name: 'All as it should be' }).tap();

  await test.step('the pulse, 36 in 30 s', async () => {
    await page.getByText('30 s', { exact: true }).tap();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Start', exact: true }).tap();
    await page.clock.runFor(30_100);
    await typeOnKeypad(page, '36');
    await expect(page.getByRole('status').getByText('72', { exact: true })).toBeVisible();
    await expectAccessible(page);
    await goOn();
  });

  await test.step('the breaths, on a screen that looks like the one before', async () => {
    await expect(page.getByText('Second count')).toBeVisible();
    await page.getByRole('button', { name: 'Start', exact: true }).tap();
    await page.getByRole('button', { name: 'Cover', exact: true }).tap();
    await page.clock.runFor(60_100);
    await page.getByRole('button', { name: /^Covered/ }).tap();
    await typeOnKeypad(page, '15');
    await expect(page.getByRole('status').getByText('15', { exact: true })).toBeVisible();
    await goOn();
  });

  await test.step('the cuff goes up when the rest is over', async () => {
    await page.getByLabel(/Circumference/).fill('30');
    await page.getByRole('button', { name: 'The cuff is on' }).tap();
    await expect(page.getByText('The cuff goes up when the rest is over.')).toBeVisible();
    await page.clock.runFor(250_000);
    await typePressure(page, '132', 'Let the cuff go');
    await page.clock.runFor(20_000);
    await page.getByText('Mark each sound').tap();
    await page.getByRole('button', { name: 'Pump up now' }).tap();
    await page.clock.runFor(6_000);
    await page.getByRole('button', { name: /Touch/ }).tap();
    await page.clock.runFor(6_000);
    await page.getByRole('button', { name: /Touch/ }).tap();
    await page.clock.runFor(23_000);
    await page.getByRole('button', { name: /Touch/ }).tap();
    await page.getByRole('button', { name: 'Read the gauge' }).tap();
  });

  await test.step('the gauge is read back, over a reload', async () => {
    await page.getByRole('textbox', { name: 'First sound (mmHg)' }).fill('148');
    await page.reload();
    await expect(page.getByRole('textbox', { name: 'First sound (mmHg)' })).toHaveValue('148');
    await page.getByRole('textbox', { name: 'Valve opened (mmHg)' }).fill('162');
    await page.getByRole('textbox', { name: 'Last sound (mmHg)' }).fill('92');
    await page.getByRole('button', { name: 'Keep this reading' }).tap();
    await expect(page.getByRole('status').getByText('148/92', { exact: true })).toBeVisible();
    // 14 mmHg in 6 s and 56 in 23 s, at a pulse of 72: F = 1.94 above, 2.03 below, g = 1 (conventions, section 6), shown outwards.
    await expect(page.getByText(/systolic 147 to 15[01], diastolic 8[89] to 93/)).toBeVisible();
    await expectAccessible(page);
  });

  await test.step('reviewed, signed and charted with its times', async () => {
    await page.getByRole('link', { name: 'Go on to review' }).tap();
    await expect(page.getByText('Rested for 5 minutes, by the clock.')).toBeVisible();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Sign', exact: true }).tap();
    await expect(page.getByRole('heading', { name: 'Chart' })).toBeVisible();
    await expect(page.getByText('Times as they were taken.').first()).toBeVisible();
    await expectAccessible(page);
  });
  expect(JSON.parse(await demo.run('check', '--json'))).toMatchObject({ findings: [] });
});
