import type { Page } from '@playwright/test';
import { test as base, expect, expectAccessible } from './evenfall.js';
import { EvenfallServer } from './server.js';

const ADA = {
  name: 'Ada Thorn (invented)',
  signIn: 'ada',
  first: 'seven lanterns in a row',
  own: 'a lamp beside the green door',
};
const SOL = {
  name: 'Sol Winter (invented)',
  signIn: 'sol',
  first: 'nine small boats at sea',
  own: 'three geese over the marsh',
};
const PIN = '4826';

/** A clinic of its own, in which people sign in. */
const test = base.extend<Record<never, never>, { signed: EvenfallServer }>({
  signed: [
    // biome-ignore lint/correctness/noEmptyPattern: the form Playwright asks for
    async ({}, use) => {
      const server = new EvenfallServer({ demo: false });
      await server.runWith(
        `${ADA.first}\n`,
        'account',
        'add',
        '--name',
        ADA.name,
        '--sign-in',
        ADA.signIn,
        '--role',
        'owner,clinician,supervisor',
      );
      await server.start();
      await use(server);
      await server.stop();
    },
    { scope: 'worker' },
  ],
});

async function enter(page: Page, signIn: string, phrase: string) {
  await page.getByLabel('Name to sign in with').fill(signIn);
  await page.getByLabel('Pass phrase').fill(phrase);
  await page.getByRole('button', { name: 'Sign in' }).tap();
}
async function chooseOwn(page: Page, first: string, own: string) {
  await page.getByLabel('The first pass phrase').fill(first);
  await page.getByLabel('New pass phrase').fill(own);
  await page.getByLabel('The same again').fill(own);
  await page.getByRole('button', { name: 'Keep this pass phrase' }).tap();
}
async function choosePin(page: Page, phrase: string) {
  await page.getByRole('link', { name: 'My account' }).tap();
  await page.getByLabel('New PIN').fill(PIN);
  const pins = page.getByRole('region', { name: 'PIN' });
  await pins.getByLabel('Pass phrase').fill(phrase);
  await pins.getByRole('button', { name: 'Keep this PIN' }).tap();
  await expect(page.getByText('The PIN is kept.')).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('link', { name: 'People' }).tap();
}
const heading = (page: Page, name: string) => page.getByRole('heading', { level: 1, name });

test('an owner signs in, makes an account for a learner, and the device goes from hand to hand by PIN', async ({
  page,
  signed,
}) => {
  // Nothing of the clinic stands on the page before somebody signs in, whatever address was typed.
  await page.goto(`${signed.address}/people/new`);
  await expect(heading(page, 'Sign in')).toBeVisible();
  await expectAccessible(page);
  await enter(page, ADA.signIn, 'not this one at all');
  await expect(page.getByText('Not the name and the pass phrase of one account.')).toBeVisible();
  await enter(page, ADA.signIn, ADA.first);
  await expect(heading(page, 'Choose your own pass phrase')).toBeVisible();
  await chooseOwn(page, ADA.first, 'too short');
  await expect(page.getByText(/12 to 128 characters/)).toBeVisible();
  await expectAccessible(page);
  await chooseOwn(page, ADA.first, ADA.own);
  await expect(heading(page, 'People')).toBeVisible();
  await expect(page.getByText(/Without a PIN/)).toBeVisible();
  await choosePin(page, ADA.own);

  // Somebody is added and a round is begun in Ada’s name, which nobody has to choose.
  await page.getByRole('link', { name: 'Add a person' }).tap();
  await page.getByLabel('Name', { exact: true }).fill('Hester Quillfeather (invented)');
  await page.getByLabel('Birth date').fill('1961-02-28');
  await page.getByRole('button', { name: 'Add this person' }).tap();
  await expect(heading(page, 'Hester Quillfeather (invented)')).toBeVisible();
  await expect(page.getByRole('button', { name: /Erase/ })).toBeVisible();
  await page.getByRole('link', { name: 'People' }).tap();

  // An account for a learner.
  await page.getByRole('link', { name: 'My account' }).tap();
  await page.getByRole('link', { name: 'Accounts', exact: true }).tap();
  await page.getByRole('button', { name: 'Keep the account' }).tap();
  await expect(page.getByText('Give a short name to sign in with.')).toBeVisible();
  await page.getByLabel('Name, as the charts say it').fill(SOL.name);
  await page.getByLabel('Name to sign in with').fill(SOL.signIn);
  await page.getByLabel(/^Clinician/).uncheck();
  await page.getByLabel(/^Learner/).check();
  await page.getByLabel('The first pass phrase').fill(SOL.first);
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Keep the account' }).tap();
  await expect(page.getByText(`${SOL.name} can sign in now.`)).toBeVisible();
  await page.getByRole('link', { name: 'My account' }).tap();
  await page.getByRole('link', { name: 'People' }).tap();

  // Handed over: a blank screen, on which nobody’s chart stands.
  await page.getByRole('button', { name: 'Hand over or lock' }).tap();
  await expect(heading(page, 'Who goes on?')).toBeVisible();
  await expect(page.getByText('Quillfeather')).toHaveCount(0);
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Somebody else signs in' }).tap();
  await enter(page, SOL.signIn, SOL.first);
  await chooseOwn(page, SOL.first, SOL.own);
  await choosePin(page, SOL.own);

  // A learner’s round waits for a supervisor whatever is ticked, and erases nobody.
  await page
    .getByRole('link', { name: /Hester Quillfeather/ })
    .first()
    .tap();
  await expect(page.getByRole('button', { name: /Erase/ })).toHaveCount(0);
  await page.getByRole('link', { name: 'People' }).tap();
  await page.getByRole('link', { name: 'Type a set' }).tap();
  await expect(page.getByLabel(/learning/i)).toBeChecked();
  await expect(page.getByLabel(/learning/i)).toBeDisabled();
  await page.getByLabel(/Pressure and pulse/).fill('146/92');

  // Locked in the middle and opened by PIN, what was typed is still there.
  await page.goto(`${signed.address}/`);
  await page.getByRole('button', { name: 'Hand over or lock' }).tap();
  await expect(page.getByRole('alert').filter({ hasText: 'Hester Quillfeather' })).toBeVisible();
  await page.getByRole('button', { name: 'Leave it waiting' }).tap();
  await page.getByRole('button', { name: SOL.name }).tap();
  await page.getByLabel('PIN').fill('0000');
  await page.getByRole('button', { name: 'Open' }).tap();
  await expect(page.getByText(/Not the PIN/)).toBeVisible();
  await page.getByLabel('PIN').fill(PIN);
  await page.getByRole('button', { name: 'Open' }).tap();
  await page.getByRole('link', { name: 'Type a set' }).tap();
  await expect(page.getByLabel(/Pressure and pulse/)).toHaveValue('146/92');

  // Ada takes the device over: what Sol typed is Sol’s, and not on the screen.
  await page.goto(`${signed.address}/`);
  await page.getByRole('button', { name: 'Hand over or lock' }).tap();
  await page.getByRole('button', { name: 'Leave it waiting' }).tap();
  await page.getByRole('button', { name: ADA.name }).tap();
  await page.getByLabel('PIN').fill(PIN);
  await page.getByRole('button', { name: 'Open' }).tap();
  await expect(page.getByText(ADA.name).first()).toBeVisible();
  await page.getByRole('link', { name: 'Type a set' }).tap();
  await expect(page.getByLabel(/Pressure and pulse/)).toHaveValue('');
  await expect(page.getByLabel(/learning/i)).not.toBeChecked();
  await page.goto(`${signed.address}/`);
  await page.getByRole('button', { name: 'Sign out' }).tap();
  await expect(heading(page, 'Who goes on?')).toBeVisible();
});

test('a device that is left alone is locked, and a round signed meanwhile is sent after the PIN', async ({
  page,
  signed,
}) => {
  await page.clock.install();
  await page.goto(signed.address);
  await enter(page, ADA.signIn, ADA.own);
  await page.getByRole('link', { name: 'Type a set' }).tap();
  await page.getByLabel(/Pressure and pulse/).fill('132/84');
  await page.clock.fastForward('11:00');
  await expect(heading(page, 'Who goes on?')).toBeVisible();
  await page.getByLabel('PIN').fill(PIN);
  await page.getByRole('button', { name: 'Open' }).tap();
  await expect(page.getByLabel(/Pressure and pulse/)).toHaveValue('132/84');
  await page.getByLabel('Arm', { exact: true }).selectOption('Right');

  // Locked from elsewhere (another tab), while this page still shows the keypad: nothing that is signed is lost.
  await page.evaluate(() =>
    fetch('/api/sign-in/lock', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: '{}',
    }),
  );
  await page.getByRole('button', { name: 'Sign', exact: true }).tap();
  await expect(heading(page, 'Who goes on?')).toBeVisible();
  await page.getByLabel('PIN').fill(PIN);
  await page.getByRole('button', { name: 'Open' }).tap();
  await expect(heading(page, 'Who goes on?')).toHaveCount(0);
  await expect(page.getByText(/waiting for the server/i)).toHaveCount(0, { timeout: 30_000 });
  await page.goto(`${signed.address}/`);
  await page
    .getByRole('link', { name: /Hester Quillfeather/ })
    .first()
    .tap();
  await expect(page.getByRole('article').filter({ hasText: '132/84' })).toHaveCount(1);
});

// docs/hazards.md H12: the screen of somebody who left is covered without network too.
test('left alone without network the device locks itself, opens to nobody, and loses nothing', async ({
  page,
  context,
  signed,
}) => {
  await page.clock.install();
  await page.goto(signed.address);
  await enter(page, ADA.signIn, ADA.own);
  await page.getByRole('link', { name: 'Type a set' }).tap();
  await page.getByLabel(/Pressure and pulse/).fill('128/76');
  await context.setOffline(true);
  await page.clock.fastForward('09:00');
  await expect(page.getByLabel(/Pressure and pulse/)).toHaveValue('128/76');
  await page.clock.fastForward('02:00');
  await expect(heading(page, 'Who goes on?')).toBeVisible();
  await expect(page.getByText(/Nobody touched this device for a while/)).toBeVisible();
  await expect(page.locator('body')).not.toContainText(/Quillfeather|128/);
  await expectAccessible(page);
  await page.getByLabel('PIN').fill(PIN);
  await page.getByRole('button', { name: 'Open' }).tap();
  await expect(page.getByText(/The server cannot be reached just now/)).toBeVisible();
  // The network is back: the server is told that it is locked, and the PIN opens it where it was.
  const told = page.waitForRequest((request) => request.url().endsWith('/api/sign-in/lock'));
  await context.setOffline(false);
  await told;
  await expect(page.getByText(/Nobody touched this device for a while/)).toHaveCount(0);
  await page.getByLabel('PIN').fill(PIN);
  await page.getByRole('button', { name: 'Open' }).tap();
  await expect(page.getByLabel(/Pressure and pulse/)).toHaveValue('128/76');

  // A page that is opened after the device was left is locked from the start, before anything of anybody is shown.
  await page.clock.fastForward('00:20');
  await page.goto('about:blank');
  await page.clock.fastForward('12:00');
  await page.goto(`${signed.address}/`);
  await expect(heading(page, 'Who goes on?')).toBeVisible();
});

test('over the network people sign in by TLS, under a cookie that goes nowhere else', async ({ browser }) => {
  const server = new EvenfallServer({ demo: false, lan: true });
  const args = ['account', 'add', '--name', ADA.name, '--sign-in', ADA.signIn, '--role', 'owner'];
  await server.runWith(`${ADA.first}\n`, ...args);
  await server.start();
  // Whether a phone trusts the certificate is tried in phone.network; here it is taken as it comes.
  const context = await browser.newContext({ ignoreHTTPSErrors: true, hasTouch: true, locale: 'en-GB' });
  const page = await context.newPage();
  await page.goto(server.network.secure);
  await enter(page, ADA.signIn, ADA.first);
  await expect(heading(page, 'Choose your own pass phrase')).toBeVisible();
  const cookies = await context.cookies();
  expect(cookies).toMatchObject([{ secure: true, httpOnly: true, sameSite: 'Strict', path: '/' }]);
  // RFC 6265bis, 4.1.3.2: a browser takes a name with this prefix from this very host alone, by TLS alone.
  expect(cookies[0]?.name).toMatch(/^__Host-/);
  expect(await page.evaluate(() => document.cookie)).toBe('');
  await context.close();
  await server.stop();
});

test('the way in is read in Spanish on a device that nobody has signed in on, and what the server refuses is said in it', async ({
  browser,
  signed,
}) => {
  const context = await browser.newContext({ hasTouch: true, viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  await page.goto(`${signed.address}/`);
  await expect(heading(page, 'Sign in')).toBeVisible();
  await page.getByLabel('Name to sign in with').fill('nadie');
  await page.getByText('Español', { exact: true }).tap();
  await expect(heading(page, 'Entrar')).toBeVisible();
  await expect(page.locator('html')).toHaveAttribute('lang', 'es');
  // What was typed is still there.
  await expect(page.getByLabel('Nombre con el que entra')).toHaveValue('nadie');
  await expectAccessible(page);
  await page.reload();
  await expect(heading(page, 'Entrar')).toBeVisible();
  // More names are tried than are checked at once: refused by the server, with how long to wait.
  for (let at = 0; at < 11; at++) {
    const answered = page.waitForResponse((response) => response.url().endsWith('/api/sign-in'));
    await page.getByLabel('Nombre con el que entra').fill('nadie');
    await page.getByLabel('Frase de contraseña').fill('no es esta, seguro');
    await page.getByRole('button', { name: 'Entrar' }).tap();
    await answered;
  }
  await expect(page.getByText(/Demasiados intentos: otro intento dentro de \d+ minuto/)).toBeVisible();
  await page.getByText('English', { exact: true }).tap();
  await expect(heading(page, 'Sign in')).toBeVisible();
  await context.close();
});
