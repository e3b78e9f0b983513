import { expect, type Page } from '@playwright/test';

/** The steps of a full round, each as it stands on the screen when it is come to. */
export type RoundPlace =
  | 'identity'
  | 'make ready'
  | 'pulse ready'
  | 'pulse running'
  | 'pulse typing'
  | 'pulse refused'
  | 'pulse'
  | 'breaths ready'
  | 'breaths tapping'
  | 'breaths'
  | 'arm and cuff'
  | 'rest'
  | 'feel'
  | 'feel refused'
  | 'pump'
  | 'listen'
  | 'read back'
  | 'read back refused'
  | 'pressure'
  | 'next pressure'
  | 'other signs'
  | 'review'
  | 'signed';

/**
 * Takes a full round of somebody of the invented clinic, by the clock that is moved by hand (`page.clock.install` first),
 * and stops at each place. 21 beats in 15 s are 84 a minute; the pressure is 168/102, let down too fast.
 */
export async function walkRound(
  page: Page,
  address: string,
  person: string,
  at: (place: RoundPlace) => Promise<void>,
): Promise<void> {
  const press = (name: string | RegExp) =>
    page
      .getByRole('button', typeof name === 'string' ? { name, exact: true } : { name })
      .first()
      .click();
  const goOn = () => page.getByRole('link', { name: 'Go on', exact: true }).click();
  const keys = async (group: string, digits: string) => {
    for (const digit of digits)
      await page
        .getByRole('group', { name: group })
        .getByRole('button', { name: digit, exact: true })
        .click();
  };

  await page.goto(`${address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('list').getByRole('link', { name: person }).first().click();
  await press('Take a round');
  await expect(page.getByRole('button', { name: 'They match, and agree' })).toBeVisible();
  await at('identity');
  await press('They match, and agree');
  await press(/Sits down now/);
  await at('make ready');
  await press(/All as it should be/);

  await page.getByText('15 s', { exact: true }).click();
  await at('pulse ready');
  // From here on only the hand that moves the clock: a machine that is slow counts nothing with it.
  await page.clock.pauseAt((await page.evaluate(() => Date.now())) + 500);
  await press('Start');
  await page.clock.runFor(4_000);
  await at('pulse running');
  await page.clock.runFor(11_100);
  await expect(page.getByRole('group', { name: 'Keypad' })).toBeVisible();
  await at('pulse typing');
  await press('Done');
  await expect(page.locator('#typed-wrong')).toBeVisible();
  await at('pulse refused');
  await keys('Keypad', '21');
  await press('Done');
  await expect(page.getByRole('status').getByText('84', { exact: true })).toBeVisible();
  await at('pulse');
  await goOn();

  await expect(page.getByRole('button', { name: 'Start', exact: true })).toBeVisible();
  await at('breaths ready');
  await page.getByText('Tap', { exact: true }).click();
  for (let breath = 0; breath < 9; breath += 1) {
    await press(/^Tap here/);
    await page.clock.runFor(3_700 + ((breath % 3) - 1) * 250);
  }
  await at('breaths tapping');
  await press('Stop');
  await expect(page.getByText(/9 taps in/)).toBeVisible();
  await at('breaths');
  await goOn();

  await expect(page.getByRole('button', { name: 'The cuff is on' })).toBeVisible();
  await page.getByLabel(/Circumference/).fill('30');
  await at('arm and cuff');
  await press('The cuff is on');
  await expect(page.getByText('The cuff goes up when the rest is over.')).toBeVisible();
  await at('rest');
  await page.clock.runFor(300_000);
  await expect(page.getByRole('button', { name: 'Let the cuff go' })).toBeVisible();
  await at('feel');
  await press('Let the cuff go');
  await expect(page.locator('#felt-wrong')).toBeVisible();
  await at('feel refused');
  await keys('Numbers', '132');
  await press('Let the cuff go');
  await page.clock.runFor(20_000);
  await page.getByText('Mark each sound').click();
  await at('pump');
  await press('Pump up now');
  for (const ms of [6_000, 6_000, 20_000]) {
    await page.clock.runFor(ms);
    await page.keyboard.press('b');
  }
  await at('listen');
  await press('Read the gauge');
  await at('read back');
  await page.getByRole('textbox', { name: 'First sound (mmHg)' }).fill('168');
  await page.getByRole('radio', { name: /Last sound/ }).check();
  await press('Keep this reading');
  await expect(page.locator('.mark-row .field-wrong')).toBeVisible();
  await at('read back refused');
  await page.getByRole('textbox', { name: 'Last sound (mmHg)' }).fill('102');
  await press('Keep this reading');
  await expect(page.getByRole('status').getByText('168/102', { exact: true })).toBeVisible();
  await at('pressure');
  await press('Take the next reading');
  await page.clock.runFor(61_000);
  await at('next pressure');

  await page.clock.resume();
  await page.goto(page.url().replace(/\/round.*$/, '/round/signs'));
  await page.locator('summary', { hasText: 'Temperature' }).click();
  await page.locator('summary', { hasText: 'Pain' }).first().click();
  await at('other signs');
  await page.getByLabel('Temperature (°C)').fill('38');
  await page.getByRole('link', { name: 'Round', exact: true }).click();
  await expect(page.getByRole('region', { name: 'Pressure' })).toBeVisible();
  await at('review');
  await press('Sign');
  await expect(page.getByRole('heading', { name: 'Chart' })).toBeVisible();
  await at('signed');
}
