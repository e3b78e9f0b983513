import { beginRound, expect, test } from './evenfall.js';
import { EvenfallServer } from './server.js';

test.use({ isProgramKept: true });

const ADA = { id: '01950000-0000-7000-8000-00000000ada1', name: 'Ada Thorn (invented)' };
const FIRST = 'seven lanterns in a row';
const OWN = 'a lamp beside the green door';

test('a round that waited when the first account was made is sent once its signer signs in; signed out, nothing opens without network', async ({
  page,
  context,
}) => {
  const server = new EvenfallServer({ demo: false });
  await server.start();
  await page.goto(server.address);
  await page.evaluate(
    (agent) =>
      fetch('/api/agents', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(agent),
      }),
    ADA,
  );
  await page.reload();
  await page.getByLabel('Who is measuring?').selectOption({ label: ADA.name });
  await page.getByRole('link', { name: 'Add a person' }).tap();
  await page.getByLabel('Name', { exact: true }).fill('Hester Quillfeather (invented)');
  await page.getByLabel('Birth date').fill('1961-02-28');
  await page.getByRole('button', { name: 'Add this person' }).tap();
  await expect(page.getByRole('heading', { level: 1, name: 'Hester Quillfeather (invented)' })).toBeVisible();

  // Out of reach a round is signed: it waits on the device.
  await page.goto(server.address);
  await page.route('**/api/entries', (route) => route.abort());
  await page.getByRole('link', { name: 'Type a set' }).tap();
  await page.getByLabel(/Pressure and pulse/).fill('132/84');
  await page.getByLabel('Arm', { exact: true }).selectOption('Right');
  await page.getByRole('button', { name: 'Sign', exact: true }).tap();
  await expect(page.getByText(/waiting for the server/i).first()).toBeVisible();

  // Meanwhile the first account is made, for the person the charts name already.
  await server.runWith(
    `${FIRST}\n`,
    ...['account', 'add', '--name', ADA.name, '--sign-in', 'ada', '--role', 'owner,clinician'],
  );
  await page.unroute('**/api/entries');
  await page.goto(server.address);
  await page.getByLabel('Name to sign in with').fill('ada');
  await page.getByLabel('Pass phrase').fill(FIRST);
  await page.getByRole('button', { name: 'Sign in' }).tap();
  await page.getByLabel('The first pass phrase').fill(FIRST);
  await page.getByLabel('New pass phrase').fill(OWN);
  await page.getByLabel('The same again').fill(OWN);
  await page.getByRole('button', { name: 'Keep this pass phrase' }).tap();
  await page
    .getByRole('link', { name: /Hester Quillfeather/ })
    .first()
    .tap();
  await expect(page.getByRole('article').filter({ hasText: '132/84' })).toHaveCount(1);
  await expect(page.getByText(/waiting for the server/i)).toHaveCount(0);

  // A round is begun, then signed out: loaded again without network the device shows nothing of it.
  await beginRound(page);
  await page.goto(server.address);
  expect(await page.evaluate(() => sessionStorage.getItem('evenfall.tab'))).toContain('Hester');
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.getByRole('button', { name: 'Sign out' }).tap();
  await expect(page.getByRole('heading', { level: 1, name: 'Sign in' })).toBeVisible();
  expect(await page.evaluate(() => sessionStorage.getItem('evenfall.tab'))).toBeNull();
  await context.setOffline(true);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1, name: 'Sign in' })).toBeVisible();
  await expect(page.getByText('Ada Thorn')).toHaveCount(0);
  await context.setOffline(false);
  await server.stop();
});
