import { beginRound, expect, expectAccessible, test } from './evenfall.js';

// 1 lb is 0.45359237 kg, 1 in is 2.54 cm, degF = 1.8 degC + 32 (bedside handbook 4.4).
test('a unit behind the number or beside it is understood, asked for where only the other one can be, and kept as typed', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Rufus Adeyemi/ }).tap();
  await beginRound(page);
  await page.goto(page.url().replace(/\/round.*$/, '/round/signs'));
  await expect(page.getByText(/Which one is usual here, Preferences say/)).toBeVisible();
  for (const sign of ['Temperature', 'Weight', 'Height']) await page.getByText(sign, { exact: true }).tap();

  await test.step('99.1 can be no degrees Celsius: the refusal asks which, and one touch answers', async () => {
    const celsius = page.getByLabel('Temperature (°C)', { exact: true });
    await celsius.fill('99.1');
    await page.getByText('in the ear', { exact: true }).tap();
    await page.getByRole('button', { name: /Keep it.*Temperature/ }).tap();
    await expect(
      page.getByText(
        'Temperature (°C) can be read in more than one way (“99.1”): give 99.1 °F if that is what was read, else from 25 to 45 °C.',
      ),
    ).toBeVisible();
    await expectAccessible(page);
    await page.getByLabel('Unit of the temperature').selectOption({ label: '°F' });
    await page.getByRole('button', { name: /Keep it.*Temperature/ }).tap();
    await expect(page.getByText('37.3 °C, in the ear', { exact: true })).toBeVisible();
  });

  await test.step('a weight in pounds and a height in feet and inches, typed whole', async () => {
    await page.getByLabel('Weight (kg)', { exact: true }).fill('150 lb');
    await expect(page.getByLabel('Weight (lb)', { exact: true })).toHaveValue('150 lb');
    const unit = page.getByLabel('Unit of the weight');
    await expect(unit).toHaveValue('[lb_av]');
    await unit.selectOption({ label: 'kg' });
    await expect(page.getByLabel('Weight (kg)', { exact: true })).toHaveValue('150');
    await page.getByLabel('Weight (kg)', { exact: true }).fill('150 lb');
    await expect(unit).toHaveValue('[lb_av]');
    const weight = page.locator('details', { hasText: 'Weight' });
    await weight.getByText('measured', { exact: true }).tap();
    await page.getByRole('button', { name: /Keep it.*Weight/ }).tap();
    await expect(page.getByText('68.04 kg, measured', { exact: true })).toBeVisible();
    await expect(page.getByText('Typed as 150 lb')).toBeVisible();
    await page.getByLabel('Height (cm)', { exact: true }).fill('5 ft 6 in');
    await page.locator('details', { hasText: 'Height' }).getByText('stated', { exact: true }).tap();
    await page.getByRole('button', { name: /Keep it.*Height/ }).tap();
    await expect(page.getByText('167.6 cm, stated', { exact: true })).toBeVisible();
  });

  await test.step('opened again it shows the number and the unit that were typed', async () => {
    await page.getByRole('button', { name: /Change it.*68.04 kg/ }).tap();
    await expect(page.getByLabel('Weight (lb)', { exact: true })).toHaveValue('150');
    await expect(page.getByLabel('Unit of the weight')).toHaveValue('[lb_av]');
    await page.getByRole('button', { name: /Keep it.*Weight/ }).tap();
    await expect(page.getByText('68.04 kg, measured', { exact: true })).toBeVisible();
  });
});
