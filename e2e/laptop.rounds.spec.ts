import type { Page } from '@playwright/test';
import { beginRound, expect, expectAccessible, notDone, test, typePressure } from './evenfall.js';

async function measuredBy(page: Page, address: string, name: string): Promise<void> {
  await page.goto(`${address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: name });
}

/** One reading typed, on the arm that is suggested, without feeling first. */
async function takePressure(page: Page, numbers: string): Promise<void> {
  await page.goto(page.url().replace(/\/round.*$/, '/round/pressure'));
  await page.getByRole('button', { name: 'The cuff is on' }).click();
  await page.getByRole('button', { name: 'Go on without feeling' }).click();
  await page.getByRole('button', { name: 'Already taken: type it' }).click();
  await typePressure(page, numbers);
}

async function toReview(page: Page, ...without: string[]): Promise<void> {
  await page.goto(page.url().replace(/\/round.*$/, '/round'));
  for (const sign of without) await notDone(page, sign);
}

async function addFact(page: Page, kind: string, fill: () => Promise<void>): Promise<void> {
  await page.getByLabel('What is known').selectOption(kind);
  await fill();
  await page.getByLabel('From', { exact: true }).fill('2026-03-01');
  await page.getByRole('button', { name: 'Add this fact' }).click();
  await expect(page.getByRole('status').getByText('Added.')).toBeVisible();
}

// Bedside handbook 3.16: in pregnancy 160/110 or more is severe: urgent obstetric review, repeat within 15 minutes.
test('a severe pressure in pregnancy asks to act now, in every list, until it is said whom, when and what came back', async ({
  page,
  demo,
}) => {
  await measuredBy(page, demo.address, 'Wren Halloran (invented)');
  await page.getByRole('link', { name: /Orla Wickstead/ }).click();
  await page.getByRole('link', { name: 'Facts: add' }).click();
  await addFact(page, 'pregnancy', async () => await page.getByLabel(/weeks/i).fill('12'));
  await page.getByRole('link', { name: 'Chart' }).click();
  await beginRound(page);
  await takePressure(page, '164104');
  await expect(page.getByRole('alert', { name: 'Act now' })).toBeVisible();
  await expectAccessible(page);
  await toReview(page, 'Pulse', 'Breaths');
  await expect(page.getByText('164/104 in pregnancy is severe').first()).toBeVisible();
  await expectAccessible(page);
  // Nobody signed it yet: the list alarms all the same, on this device.
  await page.goto(`${demo.address}/`);
  const unsigned = page.getByText('Act now: 164/104, Severe pressure in pregnancy; taken, not signed');
  await expect(unsigned).toHaveCount(2);
  await page.getByRole('button', { name: /Go on with it.*Orla Wickstead/ }).click();
  await page.getByRole('button', { name: 'Sign', exact: true }).click();

  const alert = page.getByRole('group', { name: 'Act now' });
  await expect(alert.getByText('Act now: not closed')).toBeVisible();
  await expect(alert.getByText(/Confirm with your local protocol/)).toBeVisible();
  await expectAccessible(page);
  await page.goto(`${demo.address}/`);
  const orla = page.getByRole('link', { name: /Orla Wickstead/ });
  await expect(orla.getByText('Act now: Severe pressure in pregnancy, not closed')).toBeVisible();
  await expect(orla.getByText(/Look at the pressure again by/)).toBeVisible();
  await expect(page.getByText('A page that is closed cannot ring')).toBeVisible();
  await orla.click();

  await alert.getByRole('button', { name: 'Close it' }).click();
  await expect(alert.getByText(/^Write whom you told/)).toBeVisible();
  await expect(alert.getByText(/^Write what was said back/)).toBeVisible();
  await alert.getByLabel('Whom did you tell?').fill('the obstetrician on call (invented)');
  await alert.getByRole('button', { name: 'Close it' }).click();
  await expect(alert).toBeVisible();
  await alert.getByLabel('What was said back?').fill('comes at once');
  // Without network what was said waits on the device, over a reload of it, and is in the record once.
  await page.route('**/api/entries', (route) => route.abort());
  await alert.getByRole('button', { name: 'Close it' }).click();
  await expect(alert.getByText(/^Acted on; kept on this device.*\(invented\).*comes at once$/)).toBeVisible();
  await expect(alert.getByRole('button', { name: 'Close it' })).toHaveCount(0);
  await expect(page.getByText('That an alert was acted on is kept on this device')).toBeVisible();
  await expectAccessible(page);
  await page.reload();
  await expect(alert.getByText(/^Acted on; kept on this device/)).toBeVisible();
  await page.unroute('**/api/entries');
  await page.getByRole('button', { name: 'Send now' }).click();
  await expect(alert).toHaveCount(0);
  await expect(page.getByText(/told the obstetrician on call/)).toHaveCount(1);
  await expect(page.getByText(/told the obstetrician on call \(invented\).*comes at once/)).toBeVisible();
  await page.goto(`${demo.address}/`);
  await expect(orla).toBeVisible();
  await expect(orla.getByText(/^Act now/)).toHaveCount(0);
});

// Bedside handbook 6.4, worked example: girl of 5 years, 105 cm, 104/70 is elevated by its diastolic.
test('a child is placed by sex, age and height, and not without them', async ({ page, demo }) => {
  await measuredBy(page, demo.address, 'Wren Halloran (invented)');
  await test.step('the place chooses a scheme of children', async () => {
    await page.getByRole('link', { name: 'Local protocol' }).click();
    await page.getByRole('region', { name: 'Categories' }).getByText('All rules of this section').click();
    await page.getByLabel(/people under 18 years/).selectOption('fourth-report-2004');
    await expectAccessible(page);
    // The invented clinic has it already; nothing is put in force twice.
    const put = page.getByRole('button', { name: 'Put this protocol in force' });
    await expect(put).toBeDisabled();
    await expect(put).not.toHaveClass(/button-first/);
    await expect(page.getByText('Nothing: this is what is in force.')).toBeVisible();
  });
  await page.goto(`${demo.address}/`);
  await page.getByRole('link', { name: 'Add a person' }).click();
  await page.getByLabel('Name', { exact: true }).fill('Nell Marsh (invented)');
  await page.getByLabel(/birth/i).fill(bornYearsAgo(5));
  await page.getByRole('button', { name: 'Add', exact: false }).last().click();
  await expect(page.getByRole('heading', { name: 'Nell Marsh (invented)' })).toBeVisible();
  await beginRound(page);
  await takePressure(page, '10470');
  await toReview(page, 'Pulse', 'Breaths');
  await expect(page.getByText('It cannot be put in a category.')).toBeVisible();
  await expect(page.getByText(/without its sex, .*“Sex for reference tables” among the facts/)).toBeVisible();
  await expect(page.getByText(/without its height, .*under “Other signs”/)).toBeVisible();

  await page.goto(page.url().replace(/\/round.*$/, '/facts'));
  await addFact(page, 'reference-sex', async () => await page.getByText('female', { exact: true }).click());
  await page.goto(page.url().replace(/\/facts.*$/, '/round/signs'));
  const also = page.getByRole('region', { name: 'Others to take' });
  await also.locator('summary', { hasText: 'Height' }).click();
  await also.getByLabel('Height (cm)').fill('105');
  const height = also.locator('details', { hasText: 'Height' }).first();
  await height.getByText('measured', { exact: true }).click();
  await height.getByRole('button', { name: /^Keep/ }).click();
  await expect(page.getByText('105 cm, measured').first()).toBeVisible();
  await page.goto(page.url().replace(/\/round.*$/, '/round'));
  await expect(page.getByText(/104\/70.* falls in “Elevated” by Fourth Report 2004/)).toBeVisible();
  await expectAccessible(page);
});

test('a learner’s round stays preliminary until a supervisor signs for it, with a reading of their own beside it', async ({
  page,
  demo,
}) => {
  await measuredBy(page, demo.address, 'Wren Halloran (invented)');
  await page.getByRole('link', { name: /Edda Rook/ }).click();
  await beginRound(page);
  await takePressure(page, '13884');
  await toReview(page, 'Pulse', 'Breaths');
  await page.getByLabel(/I am learning/).check();
  await page.getByRole('button', { name: 'Sign', exact: true }).click();
  const learnt = page.getByRole('article').filter({ hasText: '138/84' });
  await expect(learnt.getByText('Preliminary')).toBeVisible();

  await test.step('a supervisor takes their own', async () => {
    await page.goto(`${demo.address}/`);
    await page.getByRole('button', { name: 'Change who is measuring' }).click();
    await page.getByLabel('Who is measuring?').selectOption({ label: 'Dr Ines Abara (invented)' });
    await page.getByRole('link', { name: /Edda Rook/ }).click();
    await beginRound(page);
    await takePressure(page, '13280');
    await toReview(page, 'Pulse', 'Breaths');
    await expect(page.getByLabel(/I am learning/)).not.toBeChecked();
    await page.getByRole('button', { name: 'Sign', exact: true }).click();
  });

  await test.step('the list of what waits shows the values and leads to the round', async () => {
    await page.goto(`${demo.address}/`);
    await page.getByRole('link', { name: /^\d+ rounds? to countersign$/ }).click();
    await expect(page.getByRole('heading', { name: 'To countersign' })).toBeVisible();
    await expectAccessible(page);
    await page
      .getByRole('region', { name: 'Edda Rook' })
      .getByRole('link', { name: /138\/84/ })
      .click();
  });

  await learnt.getByRole('button', { name: 'Countersign' }).click();
  await learnt.getByRole('button', { name: 'Sign as supervisor' }).click();
  await expect(learnt.getByText('Say whether it stands.')).toBeVisible();
  // The device knows who is measuring.
  await expect(
    learnt.getByRole('option', { name: 'Dr Ines Abara (invented)', exact: true }),
  ).toHaveJSProperty('selected', true);
  await test.step('what is not relied on is kept once, the form closes, and the list asks for it no more', async () => {
    await learnt.getByText('No', { exact: true }).click();
    await learnt.getByLabel('Note (needed if not)').fill('The cuff was too small');
    await learnt.getByRole('button', { name: 'Sign as supervisor' }).click();
    await expect(learnt.getByText('What the supervisor says of it is kept, and stands above.')).toBeVisible();
    await expect(learnt.getByText('Say whether it stands.')).toHaveCount(0);
    await expect(learnt.getByText('Seen, and not relied on').first()).toBeVisible();
    const chart = page.url();
    await page.goto(`${demo.address}/countersign`);
    await expect(page.getByRole('heading', { name: 'To countersign' })).toBeVisible();
    await expect(page.getByRole('link', { name: /138\/84/ })).toHaveCount(0);
    await page.goto(chart);
  });
  await learnt.getByRole('button', { name: 'Countersign' }).click();
  await learnt
    .getByLabel('A reading by Dr Ines Abara (invented) to set beside it')
    .selectOption({ index: 1 });
  const beside = learnt.getByRole('row', { name: /Pressure/ });
  await expect(beside.getByText('138/84')).toBeVisible();
  await expect(beside.getByText('132/80')).toBeVisible();
  await learnt.getByText('Yes, it stands').click();
  await expectAccessible(page);
  await learnt.getByRole('button', { name: 'Sign as supervisor' }).click();
  await expect(learnt.getByText('Countersigned.')).toBeVisible();
  await expect(learnt.getByText('Preliminary')).toHaveCount(0);
  await expect(learnt.getByRole('row', { name: /Pressure/ })).toContainText('132/80');
  expect(JSON.parse(await demo.run('check', '--json'))).toMatchObject({ findings: [] });
});

function bornYearsAgo(years: number): string {
  const now = new Date();
  return `${now.getFullYear() - years}-${String(now.getMonth() + 1).padStart(2, '0')}-01`;
}
