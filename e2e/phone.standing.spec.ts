import type { Page } from '@playwright/test';
import { beginRound, expect, expectAccessible, test, typePressure } from './evenfall.js';

test.use({ viewport: { width: 390, height: 844 } });

async function onTheFeet(page: Page, minutes: string, numbers: string): Promise<void> {
  await page.getByRole('button', { name: 'Already taken: type it' }).click();
  await page.getByLabel('Minutes since standing up').fill(minutes);
  await typePressure(page, numbers);
}

/** Before the cuff goes up: with arm and cuff known, another posture goes straight on. */
async function pumping(page: Page): Promise<void> {
  const without = page.getByRole('button', { name: 'Go on without feeling' });
  await expect(without.or(page.getByRole('button', { name: 'Already taken: type it' }))).toBeVisible();
  if (await without.isVisible()) await without.click();
}

/** Two readings sitting, and the one lying: its numbers are typed. */
async function takenLying(page: Page, address: string, lying: string): Promise<void> {
  await page.goto(`${address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Rufus Adeyemi/ }).click();
  await beginRound(page);
  await page.goto(page.url().replace(/\/round.*$/, '/round/pressure'));
  await page.getByRole('button', { name: 'The cuff is on' }).click();
  await pumping(page);
  for (const numbers of ['150/90', '150/90']) {
    await page.getByRole('button', { name: 'Already taken: type it' }).click();
    await typePressure(page, numbers);
    const again = page.getByRole('button', { name: 'Take the next reading' });
    if (await again.isVisible()) await again.click();
  }
  await page.getByRole('button', { name: 'Also lying and standing' }).click();
  await page.getByRole('button', { name: 'Take it lying' }).click();
  await pumping(page);
  await page.getByRole('button', { name: 'Already taken: type it' }).click();
  await typePressure(page, lying);
}

test('on the feet: a fall that is met is said, unwell is acted on at once, and nobody is led on to stand', async ({
  page,
  demo,
}) => {
  await takenLying(page, demo.address, '150/90');
  await page.getByRole('button', { name: 'Take it standing' }).click();
  await pumping(page);
  // Bedside handbook 8, C065: a fall of 20 of the systolic.
  await onTheFeet(page, '1', '130/86');
  const fall = page.getByText(/^The pressure fell by 20 systolic and 4 diastolic at 1 min/);
  await expect(fall).toBeInViewport({ ratio: 1 });
  await expect(page.getByText(/a fall is not excluded/)).toHaveCount(0);
  const foot = await page.locator('.next-steps').boundingBox();
  const said = await fall.boundingBox();
  expect((said?.y ?? 0) + (said?.height ?? 0)).toBeLessThanOrEqual(foot?.y ?? 0);

  await page.getByText('yes', { exact: true }).click();
  await expect(
    page.getByRole('alert').getByText(/unwell on their feet, at 130\/86: lay the person down and stay/),
  ).toBeInViewport();
  const buttons = page.locator('.next-steps > *');
  await expect(buttons).toHaveText(['Take it lying']);
  await expect(buttons).toBeInViewport({ ratio: 1 });
  const stop = page.getByRole('link', { name: 'Stop: they lie down. To the review' });
  await expect(stop).not.toHaveClass(/button-first/);
  await expectAccessible(page);

  // Scrolled to the end, the buttons cover nothing.
  await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
  const last = await page.locator('.measure-shown > :nth-last-child(2)').boundingBox();
  expect((last?.y ?? 0) + (last?.height ?? 0)).toBeLessThanOrEqual(
    (await page.locator('.next-steps').boundingBox())?.y ?? 0,
  );

  await stop.click();
  await expect(page.getByText(/unwell on their feet, at 130\/86/).first()).toBeVisible();
  // Bedside handbook 3.15: at once, before any other sign and before it is signed (common practice).
  await expect(page.getByRole('link', { name: 'Go on with the pressure lying' })).toHaveClass(/button-first/);
  await expect(page.getByRole('button', { name: 'Sign', exact: true })).not.toHaveClass(/button-first/);

  // Back at the pressure they lie, and the reading that is asked for is one lying.
  await page.goto(page.url().replace(/\/round.*$/, '/round/pressure'));
  await expect(buttons).toHaveText(['Take it lying']);
  await expect(buttons.nth(0)).toHaveClass(/button-first/);
  await buttons.nth(0).click();
  await pumping(page);
  await expect(page.getByText(/lying on the back/).first()).toBeVisible();
});

test('a low systolic lying: nobody is led on to stand first, and it says why', async ({ page, demo }) => {
  await takenLying(page, demo.address, '86/50');
  const buttons = page.locator('.next-steps > *');
  // Bedside handbook 3.15: once more at the same place, at once, before anything else (common practice).
  await expect(buttons).toHaveText(['Take the next reading']);
  await buttons.nth(0).click();
  await expect(page.getByText('Right upper arm, lying on the back')).toBeVisible();
  await page.getByRole('button', { name: 'Already taken: type it' }).click();
  await typePressure(page, '86/50');
  await expect(page.getByText(/it was repeated: 86, then 86/).first()).toBeVisible();
  await expect(page.getByText(/below 90: do not stand this person up/)).toBeVisible();
  await expect(buttons.nth(0)).toHaveText('Go on to review');
  await expect(buttons.nth(1)).toHaveText('Take it standing');
  await expect(buttons.nth(1)).not.toHaveClass(/button-first/);

  // Whoever stands up all the same and stays low is laid down, and asked up by nobody.
  await buttons.nth(1).click();
  // The warning and what it is of go along, and standing up does not come first.
  const held = page.locator('.standing-held');
  await expect(held).toContainText('86/50');
  await expect(held.getByText(/below 90: do not stand this person up/)).toBeInViewport();
  await expect(held.getByRole('link', { name: 'Go on to review' })).toHaveClass(/button-first/);
  await expect(page.getByRole('button', { name: 'They stand up now' })).not.toHaveClass(/button-first/);
  await onTheFeet(page, '1', '84/50');
  await expect(
    page.getByRole('alert').getByText(/84 at 1 min, under 90: lay the person down/),
  ).toBeInViewport();
  await expect(buttons).toHaveText(['Take it lying']);
  // Nothing here asks for one more on their feet.
  await expect(page.getByRole('button', { name: 'One more reading' })).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'They stand up now' })).toHaveCount(0);

  // Lying, it is measured now, once more, and then nothing is asked of anybody up.
  await buttons.nth(0).click();
  await expect(page.getByText('The cuff may go up now.')).toBeVisible();
  await page.getByRole('button', { name: 'Already taken: type it' }).click();
  await typePressure(page, '88/50');
  await buttons.nth(0).click();
  await page.getByRole('button', { name: 'Already taken: type it' }).click();
  await typePressure(page, '92/50');
  await expect(page.getByText(/it was repeated: 84, then 92/).first()).toBeVisible();
  await expect(page.getByRole('button', { name: /^Take (it|the)/ })).toHaveCount(0);
});
