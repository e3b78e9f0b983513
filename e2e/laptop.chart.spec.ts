import type { Page } from '@playwright/test';
import { expect, expectAccessible, test } from './evenfall.js';

async function chartOf(page: Page, address: string, name: RegExp): Promise<void> {
  await page.goto(`${address}/`);
  await page.getByRole('link', { name }).click();
  await expect(page.getByRole('heading', { name: 'Chart' })).toBeVisible();
}

test('a round with a slip put right says what it comes to now, and keeps what was signed', async ({
  page,
  demo,
}) => {
  await chartOf(page, demo.address, /Marit Solvang/);
  const round = page.getByRole('article').first();
  await expect(round.locator('s').filter({ hasText: '184/92' })).toBeVisible();
  await expect(round.getByText(/^After amendment/)).toBeVisible();
  // The means of the three readings as they were invented: (152 + 148 + 146) / 3, and with 184 in place of 148.
  await expect(round.getByText(/^149\/92 from 3 readings/)).toBeVisible();
  await expect(round.getByText(/^161\/92 from 3 readings/)).toBeHidden();
  await round.getByText('As it was signed').click();
  await expect(round.getByText(/^161\/92 from 3 readings/)).toBeVisible();
  await expectAccessible(page);
});

test('pressures by feel alone and down to zero are written as the trade writes them', async ({
  page,
  demo,
}) => {
  await chartOf(page, demo.address, /Ansel Brightwater/);
  await expect(page.getByText('122/P', { exact: true }).first()).toBeVisible();
  await expect(page.getByText(/^Late: the pressure was to be looked at again by/).first()).toBeVisible();
  await chartOf(page, demo.address, /Nils Okonjo/);
  await expect(page.getByText('118/62/0', { exact: true }).first()).toBeVisible();
  await expectAccessible(page);
});

test('whoever has an open act-now stands first in the list, and the alert before the values', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  const first = page.getByRole('listitem').first();
  await expect(first.getByText(/^Act now: Severe pressure in pregnancy, not closed/)).toBeVisible();
  await chartOf(page, demo.address, /Cleo Marchetti/);
  const alert = await page.getByRole('group', { name: 'Act now' }).boundingBox();
  const begin = await page.getByRole('button', { name: /^(Take|Go on with) a? ?round|^Go on/ }).boundingBox();
  expect(alert?.y ?? Number.POSITIVE_INFINITY).toBeLessThan(begin?.y ?? 0);
});

test('a pressure charted on the wrong arm is put right, and the arm it was charted on stays readable', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await chartOf(page, demo.address, /Nils Okonjo/);
  await expect(page.getByText(/Right upper arm/).first()).toBeVisible();
  const pressure = page.locator('.value').filter({ hasText: 'mmHg' });
  await pressure.getByText('How this number came about').click();
  await pressure.getByRole('link', { name: 'Amend' }).click();
  await page.getByText('It was the other arm or another cuff').click();
  await expectAccessible(page);
  await page.getByLabel('Why is it amended?').selectOption({ label: 'wrong limb or cuff' });
  await page.getByRole('button', { name: 'Sign the amendment' }).click();
  await expect(page.getByText('Choose the arm or the cuff that it really was.')).toBeVisible();
  await page.getByText('Left', { exact: true }).click();
  await page.getByRole('button', { name: 'Sign the amendment' }).click();
  await expect(page.getByText(/Left upper arm/).first()).toBeVisible();
  await expect(page.getByText(/wrong limb or cuff/).first()).toBeVisible();
  await expect(page.locator('s').filter({ hasText: '118/62/0' })).toBeVisible();
  await expect(page.getByText(/Right upper arm/).first()).toBeVisible();
});

// Bedside handbook 3.14: who is dizzy or faint on their feet is reported; a slip of it is put right as any other.
test('how somebody felt on their feet is put right, and what was said before stays readable', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await chartOf(page, demo.address, /Ansel Brightwater/);
  const standing = page.locator('.value').filter({ hasText: '126/78' });
  await standing.getByText('How this number came about').click();
  await standing.getByRole('link', { name: 'Amend' }).click();
  await page.getByText('It was otherwise on their feet: how they felt, or the minutes').click();
  await page.getByText('no', { exact: true }).click();
  await expectAccessible(page);
  await page.getByLabel('Why is it amended?').selectOption({ label: 'typing slip' });
  await page.getByRole('button', { name: 'Sign the amendment' }).click();
  await expect(
    standing.locator('.standing-value').getByText(/1\.1 min on the feet · well on their feet/),
  ).toBeVisible();
  await expect(standing.locator('.replaced').getByText(/dizzy, faint or unwell on their feet/)).toBeVisible();
});

// Bedside handbook 3.15: never an arm with a fistula. A fact that is noted later speaks of the readings of its days too.
test('a reading on an arm that the facts of its day bar says so in the chart', async ({ page, demo }) => {
  const { persons } = await (await fetch(`${demo.address}/api/books/care/persons`)).json();
  const nils = persons.find(({ identity }: { identity: { name: string } | null }) =>
    identity?.name.startsWith('Nils Okonjo'),
  );
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.goto(`${demo.address}/people/${nils.id}/facts`);
  for (const side of ['left', 'right']) {
    await page.getByLabel('What is known').selectOption('fistula');
    await page.getByText(side, { exact: true }).click();
    await page.getByLabel('From', { exact: true }).fill('2020-01-01');
    await page.getByRole('button', { name: 'Add this fact' }).click();
    await expect(page.getByRole('status').getByText('Added.')).toBeVisible();
  }
  await chartOf(page, demo.address, /Nils Okonjo/);
  await expect(
    page
      .getByText(
        'By the facts of that day this arm must not be used for a cuff (Fistula in this arm). If it was the other one, amend the reading.',
      )
      .first(),
  ).toBeVisible();
  await expectAccessible(page);
});
