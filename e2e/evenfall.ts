import { test as base, expect, type Page } from '@playwright/test';
import axe from 'axe-core';
import { EvenfallServer } from './server.js';

export { expect };

type Fixtures = {
  /**
   * Whether the browser keeps the program itself by a service worker. Keeping all of it anew for each test costs as much as
   * the test, so that the others run as in a window that has none.
   */
  isProgramKept: boolean;
  /** The invented clinic, new for each file of tests: what one file does to it (erase somebody) no other meets. */
  demo: EvenfallServer;
  /** Fails the test if the page asked anybody but its own server for anything, or broke its own rules. */
  watched: undefined;
};
type WorkerFixtures = { clinic: EvenfallServer; demos: { of: (file: string) => Promise<EvenfallServer> } };

/** Tests get a real server over an empty clinic (`clinic`, one for each worker) or the invented one (`demo`). */
export const test = base.extend<Fixtures, WorkerFixtures>({
  clinic: [
    // biome-ignore lint/correctness/noEmptyPattern: the form Playwright asks for
    async ({}, use) => {
      const server = new EvenfallServer({ demo: false });
      await server.start();
      await use(server);
      await server.stop();
    },
    { scope: 'worker' },
  ],
  demos: [
    // biome-ignore lint/correctness/noEmptyPattern: the form Playwright asks for
    async ({}, use) => {
      let open: { readonly file: string; readonly server: EvenfallServer } | null = null;
      const of = async (file: string) => {
        if (open?.file === file) return open.server;
        await open?.server.stop();
        open = { file, server: new EvenfallServer({ demo: true }) };
        await open.server.start();
        return open.server;
      };
      await use({ of });
      await (open as { readonly server: EvenfallServer } | null)?.server.stop();
    },
    { scope: 'worker' },
  ],
  demo: async ({ demos }, use, { file }) => use(await demos.of(file)),
  isProgramKept: [false, { option: true }],
  context: async ({ context, isProgramKept }, use) => {
    if (!isProgramKept) {
      await context.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'serviceWorker'));
    }
    await use(context);
  },
  watched: [
    async ({ page }, use) => {
      const foreign: string[] = [];
      const broken: string[] = [];
      page.on('request', (request) => {
        const { hostname, protocol } = new URL(request.url());
        if (hostname !== '127.0.0.1' && !['blob:', 'data:'].includes(protocol)) foreign.push(request.url());
      });
      page.on('pageerror', (error) => broken.push(error.message));
      page.on('console', (line) => {
        if (/content security policy/i.test(line.text())) broken.push(line.text());
      });
      await use(undefined);
      expect(foreign, 'requests that left the origin').toEqual([]);
      expect(broken, 'errors in the page').toEqual([]);
    },
    { auto: true },
  ],
});

/** WCAG 2.2, levels A and AA, by axe-core's rules. */
const WCAG_22_AA = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** Finds nothing at WCAG 2.2 AA on the page as it stands. The rules are brought into it once, and no frame is asked: it has none. */
export async function expectAccessible(page: Page): Promise<void> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source);
  const found = await page.evaluate(async (values) => {
    if (document.querySelector('iframe') !== null) throw new Error('a frame, which is not looked into');
    const run = (window as unknown as { axe: typeof axe }).axe.run;
    const { violations } = await run(document, {
      runOnly: { type: 'tag', values },
      resultTypes: ['violations'],
    });
    return violations.map(
      ({ id, nodes }) =>
        `${id}: ${nodes.map(({ html, failureSummary }) => `${html.slice(0, 120)} ${failureSummary ?? ''}`).join(' | ')}`,
    );
  }, WCAG_22_AA);
  expect(found).toEqual([]);
}

/** Presses digits on the keypad that starts blank. */
export async function typeOnKeypad(page: Page, digits: string): Promise<void> {
  const keypad = page.getByRole('group', { name: 'Keypad' });
  for (const digit of digits) await keypad.getByRole('button', { name: digit, exact: true }).tap();
  await keypad.getByRole('button', { name: 'Done' }).tap();
}

/** Begins a round of the person whose page is open: identity said, made ready. */
export async function beginRound(page: Page): Promise<void> {
  await page
    .getByRole('link', { name: 'Take a round' })
    .or(page.getByRole('button', { name: 'Take a round' }))
    .click();
  await page.getByRole('button', { name: 'They match' }).click();
  await page.getByRole('button', { name: 'All as it should be' }).click();
}

/** On the review: looks at the evidence of the last value of a sign, and at what can be changed of it. */
export async function unfold(page: Page, sign: string): Promise<void> {
  await page.getByRole('region', { name: sign, exact: true }).locator('summary').last().click();
}

/** Says on the review why a sign was not done. */
export async function notDone(page: Page, sign: string, why = 'the person declined'): Promise<void> {
  const region = page.getByRole('region', { name: sign, exact: true });
  await region.getByRole('button', { name: 'Not done …' }).click();
  await region.getByText(why).click();
  await region.getByRole('button', { name: 'Keep this reason' }).click();
}

/** Presses keys on the keypad of the pressure, and keeps them. */
export async function typePressure(page: Page, keys: string, done = 'Keep this reading'): Promise<void> {
  const keypad = page.getByRole('group', { name: 'Numbers' });
  for (const key of keys) {
    await keypad.getByRole('button', { name: key === '/' ? 'slash' : key, exact: true }).click();
  }
  await page.getByRole('button', { name: done }).click();
  // Numbers that may be a slip are asked about before they are kept.
  const wasRead = page.getByRole('button', { name: /^Yes, .* was read$/ });
  if (await wasRead.isVisible()) await wasRead.click();
}
