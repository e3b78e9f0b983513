import { expect, expectAccessible, test } from './evenfall.js';

test('a mark of error made by mistake is taken back: the value stands again, the story says all', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByRole('link', { name: /Tomas Varga/ }).click();
  await expect(page.getByText('Entered in error').first()).toBeVisible();
  const value = page.locator('.value', { hasText: 'Entered in error' });
  await value.getByText('How this number came about').click();
  await value.getByRole('link', { name: 'It was no error: put it back' }).click();
  await page.getByLabel('It was no error: it stands as it was').check();
  await page.getByLabel('Why is it amended?').selectOption({ label: 'wrong person' });
  await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Sign the amendment' }).click();
  await expect(page.getByRole('heading', { name: 'Chart' })).toBeVisible();
  await expect(page.getByText('Entered in error', { exact: true })).toHaveCount(0);
  await expect(page.getByText(/Marked as entered in error by/).first()).toBeAttached();
  await expect(page.locator('.standing-value').getByText('88').first()).toBeVisible();
});
