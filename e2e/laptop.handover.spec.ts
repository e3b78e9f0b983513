import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, expectAccessible, test } from './evenfall.js';
import { EvenfallServer } from './server.js';

test('a chart is downloaded, taken in by another Evenfall, and is the same there', async ({ page, demo }) => {
  const folder = await mkdtemp(join(tmpdir(), 'evenfall-handover-'));
  const other = new EvenfallServer({ demo: true, isOwn: true });
  await other.start();
  try {
    await page.goto(`${demo.address}/`);
    await page.getByRole('link', { name: /Rufus Adeyemi/ }).click();
    await page.getByRole('link', { name: 'Hand over' }).click();
    await expect(page.getByRole('heading', { name: 'Hand over: Rufus Adeyemi' })).toBeVisible();
    await expectAccessible(page);
    const person = /people\/([^/]+)\//.exec(page.url())?.[1] ?? '';
    const file = async () => {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('link', { name: 'Download for another system (FHIR)' }).click(),
      ]);
      expect(download.suggestedFilename()).toBe(`evenfall-INVENTED-${person}.fhir.json`);
      const path = join(folder, download.suggestedFilename());
      await download.saveAs(path);
      return path;
    };
    const nameless = await readFile(await file(), 'utf8');
    expect(nameless).not.toContain('Adeyemi');
    await page.getByLabel('With name, birth date and number').check();
    const path = await file();
    expect(await readFile(path, 'utf8')).toContain('Adeyemi');

    const first = JSON.parse(await other.run('import', path, '--json'));
    expect(first).toMatchObject({ person, already: 0, refused: [], passedOver: {} });
    expect(first.added).toBeGreaterThan(3);
    const again = JSON.parse(await other.run('import', path, '--json'));
    expect(again).toMatchObject({ added: 0, already: first.added });
    const whole = async (address: string) =>
      await (await page.request.get(`${address}/api/books/care/persons/${person}`)).json();
    expect(await whole(other.address)).toEqual(await whole(demo.address));
    expect(JSON.parse(await other.run('check', '--json'))).toMatchObject({ findings: [] });
  } finally {
    await other.stop();
    await rm(folder, { recursive: true, force: true });
  }
});

test('a round is copied as plain text by a template of one’s own', async ({ page, demo, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto(`${demo.address}/`);
  await page.getByRole('link', { name: /Rufus Adeyemi/ }).click();
  await page.getByRole('link', { name: 'Hand over' }).click();
  const preview = page.locator('.handover-preview pre');
  await expect(preview).toHaveText(/^INVENTED: .*\d+\/\d+.* mmHg/);
  await page.getByText('Hand-over paragraph').click();
  await expect(preview).toHaveText(/Rufus Adeyemi, born .*\n.*Pressure \d+/s);

  await page.getByText('Change the template').click();
  const template = page.getByLabel('Template', { exact: true });
  await template.fill('Pulse {puls}');
  await expect(page.getByText('{puls} is not known here').first()).toBeVisible();
  await expectAccessible(page);
  await template.fill('Pulse ');
  await page.getByRole('button', { name: 'pulse', exact: true }).click();
  await expect(template).toHaveValue('Pulse {pulse}');
  const text = (await preview.textContent()) ?? '';
  expect(text).toMatch(/^INVENTED: Pulse \d+/);
  await expect(
    page.getByText(/This template has no .actNow. or .told.: .* put under the text/),
  ).toBeVisible();
  await page.getByRole('button', { name: 'Copy' }).click();
  await expect(page.getByRole('status')).toHaveText('Copied.');
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(text);

  await page.reload();
  await page.getByText('Hand-over paragraph').click();
  await expect(preview).toHaveText(text);
  await page.getByText('Change the template').click();
  await page.getByRole('button', { name: 'As it was' }).click();
  await expect(preview).toHaveText(/Rufus Adeyemi/);
});

test('values of another system stand apart in the chart, and can be marked as wrong', async ({
  page,
  demo,
}) => {
  const folder = await mkdtemp(join(tmpdir(), 'evenfall-elsewhere-'));
  await page.goto(`${demo.address}/`);
  await page.getByRole('link', { name: /Tomas Varga/ }).click();
  await expect(page.getByRole('link', { name: 'Hand over' })).toBeVisible();
  const person = page.url().split('/').at(-1) ?? '';
  const about = {
    resourceType: 'Observation',
    status: 'final',
    subject: { reference: 'Patient/9' },
    performer: [{ display: 'Ines Larch (invented)' }],
    effectiveDateTime: '2025-03-01T09:30:00+00:00',
  };
  const loinc = (code: string) => ({ coding: [{ system: 'http://loinc.org', code }] });
  const quantity = (value: number, code: string) => ({ value, code, system: 'http://unitsofmeasure.org' });
  const pulse = { ...about, id: 'a', code: loinc('8867-4'), valueQuantity: quantity(71, '/min') };
  const sugar = { ...about, id: 'b', code: loinc('2339-0'), valueQuantity: quantity(90, 'mg/dL') };
  const bundle = {
    resourceType: 'Bundle',
    type: 'collection',
    entry: [{ resource: pulse }, { resource: sugar }],
  };
  const file = join(folder, 'other.json');
  await writeFile(file, JSON.stringify(bundle));
  const came = JSON.parse(await demo.run('import', file, '--person', person, '--json'));
  expect(came).toMatchObject({
    added: 1,
    refused: [{ field: '/entry/1/resource/code', got: '2339-0', file }],
  });

  await page.reload();
  const elsewhere = page.getByRole('region', { name: 'From elsewhere' });
  await expect(elsewhere.getByText('71 /min')).toBeVisible();
  await expect(elsewhere.getByText(/Said by Ines Larch \(invented\)\. Brought in by Import/)).toBeVisible();
  await expectAccessible(page);
  await elsewhere.getByText('This should not be in this chart').click();
  await elsewhere.getByLabel('Why is it amended?').selectOption({ label: 'wrong person' });
  const who = elsewhere.getByLabel(/Who/);
  if (await who.isVisible()) await who.selectOption({ index: 1 });
  await elsewhere.getByRole('button', { name: 'Mark as entered in error' }).click();
  await expect(elsewhere.locator('del')).toHaveText('71 /min');
  await expect(elsewhere.getByText(/wrong person/)).toBeVisible();
  await expectAccessible(page);
  await rm(folder, { recursive: true, force: true });
});
