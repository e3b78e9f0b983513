import { expect, expectAccessible, test } from './evenfall.js';

/** Pages of a PDF, by its page objects. */
function pagesOf(pdf: Buffer): number {
  return (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length;
}

test('the preparation card is one page of A4 and of Letter, in its own language', async ({ page, demo }) => {
  await page.goto(`${demo.address}/card`);
  const card = page.getByRole('article');
  await expect(card.getByRole('heading')).toHaveText('Before your blood pressure is measured');
  // Bedside handbook 3.1: 30 minutes without caffeine, tobacco and exercise, five at rest.
  await expect(card.getByText('For 30 minutes before: no coffee, tea or cola, no tobacco, no exercise.')).toBeVisible(); // biome-ignore format: one thought
  await expect(card.getByText('Sit quietly for 5 minutes.')).toBeVisible();
  await expect(card.getByText(/not clinically reviewed/)).toHaveCount(0);
  await expectAccessible(page);
  await page.getByText('Español', { exact: true }).click();
  await expect(card.getByRole('heading')).toHaveText('Antes de medirle la presión arterial');
  await expect(card).toHaveAttribute('lang', 'es');
  await expect(card.getByText('Esta traducción no ha tenido revisión clínica.')).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Preparation card' })).toBeVisible();
  await expectAccessible(page);
  for (const language of ['Español', 'العربية', 'English']) {
    await page.getByText(language, { exact: true }).click();
    await expect(page.getByRole('radio', { name: language })).toBeChecked();
    await expect(card).toHaveAttribute('dir', language === 'العربية' ? 'rtl' : 'ltr');
    for (const format of ['A4', 'Letter']) {
      const margin = { top: '12mm', bottom: '12mm', left: '12mm', right: '12mm' };
      expect(pagesOf(await page.pdf({ format, margin })), `${language}, ${format}`).toBe(1);
    }
  }
});
