import type { Page } from '@playwright/test';
import { expect, expectAccessible, test } from './evenfall.js';
import { type RoundPlace, walkRound } from './roundWalk.js';
import { tooWide } from './tooWide.js';

/** Pages besides those of a round, and something that stands on each when it is there. */
const PAGES: readonly (readonly [path: string, what: RegExp])[] = [
  ['', /Take it now/],
  ['people/new', /Add this person/],
  ['countersign', /Kit Osei-Lund/],
  ['protocol', /Set of rules/],
  ['equipment', /Cuffs by room/],
  ['class', /Begin a session/],
  ['settings', /Time of day/],
  ['card', /Sit quietly/],
  ['account', /^Accounts$/],
  ['accounts', /^npx evenfall account add/],
  ['people/RUFUS', /How this number came about/],
  ['people/RUFUS/trend', /Every number as a table/],
  ['people/RUFUS/hand-over', /What will be copied/],
  ['people/RUFUS/facts', /Add a fact/],
  ['people/RUFUS/identity', /Put it right/],
  ['people/RUFUS/quick', /slash|Rub out/],
];

async function eachPage(page: Page, address: string, at: (path: string) => Promise<void>): Promise<void> {
  await page.goto(`${address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  const href = await page
    .getByRole('listitem')
    .filter({ hasText: 'INV-0012' })
    .getByRole('link', { name: /Rufus/ })
    .first()
    .getAttribute('href');
  const rufus = href?.split('/').at(-1) ?? '';
  expect(rufus).not.toBe('');
  for (const [path, what] of PAGES) {
    await page.goto(`${address}/${path.replace('RUFUS', rufus)}`);
    await expect(page.getByText(what).first(), path).toBeVisible();
    await page.locator('main details').evaluateAll((all) => {
      for (const closed of all) closed.setAttribute('open', '');
    });
    await at(path);
  }
}

/** Text set wider apart by whoever reads it, by the figures of WCAG 2.2, 1.4.12. */
const spaceOut = (page: Page) =>
  page.evaluate(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(
      '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; } p { margin-block-end: 2em !important; }',
    );
    document.adoptedStyleSheets = [sheet];
  });
const spaceAgain = (page: Page) =>
  page.evaluate(() => {
    document.adoptedStyleSheets = [];
  });

/** WCAG 2.2, 1.4.10: 320 px wide, and 1280 by 800 at 200 %. */
const SIZES = [
  { width: 320, height: 640 },
  { width: 640, height: 400 },
] as const;

async function expectWhole(page: Page, where: string): Promise<void> {
  for (const size of SIZES) {
    await page.setViewportSize(size);
    expect(await tooWide(page), `${where} at ${size.width}`).toEqual([]);
  }
  await page.setViewportSize(SIZES[0]);
  await spaceOut(page);
  expect(await tooWide(page), `${where}, spaced out`).toEqual([]);
  await spaceAgain(page);
}

test('nothing is cut at 320 pixels, at 200 %, or where text is set wider apart: every page', async ({
  page,
  demo,
}) => {
  await eachPage(page, demo.address, async (path) => await expectWhole(page, path));
});

/** At the bedside 44 px, and in a round nothing that is touched is smaller (WCAG 2.2, 2.5.5, the stricter one). */
const LEAST_TOUCH_PX = 44;

const tooSmall = (page: Page): Promise<readonly string[]> =>
  page.evaluate((least) => {
    const found: string[] = [];
    for (const element of document.querySelectorAll(
      'main button, main a[href], main select, main summary, main input',
    )) {
      // A box that is ticked is touched on its line.
      const touched = element.closest('.choice, .tick, .mark-choose') ?? element;
      const { width, height } = touched.getBoundingClientRect();
      if (width > 0 && (height < least || (width < least && !element.matches('.button-quiet'))))
        found.push(
          `${Math.round(width)} × ${Math.round(height)}: ${(touched.textContent ?? '').slice(0, 40)}`,
        );
    }
    return found;
  }, LEAST_TOUCH_PX);

test('nothing is cut and everything is large enough for a thumb: every step of a round', async ({
  page,
  demo,
}) => {
  test.setTimeout(240_000);
  await page.clock.install();
  await page.setViewportSize({ width: 390, height: 844 });
  await walkRound(page, demo.address, 'Marit Solvang', async (place) => {
    await page.setViewportSize({ width: 390, height: 844 });
    // In a text of the chart a link is as high as its line.
    if (place !== 'signed') expect(await tooSmall(page), place).toEqual([]);
    await expectWhole(page, place);
    await page.setViewportSize({ width: 390, height: 844 });
  });
});

/** How far two colours stand apart, as drawn: WCAG 2.2, relative luminance. */
const contrast = (page: Page, [of, property]: Drawn, [on, ground]: Drawn): Promise<number> =>
  page.evaluate(
    ([drawn, what, under, whatUnder]) => {
      const colour = (selector: string, name: string) => {
        const [at, pseudo] = selector.split('::');
        const element = document.querySelector(at ?? '');
        if (element === null) throw new Error(`no ${selector}`);
        const style = getComputedStyle(element, pseudo === undefined ? null : `::${pseudo}`);
        return (style.getPropertyValue(name).match(/[\d.]+/g) ?? []).map(Number);
      };
      const luminance = (parts: readonly number[]) => {
        const [red = 0, green = 0, blue = 0] = parts.map((part) => {
          const share = part / 255;
          return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
        });
        return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
      };
      const one = luminance(colour(drawn, what));
      const other = luminance(colour(under, whatUnder));
      return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    },
    [of, property, on, ground] as const,
  );
type Drawn = readonly [selector: string, property: string];

/** What carries meaning by how it is drawn, where it stands, and what it stands on: at least 3 to 1 (1.4.11). */
const DRAWN: Readonly<Partial<Record<RoundPlace, readonly (readonly [Drawn, Drawn])[]>>> = {
  'make ready': [
    [
      ['.rest-rim', 'stroke'],
      ['html', 'background-color'],
    ],
  ],
  'pulse ready': [
    [
      ['.choice:has(:checked)', 'background-color'],
      ['.choice:not(:has(:checked))', 'background-color'],
    ],
    [
      ['.choice:has(:checked)', 'color'],
      ['.choice:has(:checked)', 'background-color'],
    ],
    [
      ['.dial-hand', 'fill'],
      ['.dial-face', 'fill'],
    ],
    [
      ['.dial-end', 'fill'],
      ['.dial-face', 'fill'],
    ],
    [
      ['.dial-tick-five', 'stroke'],
      ['.dial-face', 'fill'],
    ],
    [
      ['.dial-numeral', 'fill'],
      ['.dial-face', 'fill'],
    ],
  ],
  'pulse typing': [
    [
      ['.cue', 'color'],
      ['.cue', 'background-color'],
    ],
  ],
  pulse: [
    [
      ['.strip-even', 'stroke'],
      ['html', 'background-color'],
    ],
    [
      ['.strip-window', 'stroke'],
      ['html', 'background-color'],
    ],
  ],
  'breaths tapping': [
    [
      ['.strip-timed', 'stroke'],
      ['html', 'background-color'],
    ],
  ],
  breaths: [
    [
      ['.flags li::before', 'background-color'],
      ['html', 'background-color'],
    ],
  ],
  'feel refused': [
    [
      ['.field-wrong::before', 'background-color'],
      ['html', 'background-color'],
    ],
  ],
  'read back': [
    [
      ['.gauge-unread .gauge-needle', 'stroke'],
      ['.gauge-face', 'fill'],
    ],
  ],
  'read back refused': [
    [
      ['.gauge-other', 'stroke'],
      ['html', 'background-color'],
    ],
    [
      ['.mark-row-chosen', 'border-inline-start-color'],
      ['html', 'background-color'],
    ],
  ],
  pressure: [
    [
      ['.run-line', 'stroke'],
      ['html', 'background-color'],
    ],
    [
      ['.run-first', 'fill'],
      ['html', 'background-color'],
    ],
    [
      ['.run-last', 'stroke'],
      ['html', 'background-color'],
    ],
  ],
};

async function expectDrawn(page: Page, place: RoundPlace, way: string): Promise<void> {
  for (const [drawn, on] of DRAWN[place] ?? [])
    expect(await contrast(page, drawn, on), `${place}, ${way}: ${drawn.join(' ')}`).toBeGreaterThanOrEqual(3);
}

/** Ways in which the colours are not the usual ones. */
const WAYS = [
  ['colours forced, dark', { forcedColors: 'active', colorScheme: 'dark', contrast: 'no-preference' }],
  ['colours forced, light', { forcedColors: 'active', colorScheme: 'light', contrast: 'no-preference' }],
  ['more contrast asked for', { forcedColors: 'none', colorScheme: 'light', contrast: 'more' }],
  ['dark', { forcedColors: 'none', colorScheme: 'dark', contrast: 'no-preference' }],
] as const;

async function inEachWay(page: Page, look: (way: string) => Promise<void>): Promise<void> {
  for (const [way, media] of WAYS) {
    await page.emulateMedia(media);
    await look(way);
  }
}

test('what carries meaning is still drawn with colours forced, in the dark, or with more contrast: every step of a round', async ({
  page,
  demo,
}) => {
  test.setTimeout(240_000);
  await page.clock.install();
  const looked: RoundPlace[] = [];
  await walkRound(page, demo.address, 'Marit Solvang', async (place) => {
    if (!(place in DRAWN)) return;
    looked.push(place);
    await inEachWay(page, async (way) => {
      await expectDrawn(page, place, way);
      // Later in a round the clock stands still, and axe with it.
      if (place === 'make ready' || place === 'pulse ready') await expectAccessible(page);
    });
  });
  expect(looked).toHaveLength(Object.keys(DRAWN).length);
});

test('a trend is still drawn with colours forced, in the dark, or with more contrast, and the focus seen', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByRole('link', { name: /Rufus Adeyemi/ }).click();
  await page.getByRole('link', { name: 'Trend over time' }).click();
  await expect(page.locator('.trend-mark').first()).toBeVisible();
  await inEachWay(page, async (way) => {
    for (const drawn of ['.trend-mark', '.trend-line', '.trend-read', '.trend-open'])
      expect(
        await contrast(page, [drawn, 'stroke'], ['html', 'background-color']),
        `${drawn}, ${way}`,
      ).toBeGreaterThanOrEqual(3);
    await expectAccessible(page);
    // The ring of the focus, on a control that is filled and on one that is not.
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await expect(page.locator(':focus')).toHaveCSS('outline-style', 'solid');
    expect(
      await contrast(page, [':focus', 'outline-color'], ['html', 'background-color']),
      `the focus, ${way}`,
    ).toBeGreaterThanOrEqual(3);
  });
});

for (const [reducedMotion, how] of [
  ['reduce', 'steps from second to second where less motion is asked for'],
  ['no-preference', 'sweeps'],
] as const) {
  test(`the hand of the watch ${how}; nothing else moves`, async ({ page, demo }) => {
    await page.emulateMedia({ reducedMotion });
    await page.clock.install();
    await page.goto(`${demo.address}/`);
    await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
    await page.getByRole('link', { name: /Juno Castellane/ }).click();
    await page.getByRole('button', { name: 'Take a round' }).click();
    await page.getByRole('button', { name: 'They match, and agree' }).click();
    await page.getByRole('button', { name: 'All as it should be' }).click();
    const start = page.getByRole('button', { name: 'Start', exact: true });
    await expect(start).toBeVisible();
    await page.clock.pauseAt((await page.evaluate(() => Date.now())) + 1_000);
    await start.click();
    await expect(page.getByRole('button', { name: 'Interrupted' })).toBeVisible();
    const turns: number[] = [];
    for (let look = 0; look < 8; look += 1) {
      await page.clock.runFor(250);
      const turned = await page
        .locator('.dial-hand')
        .evaluate((hand) => hand.parentElement?.getAttribute('transform'));
      turns.push(Number(/rotate\(([\d.]+)/.exec(turned ?? '')?.[1]));
    }
    // 6 degrees a second: in two seconds two or three places where it steps, eight where it sweeps.
    const places = new Set(turns).size;
    expect(turns.every((degrees) => degrees % 6 === 0)).toBe(reducedMotion === 'reduce');
    expect(places).toBeGreaterThanOrEqual(reducedMotion === 'reduce' ? 2 : 8);
    expect(places).toBeLessThanOrEqual(reducedMotion === 'reduce' ? 3 : 8);
    expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
  });
}
