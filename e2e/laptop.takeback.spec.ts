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

test('a value that was taken at another time says so, and moves no other', async ({ page, demo }) => {
  await page.goto(`${demo.address}/`);
  const line = page.getByRole('link', { name: /Pia Lindqvist/ });
  await expect(line).toContainText('104');
  await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
  await line.click();
  const breaths = page.locator('.value', { hasText: 'Breaths' });
  await breaths.getByText('How this number came about').click();
  await breaths.getByRole('link', { name: 'Amend' }).click();
  await page.getByLabel('It was measured at another time').check();
  await page.getByLabel('Why is it amended?').selectOption({ label: 'wrong time' });
  await page.getByLabel('Measured at', { exact: true }).fill('2022-05-29T23:59');
  await page.getByRole('button', { name: 'Sign the amendment' }).click();
  await expect(page.getByText('That is before this person was born')).toBeVisible();
  await expectAccessible(page);
  await page.getByLabel('Measured at', { exact: true }).fill('2024-02-01T08:15');
  await page.getByRole('button', { name: 'Sign the amendment' }).click();
  await expect(breaths.getByText(/Measured 1 Feb 2024, 08:15, not .* as first signed/)).toBeVisible();
  await breaths.getByText('How this number came about').click();
  await expect(breaths.getByText(/given another time by .*: measured 1 Feb 2024, 08:15, not/)).toBeVisible();
  await expectAccessible(page);
  await page.goto(`${demo.address}/`);
  await expect(line).toContainText('104');
});

test('a second chart of one person is asked about first', async ({ page, demo }) => {
  await page.goto(`${demo.address}/people/new`);
  await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
  await page.getByLabel('Name', { exact: true }).fill('pia lindqvist');
  await page.getByLabel('Birth date').fill('2022-05-30');
  await page.getByRole('button', { name: 'Add this person' }).click();
  await expect(page.getByText('Somebody like this is here already')).toBeVisible();
  await expect(page.getByRole('link', { name: /Pia Lindqvist, born 30 May 2022/ })).toBeVisible();
  await expectAccessible(page);
  await page.getByLabel('Birth date').fill('1822-05-30');
  await page.getByRole('button', { name: 'Add this person' }).click();
  await expect(page.getByText('That birth date is before 1900')).toBeVisible();
  await page.getByRole('button', { name: 'Add all the same' }).click();
  await expect(page.getByRole('heading', { name: 'pia lindqvist' })).toBeVisible();
});
