import type { Page } from '@playwright/test';
import { expect, expectAccessible, test } from './evenfall.js';
import { pdfPages } from './pdfText.js';
import { tooWide } from './tooWide.js';

/** How many pages a PDF has. */
function pagesOf(pdf: Buffer): number {
  return (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length;
}

/** The width between the margins of A4 and of Letter, CSS px: 210 and 215.9 mm less twice 13 mm, at 96 px an inch. */
const PRINTED_WIDTHS = { A4: 695, Letter: 717 } as const;

async function expectNothingCut(page: Page): Promise<void> {
  await page.emulateMedia({ media: 'print' });
  for (const width of Object.values(PRINTED_WIDTHS)) {
    await page.setViewportSize({ width, height: 1000 });
    const over = await page.evaluate(() =>
      [...document.querySelectorAll('.print-head, .printed-chart, .printed-chart *, .print-foot')]
        .filter((one) => one.getBoundingClientRect().right > document.documentElement.clientWidth + 1)
        .map((one) => one.outerHTML.slice(0, 80)),
    );
    expect(over, `cut at ${width} px`).toEqual([]);
  }
}

test('a chart prints on one page of A4 and of Letter: whose it is, facts, the drawing, each round with who and when', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByRole('link', { name: /Greta Lomax/ }).click();
  await expect(page.getByRole('button', { name: 'Print this chart' })).toBeVisible();
  await expectAccessible(page);
  for (const format of ['A4', 'Letter'] as const) expect(pagesOf(await page.pdf({ format }))).toBe(1);

  await expectNothingCut(page);
  const head = page.locator('.print-head');
  await expect(head).toBeVisible();
  await expect(head).toContainText('Greta Lomax');
  await expect(head).toContainText('INV-0013');
  await expect(page.locator('.print-foot')).toContainText('INVENTED: nobody here is real');
  await expect(page.locator('.print-foot')).toContainText(/printed .* · evenfall /);
  const rows = page.locator('.printed-table .print-round');
  await expect(rows).toHaveCount(2);
  // What is said of a round goes across the sheet, under its numbers.
  const says = await rows.last().locator('.print-says').boundingBox();
  expect(says?.width ?? 0).toBeGreaterThan(0.75 * PRINTED_WIDTHS.A4);
  await expect(rows.first()).toContainText('108/60');
  await expect(rows.first()).toContainText('Dr Ines Abara (invented)');
  await expect(rows.last()).toContainText('blood cultures');
  await expect(page.getByRole('img', { name: 'Pressure and pulse over time' })).toBeVisible();
  // The signs have their key under them, and a name that hangs in the air says of what it is.
  await expect(page.locator('.print-trend').getByText('systolic – diastolic')).toBeVisible();
  await expect(page.getByText('Early-warning score: Numbers of the Royal College')).toBeVisible();
  // What belongs to the screen stays there.
  await expect(page.getByRole('button', { name: 'Take a round' })).toBeHidden();
  await expect(page.getByText('What the round comes to').first()).toBeHidden();
  const colours = await page.evaluate(() => {
    const shown = [...document.querySelectorAll('.page *')].filter((one) => one.checkVisibility());
    return [...new Set(shown.map((one) => getComputedStyle(one).color))];
  });
  for (const colour of colours) {
    const [red, green, blue] = colour.match(/\d+/g) ?? [];
    expect([colour, red === green && green === blue]).toEqual([colour, true]);
  }
});

test('what is open, amended or in error is so on paper too, and the facts that hold', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByRole('link', { name: /Cleo Marchetti/ }).click();
  await expect(page.getByRole('heading', { name: 'Chart' })).toBeVisible();
  // WCAG 2.2, 1.4.4: on a phone with letters twice as large nothing of a chart is wider than the screen.
  await page.setViewportSize({ width: 390, height: 844 });
  await page.evaluate(() => document.documentElement.style.setProperty('font-size', '200%', 'important'));
  await expect.poll(() => tooWide(page)).toEqual([]);
  await page.evaluate(() => document.documentElement.style.removeProperty('font-size'));
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.emulateMedia({ media: 'print' });
  const chart = page.locator('.printed-chart');
  await expect(chart.getByText(/^Pregnant, 31 weeks/)).toBeVisible();
  // First of all with what to do about it, and beside its round by name.
  const open = chart.locator('.print-open');
  await expect(open).toContainText(
    /^Severe pressure in pregnancy: Act now: not closed\. .* call obstetrics urgently/,
  );
  await expect(open).toContainText('Of the round of');
  await expect(chart.locator('.print-says').first()).toContainText(
    'Severe pressure in pregnancy: Act now: not closed.',
  );
  await page.emulateMedia({ media: 'screen' });
  await page.goto(`${demo.address}/`);
  await page.getByRole('link', { name: /Tomas Varga/ }).click();
  await expect(page.getByRole('heading', { name: 'Chart' })).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  await expect(chart.locator('del', { hasText: '88' })).toBeVisible();
  await expect(chart.getByText('126 72 (amended)')).toBeVisible();
  // What it was before stands struck through, and the words have the room that no pressure takes.
  await expect(chart.locator('del', { hasText: '126' })).toBeVisible();
  await expect(chart.getByRole('columnheader', { name: 'Noted' })).toBeVisible();
});

test('more rounds flow to further pages, each with its head', async ({ page, demo }) => {
  await page.goto(`${demo.address}/`);
  await page.getByRole('link', { name: /Greta Lomax/ }).click();
  await expect(page.getByRole('heading', { name: 'Chart' })).toBeVisible();
  await page.route(/\/api\/books\/care\/persons\/[^/]+$/, async (route) => {
    const response = await route.fetch();
    const record = await response.json();
    // The same rounds again and again, as a long stay would have them: other ids, later days.
    const copies = Array.from({ length: 12 }, (_, at) => {
      const text = JSON.stringify(
        record.entries.filter(({ round }: { round: string | null }) => round !== null),
      );
      const two = String(at + 10);
      return JSON.parse(
        text.replace(/[0-9a-f]{8}(-[0-9a-f]{4}-7[0-9a-f]{3}-[0-9a-f]{4}-[0-9a-f]{12})/g, `000000${two}$1`),
      );
    });
    for (const [at, copied] of copies.entries())
      for (const entry of copied) {
        entry.agent = record.agents[0].id;
        entry.measuredAt.at = new Date(Date.parse(entry.measuredAt.at) - (at + 1) * 7_200_000).toISOString();
      }
    await route.fulfill({ json: { ...record, entries: [...record.entries, ...copies.flat()] } });
  });
  await page.reload();
  await expect(page.locator('.round-block')).toHaveCount(26);
  for (const format of ['A4', 'Letter'] as const) {
    const pdf = await page.pdf({ format });
    const pages = pdfPages(pdf);
    expect(pages.length).toBe(pagesOf(pdf));
    expect(pages.length).toBeGreaterThan(2);
    // Every page says whose chart it is, and that it is invented; the drawing stands on the first alone.
    for (const text of pages) {
      expect(text.split('Greta Lomax'), 'whose it is, once a sheet').toHaveLength(2);
      expect(text).toContain('INV-0013');
      expect(text).toContain('INVENTED: nobody here is real');
      // The rounds begin under the drawing and flow on: no sheet is left without one.
      expect(text).toMatch(/Early-warning score/);
    }
    // Four of these rounds a sheet and more, where the words of each in one narrow column left room for two.
    expect(pages.length).toBeLessThanOrEqual(7);
    expect(pages.map((text) => text.includes('Pressure (mmHg) and pulse'))).toEqual(
      pages.map((_, at) => at === 0),
    );
  }
  await expectNothingCut(page);
  await expect(page.locator('.print-round').first()).toHaveCSS('break-inside', 'avoid');
});

/** What makes a series long: notes, rows that could not be read, numbers out of range, a danger, a recorder that was set to more. */
async function lengthen(page: Page): Promise<void> {
  const text =
    'Had walked the dog in the rain before it; a neighbour called, and sat down two minutes before. ';
  await page.route(/\/api\/books\/care\/persons\/[^/]+$/, async (route) => {
    const record = await (await route.fetch()).json();
    for (const { kind, content } of record.entries) {
      if (kind !== 'series' || content.readings.length < 28) continue;
      for (const [place, one] of content.readings.entries()) {
        if (place % 3 === 0) one.note = text;
        if (place % 4 === 0) one.irregular = true;
      }
      const left = [2, 9, 14, 19, 20];
      for (const place of left) content.readings[place].systolic = 270;
      Object.assign(content.readings[12], { systolic: 196, diastolic: 124 });
      Object.assign(content.readings[6], { systolic: null, diastolic: null, pulse: null });
      content.value.dropped = [
        ...left.map((place) => ({ index: place + 1, code: content.of === 'home' ? 'wrist' : 'systolic-range', figures: {} })), // biome-ignore format: one thought
        { index: 7, code: 'failed', figures: {} },
      ];
      const limit = { source: 'ACC/AHA 2017', sure: 'found', confirmLocally: true };
      content.value.actNow = [
        { condition: 'severe-away', figures: { systolic: 196, diastolic: 124 }, ...limit },
      ];
      content.refused = Array.from({ length: 9 }, (_, at) => ({
        ...{
          line: 80 + at,
          got: `14O/9${at}; ${text}`,
          code: 'not-a-number',
          systolic: null,
          diastolic: null,
        },
      }));
      Object.assign(content, { note: text.repeat(2), treated: false, features: ['chest-or-back-pain'] });
      if (content.of === 'ambulatory') content.scheduled = 70;
    }
    await route.fulfill({ json: record });
  });
}

for (const language of ['en', 'es'] as const) {
  test(`a week at home and a recording print on one sheet and the list of all readings, usual and long (${language})`, async ({
    page,
    demo,
  }) => {
    await page.addInitScript(
      (chosen) => localStorage.setItem('evenfall.preferences', JSON.stringify({ language: chosen })),
      language,
    );
    const words = {
      en: { first: ['Fall by night', 'How sure is it?'], list: 'All readings', none: 'None for the pressure' },
      es: { first: ['Descenso nocturno', '¿Cuánta seguridad hay?'], list: 'Todas las lecturas', none: 'Ninguna para la' },
    }[language]; // biome-ignore format: one thought
    await page.goto(`${demo.address}/`);
    await page
      .getByRole('link', { name: /Mira Tolland/ })
      .first()
      .click();
    const kinds = [/^(Over|Durante) 24 ho/, /^(At home|En casa), .*nov/i];
    const hrefs: string[] = [];
    for (const name of kinds)
      hrefs.push((await page.getByRole('link', { name }).first().getAttribute('href')) ?? '');
    for (const isLong of [false, true]) {
      if (isLong) await lengthen(page);
      for (const [at, name] of kinds.entries()) {
        await page.goto(`${demo.address}${hrefs[at]}`);
        await expect(page.getByRole('heading', { name: words.list })).toBeVisible();
        if (isLong) await expect(page.getByText(words.none)).toBeVisible();
        for (const format of ['A4', 'Letter'] as const) {
          const pages = pdfPages(await page.pdf({ format }));
          const where = `${name} ${isLong ? 'long' : 'usual'} ${format}`;
          // What ends the first sheet stands on it, and whatever follows is of the list's sheets; each says whose it is.
          expect(pages[0], where).toContain(words.first[at]);
          expect(pages[0], where).toContain(isLong ? '80' : language === 'en' ? 'Nothing' : 'nada fuera');
          const lists = pages.map((text) => text.includes(words.list) && !text.includes('/min'));
          expect(lists.indexOf(true), where).toBe(1);
          for (const text of pages) expect(text, where).toContain('INV-0014');
          // A day's readings end on the second sheet, with room left: no further one has a word or nothing on it.
          if (!isLong) expect(pages, where).toHaveLength(2);
        }
        await page.emulateMedia({ media: 'print' });
        for (const width of Object.values(PRINTED_WIDTHS)) {
          await page.setViewportSize({ width, height: 1000 });
          const drawing = page.locator('.away-sheet .away-figure svg:visible').first();
          await expect
            .poll(async () => (await drawing.boundingBox())?.width ?? 0)
            .toBeGreaterThan(0.95 * width);
          // What overflows makes a browser print all of it smaller.
          expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
          const smallest = await page.evaluate(() => {
            const texts = [...document.querySelectorAll('.page *')].filter(
              (one) => one.checkVisibility() && [...one.childNodes].some((node) => node.nodeType === 3),
            );
            return Math.min(
              ...texts.map((one) => {
                const svg = one.closest('svg');
                const scale =
                  svg === null ? 1 : svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
                return Number.parseFloat(getComputedStyle(one).fontSize) * scale * 0.75;
              }),
            );
          });
          expect(smallest, 'points').toBeGreaterThanOrEqual(7);
        }
        await expect(page.getByRole('combobox')).toBeHidden();
        await expect(page.getByRole('button', { name: /^Take out/ }).first()).toBeHidden();
        await page.emulateMedia({ media: null });
        await expect(page.locator('.away-assumptions'), 'said once on the screen').toBeHidden();
        await page.setViewportSize({ width: 1280, height: 800 });
      }
    }
  });
}
