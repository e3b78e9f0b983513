import { beginRound, expect, expectAccessible, test } from './evenfall.js';

test('a pressure that is not done says why on its own step: in view, confirmed in words, taken back, and on to the next', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Rufus Adeyemi/ }).tap();
  await beginRound(page);
  await page.goto(page.url().replace(/\/round.*$/, '/round/pressure'));
  const ask = page.getByRole('button', { name: 'Not done …' });
  await ask.tap();
  await expect(page.getByText('Why was it not done?')).toBeInViewport();
  await expect(page.getByLabel('the person declined')).toBeFocused();
  await page.getByText('no equipment').tap();
  await page.getByRole('button', { name: 'Keep this reason' }).tap();
  const said = page.getByText(/^Not done: .*equipment/);
  await expect(said).toBeFocused();
  await expect(said).toBeInViewport();
  await expect(page.getByRole('button', { name: 'The cuff is on' })).toHaveCount(0);
  await expectAccessible(page);

  await page.reload();
  await expect(said).toBeVisible();
  await page.getByRole('button', { name: 'Take this back' }).tap();
  await expect(page.getByRole('button', { name: 'The cuff is on' })).toBeVisible();

  await ask.tap();
  await page.getByText('the person declined').tap();
  await page.getByRole('button', { name: 'Keep this reason' }).tap();
  await page.getByRole('button', { name: 'Go on', exact: true }).tap();
  await expect(page).toHaveURL(/\/round\/pulse$/);
});
