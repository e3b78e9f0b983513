import type { Page } from '@playwright/test';
import { expect, expectAccessible, test } from './evenfall.js';
import { type RoundPlace, walkRound } from './roundWalk.js';

/** What stands beside a step at the width of a laptop; null for nothing: who is counted may read along. */
const BESIDE: Readonly<Partial<Record<RoundPlace, readonly RegExp[] | null>>> = {
  'make ready': null,
  'pulse ready': null,
  'pulse running': null,
  pulse: null,
  'breaths ready': null,
  'breaths tapping': null,
  breaths: [/Pulse/, /84/],
  'arm and cuff': [/Pulse/, /84/, /Breaths/, /16/],
  listen: [/84/, /16/],
  pressure: [/84/, /16/, /To look at again/],
  'next pressure': [/84/, /16/],
  'other signs': [/84/, /16/, /168\/102/],
};
/** An earlier reading stays hidden until the new one is in (bedside handbook 3.10: each reading on its own). */
const HIDDEN: readonly RoundPlace[] = ['listen', 'next pressure'];

const isBesides = (page: Page) => page.getByRole('complementary', { name: 'Taken so far' });

/** The margin at the foot of a page, px. */
const MARGIN_PX = 48;

/** How far a page goes on under its step, where it is more than a screen high; px. */
const blankUnder = (page: Page) =>
  page.locator('.round-step').evaluate((step) => {
    const { scrollHeight } = document.documentElement;
    return scrollHeight <= innerHeight ? 0 : scrollHeight - step.getBoundingClientRect().bottom - scrollY;
  });

test('on a laptop what was taken stands beside the step, never while it could be read along; on a phone not at all', async ({
  page,
  demo,
}) => {
  test.setTimeout(240_000);
  await page.clock.install();
  // Where the step and its name stand: one place, whatever is beside it.
  let left: number | undefined;
  await walkRound(page, demo.address, 'Marit Solvang', async (place) => {
    await test.step(place, async () => {
      const wanted = BESIDE[place];
      if (wanted === null) await expect(isBesides(page)).toHaveCount(0);
      for (const text of wanted ?? []) await expect(isBesides(page)).toContainText(text);
      if (HIDDEN.includes(place)) await expect(isBesides(page)).not.toContainText(/168|102/);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(wide).toBeLessThanOrEqual(0);
      const stage = page.locator('.measure-stage');
      if (await stage.isVisible()) {
        const at = await stage.boundingBox();
        left ??= at?.x;
        expect(at?.x).toBe(left);
        const name = await page.locator('.measure-sign').boundingBox();
        expect(name?.x).toBe(left);
        expect(name?.height ?? 0, 'read at a glance').toBeGreaterThan(30);
        expect((name?.y ?? 0) + (name?.height ?? 0)).toBeLessThanOrEqual(at?.y ?? 0);
        expect(await blankUnder(page), 'blank under the step').toBeLessThanOrEqual(MARGIN_PX);
      }
      if (place === 'pressure' || place === 'arm and cuff') {
        const beside = await isBesides(page).boundingBox();
        const step = await page.locator('.measure-stage').boundingBox();
        expect(beside?.x).toBeGreaterThanOrEqual((step?.x ?? 0) + (step?.width ?? 0));
        await page.setViewportSize({ width: 390, height: 844 });
        await expect(isBesides(page)).toHaveCount(0);
        await page.setViewportSize({ width: 1280, height: 800 });
      }
      if (place !== 'review') return;
      const comesTo = await page.getByRole('region', { name: 'What the round comes to' }).boundingBox();
      const pulse = await page.getByRole('region', { name: 'Pulse' }).boundingBox();
      expect(comesTo?.x).toBeGreaterThanOrEqual((pulse?.x ?? 0) + (pulse?.width ?? 0));
      await expect(page.getByRole('button', { name: 'Sign', exact: true })).toBeInViewport({ ratio: 1 });
      await expectAccessible(page);
    });
  });
});
