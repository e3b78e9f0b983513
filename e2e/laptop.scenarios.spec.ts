import { readFileSync } from 'node:fs';
import { expect, expectAccessible, test } from './evenfall.js';

test('a simulated person of one’s own is copied, put right by its fields, kept, saved, opened again and taken off the list', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ index: 1 });
  await page.goto(`${demo.address}/practice/scenarios`);
  await expect(page.getByText(/^SIMULATED/)).toBeVisible();
  await expectAccessible(page);

  await test.step('begun from a built-in one, by the keys', async () => {
    await page.getByLabel('Begin from').selectOption({ label: 'Stiff pipe' });
    await page.getByRole('button', { name: 'Begin' }).press('Enter');
    await expect(page.getByRole('heading', { level: 1, name: 'A new simulated person' })).toBeVisible();
    // Parts are folded until somebody looks at them.
    await expect(page.getByLabel('Systolic (mmHg)', { exact: true })).toBeHidden();
    await page.getByText(/^Pressure, as a perfect listener/).click();
    await expect(page.getByLabel('Systolic (mmHg)', { exact: true })).toHaveValue('178');
    await expect(page.getByLabel(/^Id in files/)).toHaveValue('');
  });

  await test.step('what is wrong is said at its field, and the first of them is gone to', async () => {
    await page.getByText(/^Silent gap between/).click();
    await page.getByLabel('From (mmHg)').fill('180');
    await page.getByRole('button', { name: 'Keep it' }).press('Enter');
    await expect(page.getByRole('alert')).toContainText('2 fields to put right');
    await expect(page.getByLabel('Name', { exact: true })).toBeFocused();
    await expect(page.getByLabel('From (mmHg)')).toHaveAttribute('aria-invalid', 'true');
    await expectAccessible(page);
  });

  await test.step('what a good observer reports is chosen in its order', async () => {
    await page
      .getByText(/^What a good observer reports/)
      .first()
      .click();
    const report = page.getByRole('group', { name: /^What a good observer reports/ }).last();
    await expect(report.getByRole('combobox')).toHaveCount(4);
    await report.getByLabel('2', { exact: true }).selectOption('');
    await expect(report.getByLabel('2', { exact: true })).toHaveValue('both-numbers');
    await report.getByLabel('3', { exact: true }).selectOption('pulse-rate');
  });

  const file = await test.step('a whole one is saved as a file', async () => {
    await page.getByLabel('Name', { exact: true }).fill('Tall gap (invented)');
    await expect(page.getByText('left blank: tall-gap')).toBeVisible();
    await page.getByLabel('From (mmHg)').fill('165');
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as a file' }).click();
    const saved = await saving;
    expect(saved.suggestedFilename()).toBe('tall-gap.scenario.json');
    const path = await saved.path();
    expect(JSON.parse(readFileSync(path, 'utf8'))).toMatchObject({
      id: 'tall-gap',
      title: 'Tall gap (invented)',
      gap: { topMmHg: 165, bottomMmHg: 134 },
      report: ['palpated-systolic', 'both-numbers', 'pulse-rate'],
    });
    return path;
  });

  await test.step('kept, it is on the list and leads to the room', async () => {
    await page.getByRole('button', { name: 'Keep it' }).click();
    await expect(page.getByRole('link', { name: 'Try it' })).toHaveAttribute(
      'href',
      '/practice/own/tall-gap',
    );
    await page.getByRole('link', { name: 'Try it' }).click();
    // Of the place's own, who comes in has the name that the place gave.
    await expect(page.getByRole('button', { name: /Come in/ })).toBeVisible();
    await expect(page.getByRole('heading', { level: 1, name: /Tall gap \(invented\)/ })).toBeVisible();
    await page.goto(`${demo.address}/practice`);
    await expect(page.getByRole('region', { name: 'Made here' }).getByRole('link')).toHaveAttribute(
      'href',
      '/practice/own/tall-gap',
    );
    await expect(page.getByText('Tall gap (invented)').first()).toBeVisible();
    await page.getByText('For whoever teaches').click();
    await page.getByRole('link', { name: 'Simulated people of our own' }).click();
    await expect(page.getByRole('link', { name: 'Tall gap (invented)', exact: true })).toBeVisible();
  });

  await test.step('a file is opened into the form; one that is none, or has a wrong field, says so', async () => {
    const choose = page.getByLabel('Open a file');
    const json = (text: string) => ({
      name: 'x.json',
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    });
    await choose.setInputFiles(json('{'));
    await expect(page.getByRole('alert')).toContainText('no JSON');
    await choose.setInputFiles(json('{"schema":1,"id":"x","systolic":300}'));
    await expect(page.getByRole('alert')).toContainText('/systolic');
    await choose.setInputFiles(file);
    await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Tall gap (invented)');
    await expect(page.getByText(/^What a good observer reports.* 3 filled in/)).toBeVisible();
    await expect(page.getByText(/keeping this makes a new version/)).toBeVisible();
  });

  await test.step('it is offered no more', async () => {
    await page.getByRole('link', { name: 'All of our own' }).click();
    await page.getByRole('button', { name: /Offer it no more/ }).click();
    await expect(page.getByText('None has been made here yet.')).toBeVisible();
  });
});
