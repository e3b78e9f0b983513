import { createHash, X509Certificate } from 'node:crypto';
import { connect } from 'node:tls';
import { type BrowserContext, chromium, type Page } from '@playwright/test';
import { beginRound, expect, expectAccessible, notDone, test, typeOnKeypad } from './evenfall.js';
import { EvenfallServer } from './server.js';

test.use({ isProgramKept: true });

/** A browser of its own that knows the server's authority, as a phone does after it was made to trust it. */
async function phoneTrusting(
  server: EvenfallServer,
  launchOptions: Parameters<typeof chromium.launch>[0] & object,
): Promise<{ context: BrowserContext; close: () => Promise<void> }> {
  const fetched = await fetch(`${server.network.plain}authority.crt`);
  const authority = new X509Certificate(Buffer.from(await fetched.arrayBuffer()));
  const key = (await shownTo(server, authority)).publicKey.export({ type: 'spki', format: 'der' });
  const known = createHash('sha256').update(key).digest('base64');
  const args = [...(launchOptions.args ?? []), `--ignore-certificate-errors-spki-list=${known}`];
  const browser = await chromium.launch({ ...launchOptions, args });
  const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, locale: 'en-GB' };
  return { context: await browser.newContext(phone), close: () => browser.close() };
}

/** The certificate that the server shows to whoever trusts its authority alone; throws where that is not enough. */
function shownTo(server: EvenfallServer, authority: X509Certificate): Promise<X509Certificate> {
  const { hostname, port } = new URL(server.network.secure);
  return new Promise((resolve, reject) => {
    const socket = connect({ host: hostname, port: Number(port), ca: authority.toString() }, () => {
      const shown = socket.getPeerX509Certificate();
      socket.destroy();
      if (shown === undefined) reject(new Error('no certificate'));
      else resolve(shown);
    });
    socket.on('error', reject);
  });
}

/** The ids of every entry that the server keeps of a person. */
async function entriesOf(page: Page, person: string): Promise<string[]> {
  const path = `/api/books/care/persons/${person}`;
  const { entries } = await page.evaluate(async (asked) => (await fetch(asked)).json(), path);
  return (entries as { id: string }[]).map(({ id }) => id);
}

/** How many entries of signed rounds wait on the device. */
function waitingEntries(page: Page): Promise<number> {
  return page.evaluate(() => {
    const { waiting } = JSON.parse(localStorage.getItem('evenfall') ?? '{}') as {
      waiting: { entries: unknown[] }[];
    };
    return waiting.reduce((sum, { entries }) => sum + entries.length, 0);
  });
}

/** Waits until the app of this build is kept on the device and its worker is in charge. */
async function keptOnDevice(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    const isInCharge = () => navigator.serviceWorker.controller !== null;
    while (!isInCharge()) await new Promise((resolve) => setTimeout(resolve, 50));
  });
}

test('a phone reaches the server by its network address: explained on plain HTTP, the app by TLS, a round without network', async ({
  launchOptions,
}) => {
  const server = new EvenfallServer({ demo: true, lan: true });
  await server.start();
  const { context, close } = await phoneTrusting(server, launchOptions);
  const page = await context.newPage();
  const broken: string[] = [];
  page.on('pageerror', (error) => broken.push(error.message));
  const foreign: string[] = [];
  const { hostname } = new URL(server.network.secure);
  page.on('request', (request) => {
    if (new URL(request.url()).hostname !== hostname) foreign.push(request.url());
  });

  await test.step('plain HTTP shows only the explanation', async () => {
    expect(hostname).not.toMatch(/^(127\.|localhost)/);
    await page.goto(`${server.network.plain}people`);
    await expect(page.getByText('This address is not encrypted')).toBeVisible();
    await expect(page.getByText(/^([0-9A-F]{2}:){31}[0-9A-F]{2}$/)).toBeVisible();
    await expectAccessible(page);
    const status = await page.evaluate(async () => (await fetch('/api/books/care/persons')).status);
    expect(status).toBe(403);
  });

  await test.step('its link leads to the app by TLS, which is kept on the device and can be installed', async () => {
    await page.getByRole('link', { name: server.network.secure }).first().tap();
    await expect(page.getByText('INVENTED').first()).toBeVisible();
    expect(page.url()).toBe(server.network.secure);
    const manifest = await page.evaluate(async () => (await fetch('/app.webmanifest')).json());
    expect(manifest).toMatchObject({ display: 'standalone', start_url: '/' });
    expect(manifest.name).toContain('INVENTED');
    await keptOnDevice(page);
    await expectAccessible(page);
  });

  await test.step('the cache holds the app, and no answer of the server', async () => {
    const kept = await page.evaluate(async () => {
      const paths: string[] = [];
      for (const name of await caches.keys()) {
        for (const { url } of await (await caches.open(name)).keys()) paths.push(new URL(url).pathname);
      }
      return paths;
    });
    expect(kept).toContain('/index.html');
    expect(
      kept.filter((path) => !/^\/(assets\/|icon|apple-touch-icon|app\.webmanifest|index\.html)/.test(path)),
    ).toEqual([]);
  });

  await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
  await page.locator('.person-line').first().tap();
  const person = page.url().slice(-36);
  const before = await entriesOf(page, person);
  let signed = 0;
  await beginRound(page);
  await page.getByText('15 s', { exact: true }).tap();

  await test.step('the network goes; the page is loaded again in the middle of the round', async () => {
    await context.setOffline(true);
    await page.reload();
    await page.getByText('15 s', { exact: true }).tap();
    await page.getByRole('button', { name: 'Start' }).tap();
    await expect(page.getByRole('group', { name: 'Keypad' })).toBeVisible({ timeout: 20_000 });
    await typeOnKeypad(page, '19');
    await expect(page.getByRole('status').getByText('76', { exact: true })).toBeVisible();
    await page.reload();
    await expect(page.getByText(/over 72, under 80/)).toBeVisible();
  });

  await test.step('it is signed without network, and waits on the device', async () => {
    await page.goto(`${server.network.secure}people/${person}/round`);
    await notDone(page, 'Breaths');
    await notDone(page, 'Pressure');
    await page.getByRole('button', { name: 'Sign', exact: true }).tap();
    await expect(page.getByText(/1 round signed on this device and not yet kept/)).toBeVisible();
    signed = await waitingEntries(page);
    await page.reload();
    await expect(page.getByText(/1 round signed on this device and not yet kept/)).toBeVisible();
  });

  await test.step('the network returns: it is charted, exactly once', async () => {
    await context.setOffline(false);
    await expect(page.getByText(/not yet kept/)).toHaveCount(0, { timeout: 60_000 });
    await page.reload();
    await expect(page.getByText('19 in 15 s').first()).toBeVisible();
    const kept = await entriesOf(page, person);
    const added = kept.filter((id) => !before.includes(id));
    expect(signed).toBeGreaterThan(0);
    expect(added).toHaveLength(new Set(added).size);
    expect(added).toHaveLength(signed);
  });

  expect(foreign.filter((url) => !url.startsWith('data:') && !url.startsWith('blob:'))).toEqual([]);
  expect(broken).toEqual([]);
  await close();
  await server.stop();
});
