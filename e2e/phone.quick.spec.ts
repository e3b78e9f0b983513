import type { Page } from '@playwright/test';
import { beginRound, expect, expectAccessible, test } from './evenfall.js';

async function type(page: Page, keys: string) {
  for (const key of keys) {
    const name = { ' ': 'pulse', '/': 'slash', P: 'P by feel' }[key] ?? key;
    await page.getByRole('button', { name, exact: true }).tap();
  }
}

const toQuick = (page: Page, name: string) =>
  page.getByRole('listitem').filter({ hasText: name }).getByRole('link', { name: 'Type a set' }).tap();

const article = (page: Page, text: string) => page.getByRole('article').filter({ hasText: text });

test('from the list to a signed set in three touches: the person, the numbers, the signature', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
  const begun = Date.now();
  let touches = 0;
  await toQuick(page, 'Rufus Adeyemi');
  touches += 1;
  // Nothing stands in the field, and no earlier reading is in sight.
  await expect(page.getByLabel(/Pressure and pulse/)).toHaveValue('');
  // On a phone the keys of the page type, and no field takes the focus.
  await expect(page.getByLabel(/Pressure and pulse/)).not.toBeFocused();
  await expect(page.locator('.rate-number')).toHaveCount(0);
  await expect(page.getByText(/born 28 Oct 1951/)).toBeVisible();
  await type(page, '14692 76');
  await expect(page.getByLabel(/Pressure and pulse/)).toHaveValue('146/92 76');
  touches += 1;
  await page.getByRole('button', { name: 'Sign', exact: true }).tap();
  touches += 1;
  const signed = article(page, '146/92');
  await expect(signed).toBeVisible();
  console.log(
    `three-touch path: ${touches} touches and 8 keys, ${((Date.now() - begun) / 1000).toFixed(1)} s`,
  );
  expect(touches).toBe(3);
  await expect(signed.getByText(/^76 a minute was typed/).first()).toBeVisible();
  await expect(signed.getByText(/Right upper arm, sitting/).first()).toBeVisible();
  await expectAccessible(page);
});

test('once the numbers are in, the key that signs is in sight without scrolling and covers no other', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
  // Nothing is carried over of this person, so that arm, posture, cuff and gauge stand open above the keys.
  await toQuick(page, 'Bram Oyelaran');
  await expect(page.getByLabel('Arm', { exact: true })).toBeVisible();
  await page.setViewportSize({ width: 390, height: 844 });
  await page.getByLabel(/Pressure and pulse/).fill('128/76 72');
  const sign = page.getByRole('button', { name: 'Sign', exact: true });
  const isAtHand = (name: string) =>
    page.getByRole('button', { name, exact: true }).evaluate((key) => {
      const { left, top, width, height } = key.getBoundingClientRect();
      const there = document.elementFromPoint(left + width / 2, top + height - 2);
      return key.contains(there);
    });
  for (const key of ['1', '9', 'P by feel', '0', 'slash', 'Rub out', 'pulse', 'Sign'])
    expect(await isAtHand(key), key).toBe(true);
  expect(await page.evaluate(() => window.scrollY)).toBe(0);
  await page.setViewportSize({ width: 320, height: 640 });
  await expect(sign).toBeInViewport({ ratio: 1 });
  // A key that the keyboard comes to is not under the row that stays in sight.
  await page.getByRole('button', { name: '0', exact: true }).focus();
  expect(await isAtHand('0')).toBe(true);
  await expectAccessible(page);
  // What a severe one asks does not wait for the arm.
  await expect(page.getByRole('button', { name: 'None of these' })).toHaveCount(0);
  await page.getByLabel(/Pressure and pulse/).fill('198/124 72');
  await expect(page.getByLabel('Arm', { exact: true })).toHaveValue('');
  await page.getByRole('checkbox', { name: 'A severe headache' }).check();
  await page.getByRole('button', { name: /^Keep/ }).first().click();
  await expect(page.getByRole('alert').filter({ hasText: 'Act now' })).toBeVisible();
});

test('nothing typed is lost by a reload; a wrong number is said beside it; a second reading is kept with the first', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
  await toQuick(page, 'Rufus Adeyemi');
  await type(page, '15294 73');
  await page.reload();
  await expect(page.getByLabel(/Pressure and pulse/)).toHaveValue('152/94 73');
  await page.getByRole('button', { name: 'Sign', exact: true }).tap();
  await expect(page.getByText(/goes by steps of 2 a minute/)).toBeVisible();
  await page.getByRole('button', { name: 'Change', exact: true }).tap();
  await page.getByLabel('Pulse over').selectOption({ label: '60 seconds' });
  await expect(page.getByText('pulse, kept as 73 in 60 s', { exact: false })).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Keep it and type another' }).tap();
  await expect(page.getByText('1 reading kept, out of sight until the round is signed.')).toBeVisible();
  await expect(page.getByText('152/94')).toHaveCount(0);

  await test.step('it stays with whoever typed it: somebody else neither sees nor signs it', async () => {
    const who = page.getByLabel('Who is measuring?');
    await page.getByRole('button', { name: 'Change who is measuring' }).tap();
    await who.selectOption({ index: 2 });
    await expect(page.getByRole('alert')).toContainText('Not signed: 1 round begun (Rufus Adeyemi');
    await page.getByRole('button', { name: 'Change who is measuring' }).tap();
    await expect(page.getByText(/^Begun by .*, and not signed/)).toBeVisible();
    await expect(page.getByRole('group', { name: 'Keypad' })).toHaveCount(0);
    await expect(page.getByRole('button', { name: 'Sign', exact: true })).toHaveCount(0);
    await expectAccessible(page);
    await page.goto(page.url().replace(/quick$/, 'round/pressure'));
    await expect(page).toHaveURL(/\/round$/);
    await expect(page.getByText(/^Begun by .*, and not signed/)).toBeVisible();
    await page.getByRole('button', { name: 'Change who is measuring' }).tap();
    await who.selectOption({ index: 1 });
    await page.goto(page.url().replace(/round$/, 'quick'));
  });
  await type(page, '14890');
  await page.getByRole('button', { name: 'Sign', exact: true }).tap();
  const signed = article(page, '152/94');
  await expect(signed.getByText('148/90').first()).toBeVisible();
  await expect(signed.getByText(/150\/92 from 2 readings, by/)).toBeVisible();
});

test('a pulse that was tapped stays in a round that is typed to its end after a reload', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
  await page.getByRole('link', { name: /Juno Castellane/ }).tap();
  await beginRound(page);
  await page.getByText('Tap', { exact: true }).tap();
  const pad = page.getByRole('button', { name: 'Tap here' });
  for (let beat = 0; beat < 12; beat += 1) {
    await pad.tap();
    await page.waitForTimeout(600);
  }
  await page.getByRole('button', { name: 'Stop', exact: true }).tap();
  await expect(page.getByText(/Likely range/)).toBeVisible();
  // A page of its own, which comes without what taps need: it is fetched first.
  await page.goto(page.url().replace(/\/round.*$/, '/quick'));
  await page.getByLabel('Arm', { exact: true }).selectOption('Left');
  await type(page, '11876');
  await page.getByRole('button', { name: 'Sign', exact: true }).tap();
  await expect(page.getByText(/12 taps in/).first()).toBeVisible();
  await expect(article(page, '118/76')).toBeVisible();
});

test('a dangerous pressure is asked about before it is signed', async ({ page, demo }) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
  await toQuick(page, 'Rufus Adeyemi');
  await type(page, '198124');
  await expect(page.getByRole('button', { name: 'None of these' })).toBeVisible();
  await page.getByRole('button', { name: 'Sign', exact: true }).tap();
  await expect(page.getByText('Answer what is asked above, then sign.')).toBeVisible();
  await expectAccessible(page);
  // A tick that is not kept yet outlives the page; until it is taken back "none" cannot be said.
  const headache = page.getByRole('checkbox', { name: 'A severe headache' });
  await headache.check();
  await page.reload();
  await expect(headache).toBeChecked();
  await expect(page.getByRole('button', { name: 'None of these' })).toHaveCount(0);
  await headache.uncheck();
  await page.getByRole('button', { name: 'None of these' }).tap();
  await page.getByRole('button', { name: 'Sign', exact: true }).tap();
  await expect(article(page, '198/124')).toBeVisible();
  // A low one is asked about as well, also beside the reading of minutes before.
  await page.goto(`${demo.address}/`);
  await toQuick(page, 'Rufus Adeyemi');
  await page.getByLabel(/Pressure and pulse/).fill('84/50');
  await page.getByRole('button', { name: 'Sign', exact: true }).tap();
  await expect(page.getByText('The reading of 84/50 is very low.')).toBeVisible();
  await expect(page.getByText(/^The systolic of 84 is far from the 198 of/)).toBeVisible();
  await expect(page.getByText('Say that it was read so, or put it right, then sign.')).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Yes, 84/50 was read' }).tap();
  await page.getByRole('button', { name: 'Sign', exact: true }).tap();
  await expect(article(page, '84/50')).toBeVisible();
});

test('an arm that must not be used is not signed, and the fact stands on the page', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
  const name = await withFistula(demo.address);
  await toQuick(page, name);
  // Bedside handbook 3.15: never an arm with a fistula.
  await expect(page.getByText(/Left arm: fistula/)).toBeVisible();
  await type(page, '13284');
  const field = page.getByLabel(/Pressure and pulse/);
  await field.fill('L 132/84');
  await expect(
    page.getByText('This arm needs a decision: take a whole round, which asks for it.'),
  ).toBeVisible();
  await page.getByRole('button', { name: 'Sign', exact: true }).tap();
  await expect(page).toHaveURL(/\/quick$/);
  // Their pulse is known to be irregular: how long it was counted and how it felt are asked of each set, and nothing is chosen.
  await field.fill('R 136/86 76');
  await page.getByRole('button', { name: 'Sign', exact: true }).tap();
  await expect(page.getByText('Say above how long the pulse was counted, then sign.')).toBeVisible();
  await expect(page.getByText(/kept as 76 in/)).toHaveCount(0);
  await expectAccessible(page);
  await page.getByText('30 seconds', { exact: true }).tap();
  await page.getByText('regular', { exact: true }).tap();
  await page.getByRole('button', { name: 'Keep it and type another' }).tap();
  await field.fill('R 132/84 74');
  await expect(page.getByRole('radio', { name: 'regular', exact: true })).toBeVisible();
  await expect(page.getByRole('radio', { checked: true })).toHaveCount(0);
  await page.getByText('60 seconds', { exact: true }).tap();
  await page.getByRole('button', { name: 'Sign', exact: true }).tap();
  await expect(
    article(page, '132/84')
      .getByText(/Right upper arm/)
      .first(),
  ).toBeVisible();
});

/** Whoever of the demo has a fistula on the left. */
async function withFistula(address: string): Promise<string> {
  const { persons } = await (await fetch(`${address}/api/books/care/persons`)).json();
  for (const { id, identity } of persons) {
    const text = await (await fetch(`${address}/api/books/care/persons/${id}`)).text();
    if (text.includes('"fistula"')) return identity.name;
  }
  throw new Error('Nobody of the demo has a fistula');
}
