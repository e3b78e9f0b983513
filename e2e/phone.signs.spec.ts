import { beginRound, expect, expectAccessible, notDone, test } from './evenfall.js';

test('facts are noted, shown before a reading, ended and taken for an error; the other signs are taken by them, signed and kept', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Tomas Varga/ }).click();
  await page.getByRole('link', { name: 'Facts: add' }).click();
  const known = page.getByLabel('What is known');
  const add = page.getByRole('button', { name: 'Add this fact' });
  const added = page.getByRole('status').getByText('Added.');

  await test.step('a fistula needs its side, and a day that has been; a reload loses nothing', async () => {
    await add.click();
    await expect(page.getByText('Choose what is known.')).toBeVisible();
    await known.selectOption('fistula');
    await page.getByLabel('From', { exact: true }).fill('2099-03-01');
    await page.getByLabel('In a few words').fill('forearm');
    await add.click();
    await expect(page.getByText('Choose one.')).toBeVisible();
    await expect(page.getByText(/^Choose a day that has been/)).toBeVisible();
    await expectAccessible(page);
    await page.reload();
    await expect(page.getByLabel('In a few words')).toHaveValue('forearm');
    await page.getByText('left', { exact: true }).click();
    await page.getByLabel('From', { exact: true }).fill('2026-03-01');
    await add.click();
    await expect(added).toBeVisible();
    const today = page.getByRole('region', { name: 'Today' });
    // Bedside handbook 3.15: never an arm with a fistula.
    await expect(today.getByText('Left arm: fistula, since 1 Mar 2026 — never use this arm')).toBeVisible();
  });

  await test.step('one is ended, one taken for an error: both can still be read', async () => {
    await known.selectOption('drip');
    await page.getByText('right', { exact: true }).click();
    await page.getByLabel('From', { exact: true }).fill('2026-03-01');
    await add.click();
    await expect(added).toBeVisible();
    await page.getByRole('button', { name: /It ends .*drip/ }).click();
    await page.getByLabel('The last day on which it holds', { exact: true }).fill('2026-02-28');
    await page.getByRole('button', { name: 'Keep this end' }).click();
    await expect(page.getByText('Choose a day not before the first one.')).toBeVisible();
    await page.getByLabel('The last day on which it holds', { exact: true }).fill('2026-03-03');
    await page.getByRole('button', { name: 'Keep this end' }).click();
    const ended = page.getByRole('region', { name: 'Ended' });
    await expect(ended.getByText(/drip or line, 1 Mar 2026 to 3 Mar 2026/)).toBeVisible();

    await known.selectOption('tremor');
    await add.click();
    await page.getByRole('button', { name: /It is an error .*Tremor/ }).click();
    await page.getByRole('button', { name: 'Mark it as entered in error' }).click();
    await expect(page.getByText('Choose a reason.')).toBeVisible();
    await page.getByLabel('Why is it an error?').selectOption('wrong-person');
    await page.getByRole('button', { name: 'Mark it as entered in error' }).click();
    await expect(page.getByRole('region', { name: 'Entered in error' }).getByText(/^Tremor/)).toBeVisible();
    await known.selectOption('oxygen-scale-2');
    await page.getByLabel('Who decided on scale 2').fill('Dr Example, invented');
    await add.click();
    await expect(
      page.getByRole('region', { name: 'Today' }).getByText(/^Saturation judged by scale 2/),
    ).toBeVisible();
    await expectAccessible(page);
  });

  const left = page.getByText('Left arm: fistula, since 1 Mar 2026 — never use this arm');
  await test.step('the chart shows what holds, and no round of an error', async () => {
    await page.getByRole('link', { name: 'Chart' }).click();
    await expect(left).toBeVisible();
    await expect(page.getByText('This round arrived without its signature.')).toHaveCount(0);
    await expectAccessible(page);
  });

  await test.step('what is wrong is said beside its field, and what was typed outlives a reload', async () => {
    await beginRound(page);
    await page.goto(page.url().replace(/\/round.*$/, '/round/signs'));
    await expect(left).toBeVisible();
    for (const sign of ['Temperature', 'Oxygen saturation'])
      await page.locator('summary', { hasText: sign }).click();
    await page.getByRole('button', { name: /Keep it.*Temperature/ }).click();
    await expect(page.getByText('Type a number.')).toBeVisible();
    await page.getByLabel('Temperature (°C)').fill('45.1');
    await page.getByText('in the ear').click();
    await page.getByRole('button', { name: /Keep it.*Temperature/ }).click();
    await expect(page.locator('.field-wrong')).toBeVisible();
    await expectAccessible(page);
    await page.reload();
    await expect(page.getByLabel('Temperature (°C)')).toHaveValue('45.1');
  });

  await test.step('a temperature with its flag, a saturation by scale 2, and what is typed and not kept is said', async () => {
    await page.getByLabel('Temperature (°C)').fill('38');
    await page.getByRole('button', { name: /Keep it.*Temperature/ }).click();
    await expect(page.getByText('38.0 °C, in the ear', { exact: true })).toBeVisible();
    // Bedside handbook 4.1, from memory: fever from 38.0.
    await expect(page.getByText(/in the range called fever/)).toBeVisible();
    await page.locator('summary', { hasText: 'Oxygen saturation' }).click();
    await expect(
      page.getByText('Judged by scale 2, 88 to 92 %. Decided by Dr Example, invented.'),
    ).toBeVisible();
    await page.getByLabel('Saturation (%)').fill('90');
    await page.getByRole('link', { name: 'Round', exact: true }).click();
    await expect(page.getByText(/^Typed and not kept: Oxygen saturation/)).toBeVisible();
    await page.goto(page.url().replace(/\/round.*$/, '/round/signs'));
    await page.getByText('air', { exact: true }).click();
    await page.getByRole('button', { name: /Keep it.*Oxygen/ }).click();
    await expect(page.getByText('90 % on air', { exact: true })).toBeVisible();
    // Bedside handbook 4.3, from memory: a line of 100 mm.
    await page.locator('summary', { hasText: /^Pain/ }).click();
    await page.getByText('on a line', { exact: true }).click();
    await page.getByLabel('Mark on the line, mm').fill('101');
    await page.getByRole('button', { name: /Keep it.*Pain/ }).click();
    await expect(page.locator('.field-wrong')).toContainText('100');
    await page.getByLabel('Mark on the line, mm').fill('47');
    await page.getByRole('button', { name: /Keep it.*Pain/ }).click();
    await expect(page.getByText('47 mm of 100', { exact: true })).toBeVisible();
    await expectAccessible(page);
  });

  await test.step('signed, they are in the record as they were read', async () => {
    await page.getByRole('link', { name: 'Round', exact: true }).click();
    for (const sign of ['Pulse', 'Breaths', 'Pressure']) await notDone(page, sign);
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Sign', exact: true }).click();
    await expect(page.getByRole('heading', { name: 'Chart' })).toBeVisible();
    const person = page.url().split('/people/')[1];
    const signs = async () => {
      const answer = await page.request.get(`${demo.address}/api/books/care/persons/${person}`);
      const { entries } = await answer.json();
      return entries
        .filter(({ kind }: { kind: string }) => kind === 'sign')
        .map(({ content }: { content: { evidence: { sign: object } } }) => content.evidence.sign);
    };
    await expect.poll(async () => (await signs()).length).toBe(3);
    expect(await signs()).toMatchObject([
      { of: 'temperature', celsius: 38, site: 'tympanic' },
      {
        of: 'oxygen-saturation',
        percent: 90,
        onOxygen: false,
        scale: 2,
        scalePrescriber: 'Dr Example, invented',
      },
      { of: 'pain', tool: 'visual-analogue', score: 4.7 },
    ]);
  });
});
