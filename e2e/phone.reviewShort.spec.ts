import {
  beginRound,
  expect,
  expectAccessible,
  test,
  typeOnKeypad,
  typePressure,
  unfold,
} from './evenfall.js';

/** As much of a full round as is read before it is signed. Source: decision, about two screens of a phone. */
const SCREENS = 2.2;

test('the review of a full round is read in about two screens: every flag stands, evidence when asked for, the key that signs in sight', async ({
  page,
  demo,
}) => {
  await page.clock.install();
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Bram Oyelaran/ }).click();
  await beginRound(page);
  await page.clock.pauseAt((await page.evaluate(() => Date.now())) + 500);
  for (const [seconds, number] of [
    ['30 s', '38'],
    ['60 s', '15'],
  ] as const) {
    await page.getByText(seconds, { exact: true }).tap();
    await page.getByRole('button', { name: 'Start', exact: true }).tap();
    await page.clock.runFor(61_000);
    await typeOnKeypad(page, number);
    await page.getByRole('link', { name: 'Go on', exact: true }).tap();
  }
  await page.getByLabel(/Circumference/).fill('30');
  await page.getByRole('button', { name: 'The cuff is on' }).tap();
  await typePressure(page, '110', 'Let the cuff go');
  await page.getByRole('button', { name: 'Already taken: type it' }).tap();
  await typePressure(page, '118/76');
  await page.getByRole('button', { name: 'Take the next reading' }).tap();
  await page.clock.runFor(61_000);
  await page.getByRole('button', { name: 'Already taken: type it' }).tap();
  await typePressure(page, '116/74');
  await page.clock.resume();
  await page.goto(page.url().replace(/\/round.*$/, '/round/signs'));
  for (const [sign, field, value, choice] of [
    ['Temperature', 'Temperature (°C)', '38.1', 'in the ear'],
    ['Oxygen saturation', 'Saturation (%)', '97', 'air'],
  ] as const) {
    await page.locator('summary', { hasText: sign }).click();
    await page.getByLabel(field).first().fill(value);
    await page.getByText(choice, { exact: true }).last().tap();
    await page.getByRole('button', { name: new RegExp(`Keep it.*${sign}`) }).tap();
  }
  await page.getByRole('link', { name: 'Round', exact: true }).tap();

  const sign = page.getByRole('button', { name: 'Sign', exact: true });
  await test.step('it is short, and can be signed from its top', async () => {
    await expect(
      page.getByRole('region', { name: 'Pressure' }).getByText('116/74', { exact: true }),
    ).toBeVisible();
    await expect(sign).toBeInViewport({ ratio: 1 });
    const end = await page.getByRole('heading', { name: 'Sign', exact: true }).boundingBox();
    expect(end?.y).toBeLessThan(SCREENS * 844);
    await expectAccessible(page);
  });

  await test.step('what is flagged stands there; what it came from is looked at when asked for', async () => {
    // Bedside handbook 4.1, from memory: fever from 38.0.
    await expect(page.getByText(/in the range called fever/)).toBeVisible();
    const pulse = page.getByRole('region', { name: 'Pulse', exact: true });
    await expect(pulse.getByText('76', { exact: true })).toBeVisible();
    await expect(pulse.getByText('38 in 30 s')).toBeHidden();
    await unfold(page, 'Pulse');
    await expect(pulse.getByText('38 in 30 s')).toBeVisible();
    await expect(pulse.getByRole('link', { name: 'Change the number' })).toBeVisible();
    for (const folded of await page.locator('details:not([open]) .flags').all())
      await expect(folded).toHaveCount(0);
    await expectAccessible(page);
  });

  await test.step('signed from where one is', async () => {
    await sign.tap();
    await expect(page.getByRole('heading', { name: 'Chart' })).toBeVisible();
  });
});

test('what a severe pressure asks stands first and nothing lies over it; once it is answered the key that signs is in sight', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Bram Oyelaran/ }).click();
  await beginRound(page);
  await page.goto(page.url().replace(/\/round.*$/, '/round/pressure'));
  await page.getByRole('button', { name: 'The cuff is on' }).tap();
  await typePressure(page, '150', 'Let the cuff go');
  await page.getByRole('button', { name: 'Already taken: type it' }).tap();
  await typePressure(page, '196/124');
  await page.goto(page.url().replace(/\/round.*$/, '/round'));
  const sign = page.getByRole('button', { name: 'Sign', exact: true });
  // Bedside handbook 3.16: from 180 or 120 on the emergency features are asked.
  const asks = page.getByRole('alert', { name: 'Ask now' });
  await expect(asks).toBeInViewport();
  await expect(sign).not.toBeInViewport();
  const isClear = await asks.evaluate((panel) => {
    const { left, width } = panel.getBoundingClientRect();
    return panel.contains(document.elementFromPoint(left + width / 2, window.innerHeight - 8));
  });
  expect(isClear).toBe(true);
  await asks.getByRole('button', { name: 'None of these' }).tap();
  await expect(asks).toHaveCount(0);
  await expectAccessible(page);
  for (const answer of await page.getByRole('button', { name: 'No', exact: true }).all()) await answer.tap();
  await page.evaluate(() => window.scrollTo(0, 0));
  await expect(sign).toBeInViewport({ ratio: 1 });
});
