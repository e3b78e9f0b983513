import { expect, expectAccessible, test } from './evenfall.js';
import { pdfPages } from './pdfText.js';

const MARGIN = { top: '12mm', bottom: '12mm', left: '12mm', right: '12mm' };

test('a diary is handed out, printed in the language of the person, and due back on the start page', async ({
  page,
  demo,
}) => {
  await page.clock.install();
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Bram Oyelaran/ }).click();
  const away = page.getByRole('region', { name: 'Away from the clinic' });
  await expect(away.getByText('No readings from home or over 24 hours yet.')).toBeVisible();

  const handOut = async (language: string) => {
    await away.getByRole('button', { name: 'Hand out a diary' }).click();
    const form = page.getByRole('form', { name: 'Hand out a diary' });
    await form.getByText(language, { exact: true }).click();
    await form.getByRole('button', { name: 'Keep it and show the page' }).click();
    await expect(page.getByRole('heading', { name: 'Diary to print' })).toBeVisible();
  };

  await test.step('what the protocol asks stands in the form, and what cannot be is said beside its field', async () => {
    await away.getByRole('button', { name: 'Hand out a diary' }).click();
    const form = page.getByRole('form', { name: 'Hand out a diary' });
    // Out-of-office handbook 2: seven days, two readings morning and evening.
    await expect(form.getByLabel('Days')).toHaveValue('7');
    await expect(form.getByLabel('Readings each morning and each evening')).toHaveValue('2');
    await form.getByLabel('Days').fill('15');
    await form.getByRole('button', { name: 'Keep it and show the page' }).click();
    await expect(form.getByText('A whole number from 1 to 14.')).toBeVisible();
    await expectAccessible(page);
    await form.getByLabel('Days').fill('7');
    await form.getByRole('button', { name: 'Cancel' }).click();
  });

  await test.step('English, on paper: one side to read, one to write on, of A4 and of Letter', async () => {
    await handOut('English');
    await expectAccessible(page);
    const diary = page.getByRole('article');
    // Bedside handbook 3.16: severe from 180 or 120 on, in pregnancy from 160 or 110; 3.1: 30 minutes, 5 minutes.
    await expect(diary).toContainText(
      'If the upper number is 180 or more, or the lower number is 120 or more',
    );
    await expect(diary).toContainText('call at once at 160 or more, or 110 or more');
    await expect(diary).toContainText('For 30 minutes before');
    await expect(diary).toContainText('If your clinic told you something else');
    await expect(diary.getByRole('rowheader', { name: 'Morning' })).toHaveCount(7);
    await expect(diary.getByRole('columnheader', { name: 'Upper' })).toHaveCount(2);
    for (const format of ['A4', 'Letter']) {
      const pages = pdfPages(await page.pdf({ format, margin: MARGIN }));
      expect(pages, format).toHaveLength(2);
      const [read = '', written = ''] = pages.map((text) => text.replace(/\s/g, ''));
      expect(read, format).toContain('emergency');
      expect(read, format).toContain('180');
      expect(written, format).toContain('Evening');
      expect(written, format).not.toContain('emergency');
    }
  });

  await test.step('Spanish and Arabic say that nobody reviewed them, and Arabic runs from right to left', async () => {
    await page.getByRole('link', { name: 'Chart' }).click();
    await handOut('Español');
    const diary = page.getByRole('article');
    await expect(diary).toHaveAttribute('lang', 'es');
    await expect(diary).toContainText('Si el número de arriba es 180 o más');
    await expect(diary).toContainText('Traducción sin revisión clínica.');
    await expectAccessible(page);
    expect(pdfPages(await page.pdf({ format: 'A4', margin: MARGIN }))).toHaveLength(2);
    await page.getByRole('link', { name: 'Chart' }).click();
    await handOut('العربية');
    await expect(diary).toHaveAttribute('dir', 'rtl');
    await expect(diary).toContainText('180');
    await expectAccessible(page);
    const day = await diary.getByRole('columnheader', { name: 'اليوم' }).boundingBox();
    const notes = await diary.getByRole('columnheader', { name: 'الأدوية والأعراض' }).boundingBox();
    expect(day?.x ?? 0).toBeGreaterThan(notes?.x ?? Number.POSITIVE_INFINITY);
    for (const format of ['A4', 'Letter'])
      expect(pdfPages(await page.pdf({ format, margin: MARGIN })), format).toHaveLength(2);
  });

  await test.step('each diary leads to the form of its own readings', async () => {
    await page.getByRole('link', { name: 'Chart' }).click();
    await away.getByRole('button', { name: 'Hand out a diary' }).click();
    const form = page.getByRole('form', { name: 'Hand out a diary' });
    await form.getByLabel('First day').fill('2027-03-01');
    await expect(form.getByLabel('Due back on')).toHaveValue('2027-03-08');
    await form.getByRole('button', { name: 'Keep it and show the page' }).click();
    await page.getByRole('link', { name: 'Chart' }).click();
    await away.getByRole('link', { name: /^Enter its readings ?: 1 Mar/ }).click();
    await expect(page.getByLabel('First day')).toHaveValue('2027-03-01');
    await page.goBack();
  });

  const due = page.getByRole('region', { name: 'Diaries due back' });
  await test.step('it is due back on its day: not before, then on the start page', async () => {
    await page.goto(`${demo.address}/`);
    await expect(page.getByRole('link', { name: /Bram Oyelaran/ }).first()).toBeVisible();
    await expect(due.getByRole('link', { name: /Bram Oyelaran/ })).toHaveCount(0);
    // Begins tomorrow, seven days, back the day after the last: eight days from now.
    await page.clock.fastForward(7 * 24 * 60 * 60 * 1000);
    await page.goto(`${demo.address}/`);
    await expect(page.getByRole('link', { name: /Bram Oyelaran/ }).first()).toBeVisible();
    await expect(due.getByRole('link', { name: /Bram Oyelaran/ })).toHaveCount(0);
    await page.clock.fastForward(24 * 60 * 60 * 1000);
    await page.goto(`${demo.address}/`);
    // Each of the three languages was handed out: each is named, and none is late on its own day.
    await expect(due.getByRole('link', { name: /Bram Oyelaran: due today, kept from / })).toHaveCount(3);
    await expectAccessible(page);
  });

  await test.step('and it ends with a reason', async () => {
    await due
      .getByRole('link', { name: /Bram Oyelaran/ })
      .first()
      .click();
    // What is kept is dated by a clock that the server believes.
    await page.clock.setSystemTime(new Date());
    for (let left = 4; left > 0; left -= 1) {
      await expect(away.getByRole('button', { name: /^It will not come back/ })).toHaveCount(left);
      await away
        .getByRole('button', { name: /^It will not come back/ })
        .first()
        .click();
      if (left === 4) {
        await away.getByRole('button', { name: 'Keep that it will not come back' }).click();
        await expect(away.getByText('Say why in a few words.')).toBeVisible();
      }
      await away.getByLabel('Why not?').fill('Lost on the way (invented)');
      await away.getByRole('button', { name: 'Keep that it will not come back' }).click();
      await expect(away.getByLabel('Why not?')).toHaveCount(0);
    }
    await expect(away.getByText('Diaries that are out')).toHaveCount(0);
    await page.clock.fastForward(9 * 24 * 60 * 60 * 1000);
    await page.goto(`${demo.address}/`);
    await expect(page.getByRole('link', { name: /Bram Oyelaran/ }).first()).toBeVisible();
    await expect(due.getByRole('link', { name: /Bram Oyelaran/ })).toHaveCount(0);
  });
});
