import type { Page } from '@playwright/test';
import { expect, expectAccessible, test } from './evenfall.js';
import { keepExercise } from './practised.js';
import { tooWide } from './tooWide.js';

async function comeIn(page: Page, address: string, scenario: string) {
  await page.goto(`${address}/practice/${scenario}`);
  await page.getByRole('button', { name: /Come in|Entrar/ }).click();
  await expect(page.getByTestId('needle')).toBeAttached();
}

async function fits(page: Page) {
  expect(await tooWide(page)).toEqual([]);
  await expectAccessible(page);
}

for (const [what, width, height] of [
  ['a phone', 390, 844],
  ['a projector', 1920, 1080],
] as const) {
  test(`on ${what}: the list, the room, the people of one’s own, the plan and the debrief fit`, async ({
    page,
    demo,
  }) => {
    await page.setViewportSize({ width, height });
    const id = await keepExercise(demo.address, {
      scenario: 'stiff-pipe',
      seed: 3,
      circumstances: { isTalking: true, armBelowHeartCm: 10 },
    });
    await page.goto(`${demo.address}/practice`);
    await expect(page.getByRole('heading', { name: 'Who comes in?' })).toBeVisible();
    await fits(page);

    await test.step('the people of one’s own and their editor', async () => {
      await page.goto(`${demo.address}/practice/scenarios`);
      await page.getByLabel('Begin from').selectOption({ label: 'Stiff pipe' });
      await fits(page);
      await page.getByRole('button', { name: 'Begin' }).click();
      await expect(page.getByRole('heading', { level: 1, name: 'A new simulated person' })).toBeVisible();
      await fits(page);
    });

    await test.step('the plan', async () => {
      await page.goto(`${demo.address}/practice/plan`);
      await page.getByLabel('People').selectOption('1000');
      await page.getByRole('button', { name: 'Try both' }).click();
      await expect(page.getByRole('heading', { name: 'What came out' })).toBeVisible({ timeout: 90_000 });
      await fits(page);
    });

    await test.step('the debrief and the list of exercises', async () => {
      await page.goto(`${demo.address}/practice/exercises/${id}`);
      await expect(page.getByRole('heading', { name: 'One thing to do differently' })).toBeVisible();
      await fits(page);
      await page.goto(`${demo.address}/practice/exercises`);
      await expect(page.getByRole('heading', { level: 1, name: 'Exercises so far' })).toBeVisible();
      await fits(page);
    });

    await test.step('the room in each of its views', async () => {
      await comeIn(page, demo.address, 'playground');
      for (const view of ['Person', 'Arm', 'Gauge']) {
        const tab = page.getByRole('button', { name: view, exact: true });
        if (!(await tab.isVisible())) continue;
        await tab.click();
        await fits(page);
      }
      await page.goto(`${demo.address}/practice/room`);
      await expect(page.getByLabel('Who comes in?')).toBeVisible();
      await fits(page);
    });
  });
}

const WAYS = [
  ['colours forced, dark', { forcedColors: 'active', colorScheme: 'dark', reducedMotion: 'no-preference' }],
  ['colours forced, light', { forcedColors: 'active', colorScheme: 'light', reducedMotion: 'no-preference' }],
  ['motion reduced', { forcedColors: 'none', colorScheme: 'light', reducedMotion: 'reduce' }],
  ['dark', { forcedColors: 'none', colorScheme: 'dark', reducedMotion: 'no-preference' }],
] as const;
test('the room with colours forced, in the dark, or with motion reduced: everything is to be told from what lies under it, and nothing moves but what is measured', async ({
  page,
  demo,
}) => {
  await comeIn(page, demo.address, 'stiff-pipe');
  for (const [way, media] of WAYS) {
    await page.emulateMedia(media);
    await expectAccessible(page);
    // Outlines stand off from what they are round, the needle from its face.
    const pairs = await page.evaluate(() => {
      const of = (name: string) => {
        const one = document.querySelector(name);
        const { fill, stroke } = one === null ? { fill: '', stroke: '' } : getComputedStyle(one);
        return { name, fill, stroke };
      };
      return [
        of('.scene-skin'),
        of('.scene-shirt'),
        of('.scene-face'),
        of('.gauge-face'),
        of('.gauge-needle'),
      ];
    });
    for (const { name, fill, stroke } of pairs.slice(0, 4))
      expect(`${way}: ${name} ${fill}`).not.toBe(`${way}: ${name} ${stroke}`);
    expect(pairs[4]?.fill, way).not.toBe(pairs[3]?.fill);
  }
  await page.getByRole('button', { name: 'Arm', exact: true }).click();
  await page.locator('.room-cuff').filter({ hasText: /^adult / }).click(); // biome-ignore format: one thought
  await page.getByRole('button', { name: 'Put the chest piece on' }).click();
  for (const [way, media] of WAYS) {
    await page.emulateMedia(media);
    await expectAccessible(page);
    expect(await page.evaluate(() => document.getAnimations().length), way).toBe(0);
    const [cuff, arm] = await page.evaluate(() =>
      ['.scene-cuff', '.scene-skin'].map((name) => {
        const one = document.querySelector(`.room-scene ${name}`);
        return one === null ? '' : getComputedStyle(one).stroke;
      }),
    );
    expect(cuff, way).toBe(arm);
  }
});

test('on paper every page of practice says SIMULATED, and a debrief is whole', async ({ page, demo }) => {
  const id = await keepExercise(demo.address, { scenario: 'quiet-morning', seed: 2 });
  await page.emulateMedia({ media: 'print' });
  for (const path of ['practice', 'practice/plan', 'practice/scenarios', `practice/exercises/${id}`]) {
    await page.goto(`${demo.address}/${path}`);
    await expect(page.locator('.simulated').first()).toBeVisible();
    await expect(page.locator('.simulated').first()).toContainText('SIMULATED');
  }
  await expect(page.locator('.debrief figure, .debrief svg').first()).toBeVisible();
  await page.emulateMedia({ media: null });
  await comeIn(page, demo.address, 'quiet-morning');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.simulated').first()).toBeVisible();
});

test('in Spanish the room, the count and the debrief are Spanish throughout', async ({ page, demo }) => {
  await page.goto(`${demo.address}/settings`);
  await page.getByText('Español', { exact: true }).click();
  await expect(page.getByRole('heading', { name: 'Preferencias' })).toBeVisible();
  await comeIn(page, demo.address, 'quiet-morning');
  await expect(page).toHaveTitle(/SIMULADO/);
  await expect(page.getByText('SIMULADO', { exact: true })).toBeVisible();
  await fits(page);
  await page.getByRole('button', { name: 'Brazo', exact: true }).click();
  await page.locator('.room-cuff').filter({ hasText: /^adulto / }).first().click(); // biome-ignore format: one thought
  await fits(page);
  await page.getByRole('button', { name: 'Contar el pulso' }).click();
  await expect(page.getByRole('button', { name: 'Volver a la sala' })).toBeVisible();
  await fits(page);
  const id = await keepExercise(demo.address, { scenario: 'quiet-morning', seed: 1, circumstances: { isTalking: true } }); // biome-ignore format: one thought
  await page.goto(`${demo.address}/practice/exercises/${id}`);
  await expect(page.locator('.simulated')).toContainText('SIMULADO');
  await fits(page);
});
