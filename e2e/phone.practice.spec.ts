import type { Page } from '@playwright/test';
import { expect, expectAccessible, test } from './evenfall.js';

/** Before anybody comes in: who practises, and no check of the ears. */
async function comeIn(page: Page, address: string, scenario: string) {
  await page.goto(`${address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
  await page.goto(`${address}/practice`);
  await page.getByRole('link', { name: scenario }).tap();
  await page.getByRole('button', { name: /Come in/ }).tap();
  await expect(page.getByTestId('needle')).toBeAttached();
}

const needle = (page: Page) =>
  page
    .getByTestId('needle')
    .evaluate((one) => Number(/rotate\(([-\d.]+)/.exec(one.getAttribute('transform') ?? '')?.[1]));
/** 300 mmHg over 300 degrees, zero at -150 (gaugeGeometry). */
const mmHg = async (page: Page) => (await needle(page)) + 150;

test('by touch alone: prepared, pumped up, let down, written, kept, and in no chart', async ({
  page,
  demo,
}) => {
  await comeIn(page, demo.address, 'Edda Marlow');
  await expect(page).toHaveTitle(/SIMULATED/);
  await expectAccessible(page);
  // Whatever is not as it should be is put right by a touch.
  for (const name of [
    /Legs crossed/,
    /Talks/,
    /Leans forward/,
    /The arm hangs/,
    /Needs the toilet/,
    /Let them sit/,
  ]) {
    const part = page.locator('.scene').getByRole('button', { name });
    if ((await part.count()) > 0) await part.dispatchEvent('click');
  }
  await expect(page.getByText('Sat for 5 min').first()).toBeVisible();

  await page.getByRole('button', { name: 'Arm', exact: true }).tap();
  await page.getByRole('button', { name: 'Lay the tape round the arm' }).tap();
  await expect(page.locator('.scene').getByText('28', { exact: true })).toBeVisible();
  await page
    .locator('.room-cuff')
    .filter({ hasText: /^adult / })
    .tap();
  await page.getByRole('button', { name: 'Put the chest piece on' }).tap();
  await expectAccessible(page);

  await page.getByRole('button', { name: 'Gauge', exact: true }).tap();
  const bulb = page.getByRole('button', { name: 'Squeeze the bulb' });
  // All air let out, the screw stands wide open; a hand that squeezes again has shut it.
  await page.getByRole('button', { name: 'Let all air out' }).tap();
  await expect(page.getByText('wide open')).toBeVisible();
  for (let stroke = 0; stroke < 20 && (await mmHg(page)) < 150; stroke++) {
    await bulb.tap();
    await page.waitForTimeout(420);
  }
  const peak = await mmHg(page);
  expect(peak).toBeGreaterThan(140);
  // The valve is turned with the finger: a quarter of a turn round its middle.
  const valve = page.getByRole('slider', { name: 'Valve' });
  await valve.evaluate((place) => place.scrollIntoView({ block: 'center' }));
  const box = await valve.boundingBox();
  if (box === null) throw new Error('no valve');
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await page.mouse.move(middle.x, middle.y - 40);
  await page.mouse.down();
  for (let angle = 0; angle <= 45; angle += 5) {
    const turn = (angle * Math.PI) / 180;
    await page.mouse.move(middle.x + 40 * Math.sin(turn), middle.y - 40 * Math.cos(turn));
  }
  await page.mouse.up();
  await expect.poll(() => mmHg(page), { timeout: 20_000 }).toBeLessThan(peak - 10);

  // A reload in the middle loses nothing: the needle goes on from where it was.
  const before = await mmHg(page);
  await page.reload();
  await expect(page.getByText('The page was loaded anew.', { exact: false })).toBeVisible();
  await page.getByRole('button', { name: 'Gauge', exact: true }).tap();
  const stood = await mmHg(page);
  await page.waitForTimeout(500);
  expect(await mmHg(page)).toBe(stood);
  await page.getByRole('button', { name: 'Go on' }).first().tap();
  const after = await mmHg(page);
  expect(after).toBeLessThan(before + 5);
  expect(after).toBeGreaterThan(20);

  await page.getByRole('button', { name: 'Let all air out' }).tap();
  await expect.poll(() => mmHg(page), { timeout: 10_000 }).toBeLessThan(4);
  await page.getByRole('button', { name: 'Write the pressure' }).tap();
  // The bedside's own screen: a blank keypad.
  await expect(page.getByLabel('Pressure', { exact: false }).first()).toHaveValue('');
  for (const key of ['1', '1', '6', '7', '2'])
    await page.getByRole('button', { name: key, exact: true }).tap();
  await page.getByRole('button', { name: 'Keep this reading' }).tap();
  // As at the bedside it can be taken again, on either arm, before the visit is over.
  await expect(page.getByText('116/72')).toBeVisible();
  await expect(page.getByRole('button', { name: 'On the left arm' })).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Take it again' }).tap();
  await expect(page.getByText('Written down: 116/72')).toBeVisible();
  await page.getByRole('button', { name: 'Finish the visit' }).tap();
  await expect(page.getByText('116/72')).toBeVisible();
  await page.getByRole('button', { name: /Keep the exercise/ }).tap();
  await expect(page.getByText('Say whether it can wait.')).toBeVisible();
  await page.getByText('No, it can wait').tap();
  await page.getByRole('button', { name: /Keep the exercise/ }).tap();
  await expect(page.getByText('Kept. SIMULATED, in no chart.')).toBeVisible();
  await expect(page.getByText('What this person teaches:')).toBeVisible();
  await expectAccessible(page);

  const listed = await page.request.get(`${demo.address}/api/exercises`);
  const { exercises, notices } = await listed.json();
  expect(notices).toContain('SIMULATED');
  expect(exercises).toHaveLength(1);
  expect(exercises[0]).toMatchObject({ scenario: 'quiet-morning', systolic: 116, diastolic: 72 });
  const { entry } = await (await page.request.get(`${demo.address}/api/exercises/${exercises[0].id}`)).json();
  const kinds = (entry.content.actions as { kind: string }[]).map(({ kind }) => kind);
  expect(kinds.filter((kind) => kind === 'squeeze').length).toBeGreaterThan(3);
  expect(kinds).toContain('valve');
  expect(kinds).toContain('quick-release');
  expect(entry.content.seed).toBeGreaterThan(0);
  const people = await (await page.request.get(`${demo.address}/api/books/care/persons`)).json();
  expect(JSON.stringify(people)).not.toContain(entry.id);
});
