import type { Page } from '@playwright/test';
import { expect, expectAccessible, test } from './evenfall.js';

const boxOf = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).boundingBox();

test('a whole room: each step is said without a number, what the class said stands beside the truth, and it is over at its end', async ({
  page,
  demo,
}) => {
  await page.setViewportSize({ width: 1920, height: 1080 });
  await page.goto(`${demo.address}/practice/room`);
  await page.getByLabel('Who comes in?').selectOption('stiff-pipe');
  await page.getByRole('button', { name: 'Begin' }).click();
  const doing = page.locator('.projected-doing > p');
  await expect(doing).toHaveText(
    'Five quiet minutes are over. The cuff is on, and empty. The needle stands at zero.',
  );
  const keys = await page.getByText(/^Keys: space/).boundingBox();
  expect((keys?.y ?? 0) + (keys?.height ?? 9999)).toBeLessThan(1080);
  await expect(doing).toHaveText(/^By feel first/, { timeout: 15_000 });
  await page.getByRole('button', { name: 'Before the first', exact: true }).click();
  await page.keyboard.press('Space');
  await expect(doing).toHaveText(/^The chest piece lies on the artery/);
  await expect(page.getByText('Stiff pipe')).toHaveCount(0);

  // What is no pressure is not held; what is said is held without being judged yet.
  const field = page.getByLabel('First and last, such as 124/78');
  await field.fill('92/188');
  await page.keyboard.press('Enter');
  await expect(page.getByText('Write 124/78, or one number for the first alone.')).toBeVisible();
  await field.fill('300/20');
  await page.keyboard.press('Enter');
  await expect(page.locator('.class-said li')).toHaveText(/^300\/20Forget it$/);

  // A letter that is typed in the field is a letter.
  await page.keyboard.press('t');
  await expect(page.locator('.projected-numbers')).toHaveCount(0);
  await field.fill('');
  await page.evaluate(() => window.scrollTo(0, 0));
  const places = async () => [
    await boxOf(page, 'Go on'),
    await boxOf(page, 'Another person'),
    await field.boundingBox(),
  ];
  const before = await places();
  await page.locator('.projected-gauge').click();
  // Before it is over the truth is asked about once, and anything else takes that back.
  const asks = page.getByText('Not over yet. Show it all the same?');
  await page.keyboard.press('t');
  await expect(asks).toBeVisible();
  await page.locator('.projected-gauge').click();
  await expect(asks).toHaveCount(0);
  await page.keyboard.press('t');
  await expect(page.locator('.projected-numbers')).toHaveCount(0);
  await page.keyboard.press('t');
  await expect(page.locator('.projected-numbers')).toHaveText(/1[789]\d\/[789]\d/);
  await expect(page.getByText(/^True on average: 1[789]\d\/[789]\d$/)).toBeVisible();
  expect(await places()).toEqual(before);
  await expect(page.locator('.projected-place .scene')).toBeVisible();
  await expect(page.getByText('Stiff pipe · Woman, 76 years')).toBeVisible();
  await expect(page.locator('.class-said li')).toHaveText(/^300\/20\+1[0-3]\d \/ −[567]\dForget it$/);
  await expect(page.locator('.projected-figure .figure-cuff')).toHaveCount(1);
  await expectAccessible(page);
  // On every usual projector all of it is within the edge, however much was said, and large enough for the last row.
  for (const said of ['180/80', '176/84', '170/90', '160/82']) {
    await field.fill(said);
    await page.keyboard.press('Enter');
  }
  await expect(page.locator('.class-said li').first()).toHaveText(/^160\/82/);
  const isWithinTheEdge = async (figureShare: number) => {
    for (const [width, height] of [
      [1920, 1080],
      [1366, 768],
      [1280, 800],
      [1024, 768],
    ] as const) {
      await page.setViewportSize({ width, height });
      await page.evaluate(() => window.scrollTo(0, 0));
      const parts = ['.live-gauge', '.projected-says', '.projected-figure svg', '.trend-readout', '.projected-legend', '.class-said', '.projected-place']; // biome-ignore format: one thought
      const ends = async () => {
        const boxes = await Promise.all(parts.map((part) => page.locator(part).boundingBox()));
        return boxes.map((box) => (box === null ? 9999 : box.y + box.height));
      };
      await expect.poll(async () => Math.max(...(await ends()))).toBeLessThanOrEqual(height);
      const figure = await page.locator('.projected-figure svg').boundingBox();
      expect(figure?.height ?? 0).toBeGreaterThan(figureShare * height);
    }
  };
  await isWithinTheEdge(0.35);
  // Of somebody of whom there is more to say, and in letters of a wider font, the drawing gives way and nothing is cut.
  await page.evaluate(() => {
    const wider = new CSSStyleSheet();
    wider.replaceSync('.projected { letter-spacing: 0.02em; }');
    document.adoptedStyleSheets.push(wider);
  });
  await isWithinTheEdge(0.3);
  await page.setViewportSize({ width: 1920, height: 1080 });
  await page.locator('.projected-gauge').click();
  await page.keyboard.press('t');

  // Onwards by the keys to its end while it plays: there it stays, and says so.
  await page.keyboard.press('Space');
  for (let jump = 0; jump < 40; jump++) await page.keyboard.press('ArrowRight');
  await expect(page.getByText('It is over. What did you hear, and where?')).toBeVisible();
  const clock = page.getByText(/^Second \d+ of \d+$/);
  await expect(clock).toHaveText(/^Second (\d+) of \1$/);
  await page.waitForTimeout(2500);
  await expect(clock).toHaveText(/^Second (\d+) of \1$/);
  await page.getByRole('button', { name: 'From the start' }).click();
  await expect(clock).toHaveText(/^Second [0-3] of/);
});

test('shown how: sound is asked for first, each step is said, and nothing sounds while fingertips feel', async ({
  page,
  demo,
}) => {
  // The clock of the page is put on by hand: what takes minutes is still played picture by picture.
  await page.clock.install();
  await page.goto(`${demo.address}/practice/cold-hands`);
  await page.getByRole('button', { name: 'Show me how' }).click();
  await expect(page.getByText('There is something to hear.', { exact: false })).toBeVisible();
  await page.waitForTimeout(1200);
  await expect(page.getByTestId('needle')).toHaveAttribute('data-tick', '0');
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Begin without, sounds shown' }).click();
  const says = page.locator('.shown-says');
  const strips = page.locator('.strip-sound');
  const areSilent = async () => {
    await expect(strips).toHaveCount(2);
    for (const one of await strips.all()) await expect(one).toHaveAttribute('d', '');
  };
  await expect(says).toHaveText(/\w/);
  const first = (await says.textContent()) ?? '';
  // Hurried by the right arrow or the button, each step is come to at once; what went by stays written down.
  const ticks = () => page.getByTestId('needle').getAttribute('data-tick').then(Number);
  await page.keyboard.press('ArrowRight');
  await expect(says).not.toHaveText(first);
  const hurried = await ticks();
  await page.getByRole('button', { name: 'Next step' }).click();
  await expect.poll(ticks).toBeGreaterThan(hurried);
  const goesOnTo = (said: string | RegExp) =>
    expect(async () => {
      await page.clock.runFor(500);
      expect(await says.textContent()).toMatch(said);
    }).toPass({ intervals: [0], timeout: 120_000 });
  // Breaths that are not as usual are counted first, for a whole minute.
  await goesOnTo(/^By feel first/);
  await goesOnTo(/^The pulse is gone at \d+: all air out\.$/);
  await expect(page.locator('.shown-found')).toContainText(/pulse gone\d+/);
  await areSilent();
  // Cold hands are felt, not heard: a systolic by feel, said to be one.
  await goesOnTo('That was all of it.');
  await expect(page.locator('.shown-written')).toHaveText(/^Written down\d+, by feel mmHg$/);
  await areSilent();
  await page.getByRole('button', { name: 'Once more' }).click();
  await expect(says).toHaveText(first);
});

const focused = (page: Page) =>
  page.evaluate(() => `${document.activeElement?.tagName} ${document.activeElement?.textContent}`);

test('each step is read from its heading, and letters do something only in the room, or nowhere', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/practice/quiet-morning`);
  await page.getByRole('button', { name: /Come in/ }).click();
  await expect.poll(() => focused(page)).toBe('H2 The room');
  const wrist = page.locator('.room-gauge .under-finger');
  await page.keyboard.press('f');
  await expect(wrist).toBeVisible();
  await page.keyboard.press('f');
  await expect(wrist).toHaveCount(0);
  // Outside the room a letter is nobody's.
  await page.locator('h1').focus();
  await page.keyboard.press('f');
  await page.waitForTimeout(300);
  await expect(wrist).toHaveCount(0);
  await page.getByText('Sound and keys').click();
  await page.getByLabel('Keys that are single letters, in the room only').uncheck();
  await page.keyboard.press('f');
  await page.waitForTimeout(300);
  await expect(wrist).toHaveCount(0);

  await page.getByRole('button', { name: 'Count the pulse' }).click();
  await expect.poll(() => focused(page)).toBe('H2 Pulse');
  await page.getByRole('button', { name: 'Back to the room' }).click();
  await expect.poll(() => focused(page)).toBe('H2 The room');
});

test('a sound card that is taken away while one looks on is said, and comes back by a touch', async ({
  page,
  demo,
}) => {
  await page.addInitScript(() => {
    const made: AudioContext[] = [];
    const Real = window.AudioContext;
    window.AudioContext = class extends Real {
      constructor(...given: ConstructorParameters<typeof Real>) {
        super(...given);
        made.push(this);
      }
    };
    Object.assign(window, { cards: made });
  });
  await page.goto(`${demo.address}/practice/quiet-morning`);
  await page.getByRole('button', { name: /Come in/ }).click();
  await expect(page.getByRole('button', { name: 'Turn the sound on' })).toHaveCount(0);
  const status = page.getByText('Stopped: the sound was taken away, by a call perhaps.');
  await expect(status).toHaveCount(0);
  await page.evaluate(() => (window as unknown as { cards: AudioContext[] }).cards[0]?.suspend());
  await expect(status).toBeVisible();
  await page.getByRole('button', { name: 'Go on with sound' }).click();
  await expect(status).toHaveCount(0);
  const tick = () => page.getByTestId('needle').getAttribute('data-tick').then(Number);
  const stood = await tick();
  await expect.poll(tick).toBeGreaterThan(stood + 50);
});

test('in forced colours what is written on a dark ground is still read', async ({ page, demo }) => {
  await page.emulateMedia({ forcedColors: 'active' });
  await page.goto(`${demo.address}/practice/quiet-morning`);
  await page.getByRole('button', { name: /Come in/ }).click();
  for (const one of ['.simulated', '.room-tab[aria-pressed="true"]']) {
    const seen = await page
      .locator(one)
      .first()
      .evaluate((element) => {
        const { color, backgroundColor, forcedColorAdjust } = getComputedStyle(element);
        return { isTold: color !== backgroundColor, forcedColorAdjust };
      });
    // Without it a browser lays a ground of its own behind the letters (CSS Color Adjustment 1, 3.1).
    expect(seen).toEqual({ isTold: true, forcedColorAdjust: 'none' });
  }
});

test('the cuff goes on the other arm, and the room says on which it is', async ({ page, demo }) => {
  await page.goto(`${demo.address}/practice/two-arms`);
  await page.getByRole('button', { name: /Come in/ }).click();
  await page.getByRole('button', { name: 'Arm', exact: true }).click();
  await expect(page.getByText('It is the right arm.')).toBeVisible();
  await page.getByRole('button', { name: 'To the left arm' }).click();
  await expect(page.getByText('It is the left arm.')).toBeVisible();
  const kept = await page.evaluate(() =>
    Object.entries(localStorage).flatMap(([key, text]) =>
      key.startsWith('evenfall.practice') && text.startsWith('{') ? [JSON.parse(text)] : [],
    ),
  );
  expect(kept.some((one) => one.visit?.circumstances?.arm === 'left')).toBe(true);

  // What is not to be had once the cuff is up keeps its place: nothing moves under the hand.
  await page.locator('.room-cuff').filter({ hasText: /^adult / }).click(); // biome-ignore format: one thought
  const places = async () => [
    await boxOf(page, 'Squeeze the bulb'),
    await boxOf(page, 'Let all air out'),
    await page.locator('.room-tool').filter({ hasText: 'Feel the wrist' }).boundingBox(),
    await boxOf(page, 'Count the pulse'),
  ];
  await expect(page.getByRole('button', { name: 'Take another gauge and hose' })).toBeVisible();
  await expect(page.getByText(/^Cuff on the arm: adult/)).toBeVisible();
  // In letters of a width at which one name of a tool takes a line more than its other.
  await page.evaluate(() => {
    const narrow = new CSSStyleSheet();
    narrow.replaceSync('.room-tool { letter-spacing: -0.045em; }');
    document.adoptedStyleSheets.push(narrow);
  });
  // What was touched last has settled.
  await page.waitForTimeout(500);
  const before = await places();
  expect(before).not.toContain(null);
  await page.getByRole('button', { name: 'Squeeze the bulb' }).click();
  await expect(page.getByRole('button', { name: 'Take another gauge and hose' })).toBeHidden();
  expect(await places()).toEqual(before);
  await page.getByRole('button', { name: 'Put the chest piece on' }).click();
  await expect(page.getByRole('button', { name: 'Take the chest piece off' })).toBeVisible();
  expect(await places()).toEqual(before);
});
