import { beginRound, expect, expectAccessible, notDone, test, typePressure } from './evenfall.js';

// Bedside handbook 3.16: severe without an emergency feature: rest, and repeat after 5 minutes. The clock of the page is moved by hand.
test('a recheck comes due: minutes count down on the start page, one touch leads to the round, and taking it ends it', async ({
  page,
  demo,
}) => {
  await page.clock.install();
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  const take = async (numbers: string) => {
    await page.goto(page.url().replace(/\/round.*$/, '/round/pressure'));
    await page.getByRole('button', { name: 'The cuff is on' }).click();
    await page.getByRole('button', { name: 'Go on without feeling' }).click();
    await page.getByRole('button', { name: 'Already taken: type it' }).click();
    await typePressure(page, numbers);
    await page.goto(page.url().replace(/\/round.*$/, '/round'));
    for (const sign of ['Pulse', 'Breaths']) await notDone(page, sign);
  };
  await test.step('a severe pressure is signed', async () => {
    await page
      .getByRole('link', { name: /Bram Oyelaran/ })
      .first()
      .click();
    await beginRound(page);
    await take('186104');
    await page.getByRole('button', { name: 'None of these' }).click();
    await page.getByRole('button', { name: 'No', exact: true }).click();
    await page.getByRole('button', { name: 'Sign', exact: true }).click();
    await expect(page.getByRole('heading', { name: 'Chart' })).toBeVisible();
  });

  const due = page.getByRole('region', { name: 'To act on, to look at again' });
  const line = due.getByRole('listitem').filter({ hasText: 'Bram Oyelaran' });
  await test.step('ahead: five minutes, counting down', async () => {
    await page.goto(`${demo.address}/`);
    await expect(line).toContainText(/in [45] minutes, from \d\d:\d\d on/);
    await expect(line).toContainText('severe');
    await expect(due.getByText('A page that is closed cannot ring')).toBeVisible();
    await expectAccessible(page);
    await page.clock.fastForward('03:00');
    await expect(line).toContainText(/in [12] minutes?, from/);
  });

  await test.step('due: since then, said to a screen reader too, and first in the list', async () => {
    await expect(due.getByRole('status')).not.toContainText('Bram Oyelaran');
    await page.clock.fastForward('03:00');
    await expect(line).toContainText(/due since \d\d:\d\d( \(1 minute\))?/);
    await expect(due.getByRole('status')).toContainText('Bram Oyelaran');
    await expectAccessible(page);
    await page.clock.fastForward('01:02:00');
    await expect(line).toContainText(/due since \d\d:\d\d \(1 hour\)/);
  });

  await test.step('one touch leads to the round, and the reading ends it', async () => {
    await line.getByRole('button', { name: /^Take it now/ }).click();
    await page.getByRole('button', { name: 'They match' }).click();
    await page.getByRole('button', { name: 'All as it should be' }).click();
    await page.goto(`${demo.address}/`);
    await expect(line.getByRole('button', { name: /^Go on with it/ })).toBeVisible();
    await line.getByRole('button', { name: /^Go on with it/ }).click();
    await take('12878');
    await page.getByRole('button', { name: 'Sign', exact: true }).click();
    await expect(page.getByRole('heading', { name: 'Chart' })).toBeVisible();
    await page.goto(`${demo.address}/`);
    await expect(page.getByRole('link', { name: /Bram Oyelaran/ })).toBeVisible();
    await expect(line).toHaveCount(0);
  });
});
