import { expect, expectAccessible, test } from './evenfall.js';

const HEADING =
  'schema,notice,person,entry,sign,standing,measuredAt,systolic,diastolic,perMinute,celsius,saidBy';
const SOMEBODY = '01950000-0000-7000-8000-0000000000aa';

/** A row of a table of another place; everybody in it is invented. */
function row(entry: number, sign: string, measuredAt: string, numbers: readonly string[]): string {
  const id = `01950000-0000-7000-8000-0000000001${String(entry).padStart(2, '0')}`;
  const about = ['evenfall-chart-3', 'INVENTED', SOMEBODY, id, sign, 'stands', measuredAt];
  return [...about, ...numbers, 'Ines Larch (invented)'].join(',');
}

const ROWS = [
  row(1, 'pressure', '2025-03-01T09:30:00+00:00', ['148', '92', '', '']),
  row(2, 'pressure', '2025-03-02T09:30:00+00:00', ['92', '148', '', '']),
  row(3, 'pulse', '2025-03-02T09:30:00+00:00', ['', '', 'about 70', '']),
  row(4, 'temperature', '02/03/2025 09:30', ['', '', '', '37.2']),
  row(5, 'temperature', '2025-03-03T09:30:00+00:00', ['', '', '', '38.1']),
  row(6, 'pulse', '2025-03-03T09:30:00+00:00', ['', '', '76', '']),
];

test('a table with bad rows is shown before anything is kept, kept, and adds nothing the second time', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByRole('link', { name: /Tomas Varga/ }).click();
  await page.getByRole('link', { name: 'Hand over' }).click();
  const person = /people\/([^/]+)\//.exec(page.url())?.[1] ?? '';
  const kept = async () =>
    (await (await page.request.get(`${demo.address}/api/books/care/persons/${person}`)).json()).entries;
  const before = await kept();
  const bringIn = page.getByRole('region', { name: 'Bring a file in' });
  if (await bringIn.getByLabel('Who is measuring?').isVisible())
    await bringIn.getByLabel('Who is measuring?').selectOption({ index: 1 });
  const choose = async (rows: readonly string[]) =>
    await bringIn.getByLabel('File').setInputFiles({
      name: 'other-place.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from([HEADING, ...rows, ''].join('\r\n')),
    });
  await choose(ROWS);
  await expect(bringIn.getByRole('heading', { name: '3 entries would be added' })).toBeVisible();
  await expect(bringIn.getByText('Pressure 148/92 mmHg')).toBeVisible();
  await expect(bringIn.getByText(/38.1 °C/)).toBeVisible();
  await expect(bringIn.getByRole('heading', { name: 'Refused: 3' })).toBeVisible();
  const refused = bringIn.getByRole('table').getByRole('row');
  await expect(refused.nth(1)).toContainText(/3diastolic \(9\).*148/);
  await expect(refused.nth(2)).toContainText(/4perMinute \(10\)a number.*about 70/);
  await expect(refused.nth(3)).toContainText(/5measuredAt \(7\).*02\/03\/2025 09:30/);
  await expectAccessible(page);
  expect(await kept()).toEqual(before);

  await bringIn.getByRole('button', { name: 'Keep 3 entries' }).click();
  await expect(bringIn.getByRole('status')).toHaveText('The file was brought in');
  await expect(bringIn.getByRole('heading', { name: '3 entries added' })).toBeVisible();
  await expect(refused).toHaveCount(4);
  expect(await kept()).toHaveLength(before.length + 3);
  await expectAccessible(page);

  await bringIn.getByRole('button', { name: 'Another file' }).click();
  await choose(ROWS);
  await expect(bringIn.getByRole('heading', { name: 'This file adds nothing' })).toBeVisible();
  await expect(bringIn.getByText('3 entries of it: here already.')).toBeVisible();
  await expect(bringIn.getByRole('button', { name: /^Keep/ })).toHaveCount(0);
  expect(await kept()).toHaveLength(before.length + 3);

  await bringIn.getByRole('button', { name: 'Another file' }).click();
  await choose(ROWS.map((line) => line.replace('INVENTED', '')));
  await expect(bringIn.getByRole('alert')).toHaveText(/None of this file can be taken/);
  await expect(bringIn.getByRole('table')).toContainText('notice');
  expect(await kept()).toHaveLength(before.length + 3);

  await page.getByRole('link', { name: 'Tomas Varga' }).first().click();
  const elsewhere = page.getByRole('region', { name: 'From elsewhere' });
  await expect(elsewhere.getByText('148/92 mmHg')).toBeVisible();
  await expect(elsewhere.getByText(/Said by Ines Larch \(invented\)/).first()).toBeVisible();
});

test('the chart of an Evenfall is brought in as the same record; a file that is dropped is read as one that is chosen', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByRole('link', { name: /Rufus Adeyemi/ }).click();
  await page.getByRole('link', { name: 'Hand over' }).click();
  const person = /people\/([^/]+)\//.exec(page.url())?.[1] ?? '';
  const path = `${demo.address}/api/books/care/persons/${person}/export?as=fhir`;
  const text = await (await page.request.get(path)).text();
  const bringIn = page.getByRole('region', { name: 'Bring a file in' });
  if (await bringIn.getByLabel('Who is measuring?').isVisible())
    await bringIn.getByLabel('Who is measuring?').selectOption({ index: 1 });
  const dropped = await page.evaluateHandle((json) => {
    const data = new DataTransfer();
    data.items.add(new File([json], 'chart.fhir.json', { type: 'application/fhir+json' }));
    return data;
  }, text);
  await bringIn.locator('.bring-drop').dispatchEvent('drop', { dataTransfer: dropped });
  await expect(bringIn.getByText('File: chart.fhir.json')).toBeVisible();
  await expect(bringIn.getByRole('heading', { name: 'This file adds nothing' })).toBeVisible();
  await expect(bringIn.getByText(/\d+ entries of it: here already\./)).toBeVisible();

  await bringIn.getByRole('button', { name: 'Another file' }).click();
  await bringIn.getByLabel('File').setInputFiles({
    name: 'long.json',
    mimeType: 'application/json',
    buffer: Buffer.alloc(8 * 1024 * 1024 + 1, ' '),
  });
  await expect(bringIn.getByRole('alert')).toHaveText(/This file has 8\.0 MB; at most 8 MB/);
});
