import { expect, expectAccessible, notDone, test, typeOnKeypad } from './evenfall.js';

test('a person added, a pulse and breaths counted, signed, charted with their evidence, amended, exported, still there after kill -9', async ({
  page,
  clinic,
}) => {
  await page.goto(`${clinic.address}/`);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expectAccessible(page);
  await expect(page.getByText('INVENTED')).toHaveCount(0);
  // Bedside handbook 7.5: the caution stands where the numbers do.
  const caution = page.getByText(/does not diagnose.*local protocol.*emergency procedure/);
  await expect(caution).toBeVisible();

  await test.step('who is measuring, and a person with two identifiers', async () => {
    const addName = page.getByRole('button', { name: 'Add a name' });
    if (await addName.isVisible()) await addName.tap();
    await page.getByLabel('Name of whoever measures').fill('Wren Halloran');
    await page.getByRole('button', { name: 'Keep this name' }).tap();
    await page.getByRole('link', { name: 'Add a person' }).tap();
    await page.getByLabel('Name', { exact: true }).fill('Hester Quillfeather');
    await page.getByRole('button', { name: 'Add', exact: false }).last().tap();
    // One identifier is not enough: words beside the field, and nothing typed is lost.
    await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Hester Quillfeather');
    await expect(page.locator('[aria-invalid="true"]').first()).toBeVisible();
    await expectAccessible(page);
    await page.reload();
    await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Hester Quillfeather');
    await page.getByLabel(/number/i).fill('INV-77');
    await page.getByRole('button', { name: 'Add', exact: false }).last().tap();
    await expect(page.getByRole('heading', { name: 'Hester Quillfeather' })).toBeVisible();
    await expectAccessible(page);
  });

  await test.step('the pulse: 19 beats in 15 s is 76, over 72 and under 80', async () => {
    await page
      .getByRole('link', { name: 'Take a round' })
      .or(page.getByRole('button', { name: 'Take a round' }))
      .tap();
    await expect(page.getByText('Let the person say who they are')).toBeVisible();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'They match' }).tap();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'All as it should be' }).tap();
    await page.getByText('15 s', { exact: true }).tap();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Start' }).tap();
    await expectAccessible(page);
    await expect(page.getByRole('group', { name: 'Keypad' })).toBeVisible({ timeout: 20_000 });
    await expectAccessible(page);
    await typeOnKeypad(page, '19');
    await expect(page.getByRole('status').getByText('76', { exact: true })).toBeVisible();
    await expect(page.getByText(/over 72, under 80/)).toBeVisible();
    await expectAccessible(page);
  });

  await test.step('a reload in the middle loses nothing', async () => {
    await page.reload();
    await expect(page.getByText(/over 72, under 80/)).toBeVisible();
  });

  await test.step('the breaths, silently, for a full minute', async () => {
    await page.getByRole('link', { name: 'Go on' }).tap();
    // The screen looks like the pulse screen: no large word says what is watched.
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toMatch(/^Hester Quillfeather/);
    await expect(page.getByText('Second count')).toBeVisible();
    await expect(page.locator('.measure-stage')).not.toContainText(/breath/i);
    await page.getByText('Tap', { exact: true }).tap();
    await expect(page.locator('.measure-stage')).not.toContainText(/breath/i);
    await page.getByText('Count', { exact: true }).tap();
    await page.getByRole('button', { name: 'Start' }).tap();
    await expect(page.getByRole('group', { name: 'Keypad' })).toBeVisible({ timeout: 70_000 });
    await typeOnKeypad(page, '16');
    // The pressure comes next; here it is not taken.
    await page.getByRole('link', { name: 'Go on' }).tap();
    await expect(page.getByRole('button', { name: 'The cuff is on' })).toBeVisible();
    await page.getByRole('link', { name: 'Round' }).tap();
    await notDone(page, 'Pressure');
  });

  await test.step('review and sign', async () => {
    await expect(page.getByRole('region', { name: 'Pulse' }).getByText('76')).toBeVisible();
    await expect(
      page.getByRole('region', { name: 'Breaths' }).getByText('16', { exact: true }),
    ).toBeVisible();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Sign', exact: true }).tap();
    await expect(page.getByRole('heading', { name: 'Chart' })).toBeVisible();
    await expect(page.getByText('19 in 15 s').first()).toBeVisible();
    await expect(page.getByText('Wren Halloran, clinician').first()).toBeVisible();
    await expectAccessible(page);
  });

  await test.step('amend a typing slip; the old value stays readable', async () => {
    await page.getByText('How this number came about').first().tap();
    await expectAccessible(page);
    await page
      .getByRole('link', { name: /^Amend/ })
      .first()
      .tap();
    await page.getByText('The count was mistyped').tap();
    await page.getByRole('textbox', { name: 'Number counted' }).fill('18');
    await page.getByLabel('Why is it amended?').selectOption({ label: 'typing slip' });
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Sign the amendment' }).tap();
    await expect(page.getByText('72', { exact: true }).first()).toBeVisible();
    await expect(page.locator('del, s').getByText('76').first()).toBeVisible();
    await expect(page.getByText(/Amended by Wren Halloran/).first()).toBeVisible();
    await expectAccessible(page);
  });

  await test.step('exported with the old and the new value', async () => {
    await page.getByRole('link', { name: 'Hand over' }).tap();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name: 'Download as a table (CSV)' }).tap(),
    ]);
    const rows = (await (await download.createReadStream()).toArray()).join('').trim().split('\r\n');
    expect(rows[0]).toMatch(/^schema,notice,person,name/);
    expect(rows.slice(1).filter((row) => row.includes(',pulse,'))).toHaveLength(2);
    await page.goBack();
  });

  await test.step('killed and started again, it is all there', async () => {
    await clinic.kill();
    await clinic.start();
    await page.reload();
    await expect(page.getByText('72', { exact: true }).first()).toBeVisible();
    await expect(page.getByText('18 in 15 s').first()).toBeVisible();
    expect(JSON.parse(await clinic.run('check', '--json'))).toMatchObject({ findings: [] });
  });
});
