import { expect, expectAccessible, test, typeOnKeypad, typePressure, unfold } from './evenfall.js';

test('a round by its side ways: back to the rest, not done on the page of the sign, and every value of the review put right in its place', async ({
  page,
  demo,
}) => {
  await page.clock.install();
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Bram Oyelaran/ }).tap();
  await page.getByRole('button', { name: 'Take a round' }).tap();
  await page.getByRole('button', { name: 'They match, and agree' }).tap();
  await page.getByRole('button', { name: /Sits down now/ }).tap();
  await page.getByRole('button', { name: 'All as it should be' }).tap();
  const atRest = page.getByText('The cuff goes up when the rest is over.');
  const round = async () => page.goto(page.url().replace(/\/round.*$/, '/round'));

  await test.step('what the hand does at the start is said in plain words, each way with what it costs', async () => {
    const start = page.getByText('Press Start at any moment: the first beat after it counts as one.').first();
    await start.tap();
    const ways = page.getByRole('group', { name: 'How the clock starts' });
    // Bedside handbook 1.4: on a beat called zero half a beat too few on average, at any moment called zero a whole one.
    await expect(
      ways.getByText(/exactly on a beat.*counts as zero.*On average half a beat too few/),
    ).toBeVisible();
    await expect(ways.getByText(/at any moment.*counts as zero.*On average one beat too few/)).toBeVisible();
    await expect(ways.getByText(/at any moment.*counts as one\. On average neither/)).toBeVisible();
    await expectAccessible(page);
    await ways.getByText(/exactly on a beat.*counts as zero/).tap();
    await expect(page.getByRole('button', { name: 'Start on a beat' })).toBeVisible();
    await ways.getByText(/at any moment.*counts as one\./).tap();
  });

  await test.step('what is opened from the rest leads back to it', async () => {
    await page.goto(page.url().replace(/\/round.*$/, '/round/pressure'));
    await page.getByRole('button', { name: 'The cuff is on' }).tap();
    await expect(atRest).toBeVisible();
    await page.getByRole('link', { name: 'Other signs' }).tap();
    await page.reload();
    await page.getByRole('link', { name: 'Back to the pressure' }).tap();
    await expect(atRest).toBeVisible();
    await page.getByRole('link', { name: 'Other signs' }).tap();
    await page.getByRole('link', { name: 'Pressure', exact: true }).tap();
    await expect(atRest).toBeVisible();
    await page.getByRole('link', { name: 'Make ready' }).tap();
    await page.getByRole('button', { name: 'All as it should be' }).tap();
    await expect(atRest).toBeVisible();
    await page.getByRole('link', { name: 'Pulse' }).tap();
    await page.getByText('15 s', { exact: true }).tap();
    await page.getByRole('button', { name: 'Start', exact: true }).tap();
    await page.clock.runFor(15_100);
    await typeOnKeypad(page, '19');
    await page.getByRole('link', { name: 'Back to the pressure' }).tap();
    await expect(atRest).toBeVisible();
  });

  await test.step('breaths are not done, said where they would be taken; without a reason nothing is kept', async () => {
    await page.getByRole('link', { name: 'Breaths' }).tap();
    await page.getByRole('button', { name: 'Not done …' }).tap();
    // The reasons open in view, though the button stood at the foot of the page.
    await expect(page.getByText('Why was it not done?')).toBeInViewport();
    await expect(page.getByLabel('the person declined')).toBeFocused();
    await page.getByRole('button', { name: 'Keep this reason' }).tap();
    await expect(page.getByText('Choose a reason.')).toBeVisible();
    await expect(page.getByText('no arm may be used')).toHaveCount(0);
    await expect(page.locator('.measure-stage')).not.toContainText(/breath/i);
    await expectAccessible(page);
    await page.getByText('the person was away').tap();
    await page.getByRole('button', { name: 'Keep this reason' }).tap();
    const said = page.getByText('Not done: the person was away');
    await expect(said).toBeInViewport();
    await expect(said).toBeFocused();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Take this back' }).tap();
    await expect(said).toHaveCount(0);
    await page.getByRole('button', { name: 'Not done …' }).tap();
    await page.getByText('the person was asleep').tap();
    await page.getByRole('button', { name: 'Keep this reason' }).tap();
    await expect(page.getByText('Not done: the person was asleep')).toBeVisible();
    await page.getByRole('link', { name: 'Back to the pressure' }).tap();
    await expect(atRest).toBeVisible();
    await expect(page.getByRole('link', { name: 'Breaths' })).toHaveCount(0);
  });

  await test.step('a pressure marked in time', async () => {
    await page.clock.runFor(300_000);
    await typePressure(page, '132', 'Let the cuff go');
    await page.clock.runFor(20_000);
    await page.getByText('Mark each sound').tap();
    await page.getByRole('button', { name: 'Pump up now' }).tap();
    for (const ms of [6_000, 6_000, 23_000]) {
      await page.clock.runFor(ms);
      await page.getByRole('button', { name: /Touch/ }).tap();
    }
    await page.getByRole('button', { name: 'Read the gauge' }).tap();
    await page.getByRole('textbox', { name: 'Valve opened (mmHg)' }).fill('162');
    await page.getByRole('textbox', { name: 'First sound (mmHg)' }).fill('148');
    await page.getByRole('textbox', { name: 'Last sound (mmHg)' }).fill('92');
    await page.getByRole('button', { name: 'Keep this reading' }).tap();
    await expect(page.getByRole('status').getByText('148/92', { exact: true })).toBeVisible();
  });

  await test.step('after a reading on the feet it is asked how they felt: one touch for nothing', async () => {
    const posture = async (text: string) => {
      await page.getByRole('button', { name: 'Change arm, posture or cuff' }).first().tap();
      await page.getByText(text, { exact: true }).tap();
      await page.getByRole('button', { name: 'The cuff is on' }).tap();
    };
    await posture('lies on the back');
    await page.clock.runFor(70_000);
    await page.getByRole('button', { name: 'Already taken: type it' }).tap();
    await typePressure(page, '148/92');
    await expect(page.getByRole('group', { name: /unwell on their feet/ })).toHaveCount(0);
    await posture('stands');
    await page.clock.runFor(70_000);
    await page.getByRole('button', { name: 'Already taken: type it' }).tap();
    await page.getByLabel('Minutes since standing up').fill('1');
    await typePressure(page, '144/90');
    const felt = page.getByRole('group', { name: /unwell on their feet/ });
    await expect(felt.getByRole('radio', { checked: true })).toHaveCount(0);
    await felt.getByText('no', { exact: true }).tap();
    await expect(felt.getByLabel('no', { exact: true })).toBeChecked();
    await felt.getByText('yes', { exact: true }).tap();
    await expectAccessible(page);
  });

  const pulse = page.getByRole('region', { name: 'Pulse', exact: true });
  const pressure = page.getByRole('region', { name: 'Pressure', exact: true });
  await test.step('the count is put right from the review, with what was noticed; left alone it stands', async () => {
    await round();
    await expect(pulse.getByText('76', { exact: true })).toBeVisible();
    await unfold(page, 'Pulse');
    await expect(pulse.getByRole('img')).toBeVisible();
    await pulse.getByRole('link', { name: 'Also noticed' }).tap();
    await page.getByText('irregular', { exact: true }).tap();
    await round();
    await unfold(page, 'Pulse');
    await pulse.getByRole('link', { name: 'Change the number' }).tap();
    await expect(page.getByLabel('Number counted')).toHaveValue('19');
    await page.getByRole('button', { name: 'Leave it as it was' }).tap();
    await expect(pulse.getByText('76', { exact: true })).toBeVisible();
    await unfold(page, 'Pulse');
    await pulse.getByRole('link', { name: 'Change the number' }).tap();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Rub out' }).tap();
    await typeOnKeypad(page, '8');
    await expect(pulse.getByText('72', { exact: true })).toBeVisible();
    await expect(pulse.getByText('76', { exact: true })).toHaveCount(0);
    await unfold(page, 'Pulse');
    await expect(pulse.getByRole('link', { name: 'Change the number' })).toHaveCount(1);
    await expectAccessible(page);
  });

  await test.step('a number typed and not kept is told before the signature, with the way to it', async () => {
    const unkept = page.getByText(/^Typed and not kept: Pulse\./);
    await pulse.getByRole('link', { name: 'Change the number' }).tap();
    await page.getByRole('button', { name: 'Rub out' }).tap();
    await round();
    await expect(unkept).toBeVisible();
    await expectAccessible(page);
    await page.getByRole('link', { name: 'Go on with Pulse' }).tap();
    await page.getByRole('button', { name: 'Leave it as it was' }).tap();
    await expect(pulse.getByText('72', { exact: true })).toBeVisible();
    await expect(unkept).toHaveCount(0);
  });

  await test.step('what was read on the gauge is put right; when it was heard stands', async () => {
    await pressure.locator('summary').first().tap();
    await expect(pressure.getByText(/^The moments stay as they were marked/)).toBeVisible();
    await pressure
      .getByRole('link', { name: /^Change the numbers.*148\/92/ })
      .first()
      .tap();
    await expect(page.getByRole('textbox', { name: 'First sound (mmHg)' })).toHaveValue('148');
    await expect(page.getByText(/^\s*at 6(\.\d)? s$/)).toBeVisible();
    await expect(page.getByRole('button', { name: 'Change arm, posture or cuff' })).toHaveCount(0);
    await expectAccessible(page);
    await page.getByRole('textbox', { name: 'First sound (mmHg)' }).fill('146');
    await page.getByRole('button', { name: 'Keep this reading' }).tap();
    await expect(pressure.getByText('146/92', { exact: true })).toBeVisible();
    // One comes back to the reading, not to the top of the review.
    await expect(page.locator('.value-line', { hasText: '146/92' })).toBeFocused();
    await expect(page.locator('.value-line', { hasText: '146/92' })).toBeInViewport({ ratio: 1 });
    // No pulse was counted on the feet: nothing is said of its rise.
    await expect(page.getByText(/rise of the pulse for each mmHg/)).toHaveCount(0);
    // The one read lying stands as it was.
    await expect(pressure.getByText('148/92', { exact: true })).toHaveCount(1);
  });

  await test.step('a sign that was read is opened with all that was said of it, in the unit of this device', async () => {
    const other = page.getByRole('region', { name: 'Other signs' });
    await other.getByRole('link', { name: 'Measure' }).tap();
    await page.getByText('Temperature', { exact: true }).tap();
    await page.getByLabel('Temperature (°C)').fill('37.85');
    await page.getByText('in the ear', { exact: true }).tap();
    await page.getByRole('button', { name: /^Keep it.*Temperature/ }).tap();
    await expect(page.getByText('37.9 °C, in the ear', { exact: true })).toBeVisible();
    await page.getByRole('button', { name: /^Change it/ }).tap();
    await expect(page.getByLabel('Temperature (°C)')).toHaveValue('37.85');
    await page.getByRole('button', { name: 'Leave it as it was' }).tap();
    await round();
    await unfold(page, 'Other signs');
    await other.getByRole('link', { name: /^Change it/ }).tap();
    await expect(page.getByLabel('Temperature (°C)')).toHaveValue('37.85');
    await expect(page.getByLabel('in the ear', { exact: true })).toBeChecked();
    await expectAccessible(page);
    await page.getByLabel('Temperature (°C)').fill('37.25');
    await page.getByRole('button', { name: /^Keep it.*Temperature/ }).tap();
    await expect(other.getByText('37.3 °C, in the ear', { exact: true })).toBeVisible();
    await expect(other.getByText('37.9 °C')).toHaveCount(0);
    await expectAccessible(page);
  });

  await test.step('signed, the chart has the numbers put right, once each', async () => {
    await page.getByRole('button', { name: 'Sign', exact: true }).tap();
    await expect(page.getByRole('heading', { name: 'Chart' })).toBeVisible();
    await expect(page.getByText('18 in 15 s').first()).toBeVisible();
    await expect(page.getByText('19 in 15 s')).toHaveCount(0);
  });
});
