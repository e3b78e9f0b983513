import { expect, expectAccessible, test } from './evenfall.js';

const UNREVIEWED = 'Esta traducción no ha tenido revisión clínica.';

test('a round in Spanish with degrees Fahrenheit, chosen on the device; the record keeps degC', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await expect(page.locator('html')).toHaveAttribute('lang', 'en-GB');

  await test.step('whoever reads English fetches no Spanish before it is chosen', async () => {
    await page.getByRole('link', { name: 'Preferences' }).click();
    await expect(page.getByText('Español: this translation is not clinically reviewed.')).toBeVisible();
    await expectAccessible(page);
    const asked = () => page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name));
    expect((await asked()).filter((name) => /\/spanish/.test(name))).toEqual([]);
    await page.getByText('Español', { exact: true }).click();
    await expect(page.getByRole('heading', { name: 'Preferencias' })).toBeVisible();
    expect((await asked()).filter((name) => /\/spanish/.test(name))).not.toEqual([]);
  });

  await test.step('units, dates and the clock count at once, and stay after a reload', async () => {
    await page.getByText('°F', { exact: true }).click();
    await page.getByText(/^2:30\sp\.\sm\.$/).click();
    await page.reload();
    await expect(page.getByRole('heading', { name: 'Preferencias' })).toBeVisible();
    await expect(page.getByRole('radio', { name: '°F' })).toBeChecked();
    await expect(page.locator('html')).toHaveAttribute('lang', 'es');
    await expect(page.getByText(UNREVIEWED)).toHaveCount(1);
    await expectAccessible(page);
  });

  await test.step('a temperature typed with a decimal comma, refused and then kept in °F', async () => {
    await page.getByRole('link', { name: 'Personas', exact: true }).click();
    await page.getByRole('link', { name: /Tomas Varga/ }).click();
    await page.getByRole('button', { name: 'Tomar una ronda' }).or(page.getByRole('link', { name: 'Tomar una ronda' })).click(); // biome-ignore format: one thought
    await page.getByRole('button', { name: 'Coinciden, y está de acuerdo' }).click();
    await page.getByRole('button', { name: 'Todo como debe ser' }).click();
    await page.goto(page.url().replace(/\/round.*$/, '/round/signs'));
    await page.locator('summary', { hasText: 'Temperatura' }).click();
    const field = page.getByLabel('Temperatura (°F)');
    await field.fill('113,1');
    await page.getByText('en el oído').click();
    const keep = page.getByRole('button', { name: /Guardarlo.*Temperatura/ });
    await keep.click();
    // Bedside handbook 4.1: 25 to 45 degC are taken, 77 to 113 degF.
    await expect(page.getByText(/indique de 77 a 113/)).toBeVisible();
    await field.fill('100,4');
    await keep.click();
    await expect(page.getByText('100,4 °F, en el oído', { exact: true })).toBeVisible();
    // Fever from 38 degC, which are 100.4 degF; bedside handbook 4.1, from memory.
    await expect(page.getByText(/^100,4 °F está en el intervalo llamado fiebre/)).toBeVisible();
    await expect(page.getByText(UNREVIEWED)).toHaveCount(1);
    await expectAccessible(page);
  });

  await test.step('signed, the record has 38 degC; the chart shows °F, and the story what is kept', async () => {
    await page.getByRole('link', { name: 'Ronda', exact: true }).click();
    for (const sign of ['Pulso', 'Respiraciones', 'Presión']) {
      const region = page.getByRole('region', { name: sign, exact: true });
      await region.getByRole('button', { name: 'Sin hacer …' }).click();
      await region.getByText('la persona no quiso').click();
      await region.getByRole('button', { name: 'Guardar este motivo' }).click();
    }
    await page.getByRole('button', { name: 'Firmar', exact: true }).click();
    await expect(page.getByRole('heading', { name: 'Registro' })).toBeVisible();
    await expect(page.getByText('100,4 °F, en el oído').first()).toBeVisible();
    const story = page.locator('details', { hasText: '38,0 °C, en el oído' }).first();
    await story.getByText('De dónde sale este número').click();
    const person = page.url().split('/people/')[1];
    const temperatures = async () => {
      const answer = await page.request.get(`${demo.address}/api/books/care/persons/${person}`);
      const { entries } = await answer.json();
      return entries.filter(
        ({ kind, content }: { kind: string; content: { evidence: { sign: { of: string } } } }) =>
          kind === 'sign' && content.evidence.sign.of === 'temperature',
      );
    };
    await expect.poll(async () => (await temperatures()).length).toBeGreaterThan(0);
    expect((await temperatures()).at(-1).content.evidence.sign).toMatchObject({ celsius: 38 });
    await expect(story.getByText('38,0 °C, en el oído')).toBeVisible();
    await expectAccessible(page);
  });

  await test.step('an amendment is typed in °F with a decimal comma, and the trend is in °F', async () => {
    const story = page.locator('details', { hasText: '38,0 °C, en el oído' }).first();
    await story.getByRole('link', { name: 'Enmendar' }).click();
    await page.getByText('La lectura se escribió mal').click();
    await page.getByLabel('Temperatura (°F)').fill('101,3');
    await page.getByLabel('¿Por qué se enmienda?').selectOption({ index: 1 });
    await page.getByRole('button', { name: 'Firmar la enmienda' }).click();
    // 101.3 degF are 38.5 degC, exact (UCUM 2.1).
    await expect(page.getByText('101,3 °F, en el oído').first()).toBeVisible();
    await page.getByRole('link', { name: 'Evolución en el tiempo' }).click();
    await expect(page.getByRole('columnheader', { name: 'Temperatura (°F)' })).toBeVisible();
    await expect(page.locator('.trend-table').getByText(/^101,3\b/)).toBeVisible();
  });
});
