import { expect, expectAccessible, notDone, test, typePressure } from './evenfall.js';

test('a round begins with who was there; five minutes of rest fill with other work, outlive a reload, and are charted', async ({
  page,
  demo,
}) => {
  await page.clock.install();
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Bram Oyelaran/ }).tap();
  await page.getByRole('button', { name: 'Take a round' }).tap();

  await test.step('consent, chaperone and interpreter are noted in one line', async () => {
    await page.getByText('Declined, chaperone or interpreter').tap();
    await page.getByRole('group', { name: 'Chaperone' }).getByText('present', { exact: true }).tap();
    await page.getByLabel('Who, or which language').fill('Sister Amadi (invented)');
    await expectAccessible(page);
    await page.getByRole('button', { name: 'They match; keep this' }).tap();
  });

  await test.step('the rest begins as the person sits down, and asks nobody to wait on its page', async () => {
    await page.getByRole('button', { name: /Sits down now: start 5 minutes of rest/ }).tap();
    await expect(page.getByText('Rests: about 5 minutes left')).toBeVisible();
    await expectAccessible(page);
    // The one way on is in sight, and says what was noted: with a fault nothing claims that all is well.
    const all = page.getByRole('button', { name: 'All as it should be so far: go on' });
    await expect(all).toBeInViewport({ ratio: 1 });
    await page.getByLabel('full bladder').check();
    await expect(all).toHaveCount(0);
    await expect(page.getByRole('button', { name: 'Keep, and go on' })).toBeInViewport({ ratio: 1 });
    await expectAccessible(page);
    // What was ticked and not kept yet outlives a reload.
    await page.reload();
    await expect(page.getByLabel('full bladder')).toBeChecked();
    await page.getByLabel('full bladder').uncheck();
    await page.getByRole('button', { name: 'All as it should be' }).tap();
    await expect(page.getByRole('button', { name: 'Start', exact: true })).toBeVisible();
    await page.clock.fastForward(61_000);
    await expect(page.getByText('Rests: about 4 minutes left')).toBeVisible();
  });

  await test.step('while a count runs it changes no word', async () => {
    await page.getByText('15 s', { exact: true }).tap();
    await page.getByRole('button', { name: 'Start', exact: true }).tap();
    await expect(page.getByRole('button', { name: 'Interrupted' })).toBeVisible();
    await expect(page.getByText(/Rests:/)).toHaveClass('unseen');
    await page.clock.fastForward(15_000);
    await page.getByLabel('Number counted').fill('18');
    await page.getByRole('button', { name: 'Done' }).tap();
  });

  await test.step('the arm is measured meanwhile; the cuff waits, and a reload gains not a second', async () => {
    await page.goto(page.url().replace(/\/round.*$/, '/round/pressure'));
    await page.getByRole('button', { name: 'The cuff is on' }).tap();
    await expect(page.getByText('The cuff goes up when the rest is over.')).toBeVisible();
    await expectAccessible(page);
    await page.clock.fastForward(30_000);
    await page.reload();
    await expect(page.getByText(/Rests: about [34] minutes left/)).toBeVisible();
    await page.clock.fastForward(180_000);
    await expect(page.getByText(/Rests: (about 1 minute|under a minute) left/)).toBeVisible();
    await page.clock.fastForward(60_000);
    await expect(page.getByLabel('Pulse lost at (mmHg)')).toBeVisible();
    await expect(page.getByText('Rested for 5 minutes, by the clock.')).toBeVisible();
  });

  await test.step('the chart says both', async () => {
    await typePressure(page, '132', 'Let the cuff go');
    await page.getByRole('button', { name: 'Already taken: type it' }).tap();
    await typePressure(page, '12876');
    await page.goto(page.url().replace(/\/round.*$/, '/round'));
    await expect(
      page.getByText(/Identified by name, birth date, number · agreed · chaperone present/),
    ).toBeVisible();
    await notDone(page, 'Breaths');
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Sign', exact: true }).tap();
    await expect(page.getByText('Rested for 5 minutes, by the clock.').first()).toBeVisible();
    await expect(page.getByText(/chaperone present · Sister Amadi/).first()).toBeVisible();
  });
});

test('a rest is not waited for with its reason kept, and who declines has nothing taken', async ({
  page,
  demo,
}) => {
  await page.clock.install();
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Juno Castellane/ }).tap();
  const person = page.url();
  await page.getByRole('button', { name: 'Take a round' }).tap();
  await page.getByRole('button', { name: 'They match' }).tap();
  await page.getByRole('button', { name: /Sits down now/ }).tap();
  await page.getByRole('button', { name: 'All as it should be' }).tap();
  await page.goto(`${person}/round/pressure`);
  await page.getByRole('button', { name: 'The cuff is on' }).tap();
  await page.clock.fastForward(60_000);
  await page.getByRole('button', { name: 'Do not wait …' }).tap();
  await page.getByRole('button', { name: 'Do not wait, for this reason' }).tap();
  await expect(page.locator('.field-wrong')).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'it is urgent' }).tap();
  await expect(page.getByLabel('Pulse lost at (mmHg)')).toBeVisible();
  await page.goto(`${person}/round`);
  await expect(page.getByText('Not as it should be: did not rest for five minutes')).toBeVisible();
  await expect(page.getByText(/Rest not waited for after .* of 5 minutes: it is urgent\./)).toHaveCount(1);

  // Now the same person says no to all of it.
  await page.getByRole('button', { name: 'Change', exact: true }).first().tap();
  await page.getByText('Declined, chaperone or interpreter').tap();
  await page.getByRole('group', { name: 'Do they agree?' }).getByText('declined', { exact: true }).tap();
  await page.getByRole('button', { name: 'They match; keep this' }).tap();
  await expect(page.getByText('Not done: the person declined')).toHaveCount(3);
  await page.getByRole('button', { name: 'Sign', exact: true }).tap();
  await expect(page.getByText(/Identified by name, number · declined/).first()).toBeVisible();
});
