import { beginRound, expect, expectAccessible, test } from './evenfall.js';

test.use({ isProgramKept: true });

/** Without the server, at a phone's size: what stays of the start page, of a round, and of readings from away. */
test('without the server the invented clinic stays marked, whom the device knows is listed, a round keeps its room, and readings are typed and signed', async ({
  page,
  context,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    while (navigator.serviceWorker.controller === null) await new Promise((then) => setTimeout(then, 50));
  });
  await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
  await page.getByLabel('Find a person').fill('Marit Solvang');
  const line = page.locator('.person-line').first();
  await line.tap();
  await expect(page.getByRole('heading', { name: 'Marit Solvang' })).toBeVisible();
  const person = page.url().slice(-36);
  await page.goBack();
  await page.getByLabel('Find a person').fill('Nils Okonjo');
  await expect(line).toContainText('Nils Okonjo');
  const other = (await line.getAttribute('href'))?.slice(-36);
  await page.goto(`${demo.address}/people/${person}`);
  await beginRound(page);
  await page.getByText('15 s', { exact: true }).tap();

  await test.step('the list is loaded again without network: the mark stays, and whom the tab knows', async () => {
    await context.setOffline(true);
    await page.goto(`${demo.address}/`);
    await expect(page.getByText('The server cannot be reached.').first()).toBeVisible();
    await expect(page.getByText('INVENTED: nobody here is real')).toBeVisible();
    await expect(page.getByText(/of whom a round or readings are under way/)).toBeVisible();
    await expect(page.getByRole('link', { name: /Marit Solvang/ })).toBeVisible();
    await expect(page.getByText('Nils Okonjo')).toHaveCount(0);
    await expectAccessible(page);
  });

  await test.step('a page of the round says it in one line, and leaves the room to the round', async () => {
    await page.goto(`${demo.address}/people/${person}/round/pulse`);
    const says = page.getByText('No server just now: go on, nothing is lost');
    await expect(says).toBeVisible();
    const box = await page.locator('.notice-line').boundingBox();
    // Two lines of text at most where a touch has its room: the box it stands for took over 200.
    expect(box?.height).toBeLessThanOrEqual(60);
    await expect(page.getByRole('button', { name: 'Try again' })).toBeHidden();
    await expectAccessible(page);
    await says.tap();
    await expect(page.getByRole('button', { name: 'Try again' })).toBeVisible();
  });

  const cell = page.locator('[data-row="0"][data-cell="0"]');
  await test.step('readings from away of somebody who is not known here stay open to typing', async () => {
    await page.goto(`${demo.address}/people/${other}/away/new`);
    await expect(page.getByText(/Who this is, is not known on this device/)).toBeVisible();
    await cell.fill('138');
    await page.reload();
    await expect(cell).toHaveValue('138');
    await expectAccessible(page);
  });

  await test.step('of somebody whom the list had, they are typed and signed, and wait', async () => {
    await context.setOffline(false);
    await page.goto(`${demo.address}/`);
    await expect(page.getByText('Nils Okonjo').first()).toBeVisible();
    await context.setOffline(true);
    await page.evaluate((path) => window.history.pushState(null, '', path), `/people/${other}/away/new`);
    await expect(page.getByText(/The chart of this person could not be fetched/)).toBeVisible();
    await expect(page.getByText('Nils Okonjo').first()).toBeVisible();
    await page.locator('[data-row="0"][data-cell="1"]').fill('88');
    await page.getByRole('button', { name: 'Sign', exact: true }).tap();
    await expect
      .poll(() => page.evaluate(() => JSON.parse(localStorage.getItem('evenfall') ?? '{}').waiting?.length))
      .toBe(1);
  });
});
