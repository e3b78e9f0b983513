import { expect, expectAccessible, test } from './evenfall.js';

// DESIGN 2.3 and 2.5: the local value wins and its version is kept; nothing acknowledged is lost.
test('the protocol is changed, told apart, put off and put in force again, and no version of it is lost', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: 'Local protocol' }).click();
  await expect(page.getByText(/^In force: version 1, of .*, by .*\(invented\)/)).toBeVisible();
  const pumping = page.getByRole('region', { name: 'Pumping up' });
  const margin = page.getByLabel(/how far above the pressure at which the pulse is lost/);
  const put = page.getByRole('button', { name: 'Put this protocol in force' });

  await test.step('a wrong number is named beside its field and in the list, and its section stays open', async () => {
    await pumping.getByText('All rules of this section').click();
    await margin.fill('abc');
    await put.click();
    await page.getByRole('link', { name: /Pumping up: .*is not a number.*“abc”.*give a number/ }).click();
    await expect(margin).toBeFocused();
    await expect(pumping.getByText(/is not a number.*“abc”/)).toBeVisible();
    await expectAccessible(page);
    await margin.fill('25');
    await expect(margin).toBeVisible();
    await expect(pumping.getByText(/25 mmHg, in place of 30 mmHg/)).toBeVisible();
  });

  await test.step('what differs stands at the top once it is in force', async () => {
    await expect(put).toHaveClass(/button-first/);
    await put.click();
    await expect(page.getByText('It is in force from now on.')).toBeVisible();
    await expect(page.getByText('It is in force from now on.')).toBeInViewport();
    await expect(page.getByText('It is in force from now on.')).toBeFocused();
    await expect(put).toBeDisabled();
    const differs = page.getByRole('region', { name: 'What differs from the published rules' });
    const row = differs.getByRole('listitem').filter({ hasText: 'Pumping up' });
    await expect(row).toContainText('Published30 mmHg');
    await expect(row).toContainText('Here25 mmHg');
    await expect(row).toContainText('Source of the published valuecommon practice, no source');
    await expect(page.getByText(/^In force: version 2, of .*, by Wren Halloran/)).toBeVisible();
  });

  await test.step('a guideline stays chosen, and says what it set and what it says nothing of', async () => {
    const guideline = page.getByRole('combobox', { name: 'Start from one guideline' });
    await guideline.focus();
    await page.keyboard.press('Enter');
    const listed = page.getByRole('listbox', { name: 'Start from one guideline' });
    await expect(listed.getByRole('option', { name: /^AHA 2005/ })).toHaveText(/Cuff and arm/);
    await expectAccessible(page);
    await page.keyboard.type('ESC 2');
    await page.keyboard.press('Enter');
    await expect(guideline).toHaveText(/^ESC 2024/);
    await expect(guideline).toBeFocused();
    const said = page.getByText('ESC 2024 is set in these sections:').locator('..');
    await expect(said).toContainText('Categories: ESC 2024');
    await expect(said).toContainText(/stay what they were:.*When to act at once: ACC\/AHA 2017/);
    const home = page.getByRole('region', { name: 'Readings at home' }).getByRole('combobox').first();
    await home.click();
    const rules = page.getByRole('region', { name: 'Readings at home' }).getByRole('listbox').first();
    await expect(rules.getByRole('option', { name: /^ACC\/AHA 2017/ })).toHaveText(
      /the values that are in force now$/,
    );
    await page.keyboard.press('Escape');
    await expect(home).toHaveText(/^ESC 2024/);
    await put.click();
    await expect(page.getByText(/^In force: version 3/)).toBeVisible();
  });

  await test.step('going without is asked first, and nothing is lost by it', async () => {
    const without = page.getByRole('button', { name: 'Go without a protocol', exact: true });
    await without.click();
    const asked = page.getByRole('dialog', { name: 'Go without a protocol?' });
    await expect(asked).toContainText('no category and no score is shown');
    await expect(asked).toContainText('Alarms stay');
    await asked.getByRole('button', { name: 'Keep the protocol' }).click();
    await expect(page.getByText(/^In force: version 3/)).toBeVisible();
    await without.click();
    await asked.getByRole('button', { name: 'Yes, go without a protocol' }).click();
    await expect(page.getByText('No protocol is in force from now on.')).toBeVisible();
    await page.reload();
    await pumping.getByText('All rules of this section').click();
    await expect(margin).toHaveValue('25');
    await expectAccessible(page);
  });

  await test.step('each version is read, and one is put in force again under its own number', async () => {
    const versions = page.getByRole('region', { name: 'Versions of this place' });
    await expect(versions.getByRole('link')).toHaveText(['Version 3', 'Version 2', 'Version 1']);
    await versions.getByRole('link', { name: 'Version 2' }).click();
    await expect(page.getByRole('heading', { name: 'Protocol version 2' })).toBeVisible();
    const differs = page.getByRole('region', { name: 'What differs from the published rules' });
    await expect(differs.getByRole('listitem').filter({ hasText: 'Pumping up' })).toContainText(
      'Here25 mmHg',
    );
    await page.getByRole('link', { name: 'Local protocol' }).click();
    await versions.getByRole('link', { name: 'Version 1' }).click();
    await page.getByRole('button', { name: 'Put this version in force again' }).click();
    await page.getByRole('button', { name: 'Yes, put it in force' }).click();
    await expect(page.getByText('It is in force from now on.')).toBeVisible();
    await expect(page.getByText('This version is in force now.')).toBeVisible();
    await expectAccessible(page);
  });

  await test.step('a round of before leads from its chart to the version of its day', async () => {
    await page.goto(`${demo.address}/`);
    await page.getByRole('link', { name: /Marit Solvang/ }).click();
    await page
      .getByRole('link', { name: /^version 1, of/ })
      .first()
      .click();
    await expect(page.getByRole('heading', { name: 'Protocol version 1' })).toBeVisible();
  });
});
