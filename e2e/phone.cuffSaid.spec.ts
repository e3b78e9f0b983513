import { beginRound, expect, expectAccessible, test } from './evenfall.js';

// Bedside handbook 3.2: an arm of 15 in (38.1 cm) takes the large adult cuff.
test('the unit beside an arm is the one that was typed, and a cuff too small is still said in sight before it goes up', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Rufus Adeyemi/ }).tap();
  await beginRound(page);
  await page.goto(page.url().replace(/\/round.*$/, '/round/pressure'));
  await page.getByLabel(/^Circumference.*\(cm\)$/).fill('15 in');
  await expect(page.getByLabel(/^Circumference.*\(in\)$/)).toHaveValue('15 in');
  await page.getByLabel('Cuff used').selectOption({ label: 'Adult' });
  await page.getByRole('button', { name: 'The cuff is on' }).tap();
  const tooSmall = page.getByText(/too small for an arm of 38 cm/);
  await expect(page.getByRole('button', { name: 'Go on without feeling' })).toBeVisible();
  await expect(tooSmall).toBeInViewport();
  await page.getByRole('button', { name: 'Go on without feeling' }).tap();
  await expect(page.getByRole('button', { name: 'Pump up now' })).toBeVisible();
  await expect(tooSmall).toBeInViewport();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Pump up now' }).tap();
  await expect(tooSmall).toHaveCount(0);
});
