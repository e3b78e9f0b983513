import {
  ambulatoryResult,
  ambulatoryRules,
  HOME_OFFSET,
  homeResult,
  homeRules,
  NOTHING_BY_HAND,
  presetProtocol,
  type SeriesReading,
  usualResult,
} from '@evenfall/clinical';
import { loadWords, type Words, wordsFor } from '@evenfall/words';
import { describe, expect, test } from 'vitest';
import { A1, H1, readingAt } from '../../../clinical/src/outOfOffice/testing.js';
import { readPdf } from '../../testing/pdfText.js';
import { homePage } from '../page/homePage.js';
import type { PaperId } from '../page/paper.js';
import { recordingPage } from '../page/recordingPage.js';
import type { ReportHeader } from '../page/reportPage.js';
import { pagePdf } from './pagePdf.js';

const words = wordsFor('en-GB');
const AT = new Date('2025-03-10T08:00:00Z');

const HEADER: ReportHeader = {
  name: null,
  born: null,
  device: 'upper arm, medium cuff',
  arm: 'left',
  medicines: null,
  zone: 'Europe/Lisbon',
  madeAt: '2025-03-10 08:00 UTC',
  program: 'evenfall 0.0.0-test',
  isInvented: true,
};

const BESIDE = {
  asked: null,
  header: HEADER,
  actFirst: [],
  refused: [],
  beside: new Map<number, string[]>(),
  settled: [],
  office: [],
  target: [],
};

function homeOf(readings: readonly SeriesReading[], said: Words = words, id = 'ish-2020', header = HEADER) {
  const protocol = presetProtocol({ home: id });
  if (!protocol.ok) throw new Error(id);
  const rules = homeRules(protocol.value);
  const result = homeResult(readings, NOTHING_BY_HAND, rules);
  const chance = usualResult({
    component: 'systolic',
    ageYears: null,
    sex: null,
    office: null,
    home: result.mean.systolic === null ? null : { mean: result.mean.systolic, readings: result.used, days: result.days, own: null }, // biome-ignore format: one thought
    ambulatory: null,
    threshold: 135,
    offset: HOME_OFFSET.systolic,
  });
  const chances =
    chance === null
      ? null
      : {
          drawn: [{ component: 'systolic' as const, result: chance, threshold: 135 }],
          rows: [{ threshold: { systolic: 135, diastolic: 85 }, systolic: chance.probability, diastolic: null, prior: 'flat' as const }], // biome-ignore format: one thought
          assumptions: ['What it rests on.'],
        };
  return homePage(
    { ...BESIDE, header, readings, result, rules, ruleSet: { id, version: 'abc' }, chances },
    said,
  );
}

function recordingOf(readings: readonly SeriesReading[], said: Words = words, id = 'esc-2024') {
  const protocol = presetProtocol({ ambulatory: id });
  if (!protocol.ok) throw new Error(id);
  const rules = ambulatoryRules(protocol.value);
  const dayNight = { by: 'asleep-range', asleep: { from: 23 * 60, to: 7 * 60 } } as const;
  const result = ambulatoryResult(
    readings,
    { ageYears: null, isPregnant: false, scheduled: null, isAllUsed: false, dayNight, rejected: new Set(), restored: new Set() }, // biome-ignore format: one thought
    rules,
  );
  return recordingPage(
    { ...BESIDE, readings, result, rules, dayNight, ruleSet: { id, version: 'abc' }, chances: null },
    said,
  );
}

const read = async (page: ReturnType<typeof homeOf>, size: PaperId = 'a4') =>
  readPdf(await pagePdf(page, { size, createdAt: AT }));

/** Texts that stand one after the other, with others between. */
function inOrder(text: string, ...wanted: string[]): void {
  // Where a line ends is the paper's affair.
  const line = text.replaceAll(/\s+/g, ' ');
  let from = 0;
  for (const one of wanted) {
    const at = line.indexOf(one.replaceAll(/\s+/g, ' '), from);
    expect([one, at >= 0]).toEqual([one, true]);
    from = at + one.length;
  }
}

// Sizes: ISO 216 (210 x 297 mm) and ANSI (8.5 x 11 in), in points of 1/72 inch.
const SIZES = { a4: [(210 / 25.4) * 72, (297 / 25.4) * 72], letter: [612, 792] } as const;

describe.each(['a4', 'letter'] as const)('on %s', (size) => {
  test('a recording ends on no sheet that is nearly empty', async () => {
    const { pages } = await read(recordingOf(A1), size);
    // A line of a table is at least ten points: a quarter of a sheet is some 15 rows of five cells.
    expect(pages.at(-1)!.split('\n').length).toBeGreaterThan(60);
  });

  // Source of the numbers of H1 and A1: out-of-office handbook 19, here to two decimals.
  test('the week H1: one sheet with its numbers, then the list of all readings', async () => {
    const { pages, sizes } = await read(homeOf(H1), size);
    expect(pages.length).toBe(2);
    for (const [k, side] of [0, 1].entries()) expect(sizes[0]![k]!).toBeCloseTo(SIZES[size][side]!, 1);
    const [first, second] = pages as [string, string];
    inOrder(first, 'All that is used', '137', '84.96', '74', 'With decimals', '136.58', '84.96', '73.67');
    inOrder(
      first,
      'Morning',
      '139',
      '87',
      '72',
      'Evening',
      '134',
      '83',
      '75',
      'Morning minus evening',
      '5.00',
    );
    inOrder(first, 'SD', '3.19', '2.22', 'SD of daily means', '1.43');
    inOrder(
      first,
      '24 of 28 readings used, on 6 days; 4 left out, 0 could not be read.',
      'Left out, no. 1-4',
    );
    for (const { systolic, diastolic } of H1.slice(0, 4))
      expect(first).toContain(`(${systolic}/${diastolic})`);
    expect(second.match(/ \d\d:\d\d\n/g)?.length).toBe(28);
    for (const { systolic, diastolic, pulse } of H1) inOrder(second, `${systolic}\n${diastolic}\n${pulse}`);
  });

  test('the recording A1: one sheet with its numbers, then all readings and hours', async () => {
    const { pages } = await read(recordingOf(A1), size);
    const [first] = pages as [string];
    inOrder(
      first,
      '40 came (how many were scheduled was not said), 40 valid (100 %)',
      '32 by day, 8 by night',
    );
    inOrder(first, '24 hours', 'Systolic', '40', '129.8', '129.82', '130', '10.2', '109', '146');
    inOrder(first, 'day', 'Systolic', '32', '137', '137.31', '135', '4.8', '127', '146', '69');
    inOrder(first, 'night', 'Systolic', '8', '115', '115.13', '120', '4.7', '109', '122', '25');
    inOrder(first, '51.28', '46.63'); // pulse pressure by day and by night
    inOrder(first, 'systolic 16.2 %, diastolic 20.4 %', '27.7 mmHg');
    // The names of ESC 2024 are from memory (out-of-office handbook 8.1).
    inOrder(
      first,
      'night elevated, by this rule set',
      'Confirm the limits of this category with your local protocol',
    );
    expect(first).toContain('132.88/82.53'); // the plain mean, on the other side of 130
    expect(
      pages
        .slice(1)
        .join('\n')
        .match(/ \d\d:\d\d\n/g)?.length,
    ).toBe(40);
  });
});

test('the name stands before any chance, and that it is of the readings alone beside it', async () => {
  const { pages } = await read(homeOf(H1));
  inOrder(pages[0]!, 'By this rule set: high.', 'not for the person.', 'Chance of', 'What it rests on.');
  expect(pages[0]!.indexOf('Chance')).toBeGreaterThan(pages[0]!.indexOf('By this rule set'));
});

describe('a name whose letters no font of the page has', () => {
  const named = async (name: string, more: Partial<ReportHeader>) => {
    const framed = homeOf(H1, words, 'ish-2020', { ...HEADER, name, ...more });
    return (await read(framed, 'a4')).pages;
  };
  const born = '5 May 1961';

  test('is drawn as boxes, as many as letters, with the birth date or else the id beside it on every sheet', async () => {
    const pages = await named('山田 Hana', { born, identifier: '0195-42' });
    expect(pages.length).toBeGreaterThan(1);
    for (const text of pages) expect(text).toContain('□□ Hana (5 May 1961)');
    // A letter beyond the basic plane is one letter.
    for (const text of await named('𠮷野', { identifier: '0195-42' })) expect(text).toContain('□□ (0195-42)');
  });

  test('stands alone where it can be drawn, accents, Greek and Cyrillic among it', async () => {
    for (const name of ['Zoë Ångström', 'Ζωή', 'Юлия', 'Zoe\u0308']) {
      const pages = await named(name, { born, identifier: '0195-42' });
      for (const text of pages) expect(text.normalize('NFC')).toContain(name.normalize('NFC'));
      expect(pages.join()).not.toContain('(5 May');
      expect(pages.join()).not.toContain('□');
    }
  });
});

test('every page says that nobody stands behind invented numbers, and which page it is', async () => {
  const { pages } = await read(homeOf(H1));
  pages.forEach((text, k) => {
    expect(text).toContain('INVENTED: no person stands behind these numbers');
    expect(text).toContain(`Page ${k + 1} of 2`);
  });
  const person = homePage({ ...pageInput(), header: { ...HEADER, isInvented: false, name: 'Ada' } }, words);
  const found = await read(person);
  expect(found.pages.join('\n')).not.toContain('INVENTED');
  expect(found.pages[0]).toContain('Ada');
});

function pageInput() {
  const protocol = presetProtocol({ home: 'ish-2020' });
  if (!protocol.ok) throw new Error('ish-2020');
  const rules = homeRules(protocol.value);
  const result = homeResult(H1, NOTHING_BY_HAND, rules);
  return {
    ...BESIDE,
    readings: H1,
    result,
    rules,
    ruleSet: { id: 'ish-2020', version: 'abc' },
    chances: null,
  };
}

test('the same page at the same time is the same file; what is to be done first stands first', async () => {
  const page = homePage({ ...pageInput(), actFirst: ['182/121: act now.'] }, words);
  const [one, two] = await Promise.all([0, 1].map(() => pagePdf(page, { size: 'a4', createdAt: AT })));
  expect(Buffer.compare(one!, two!)).toBe(0);
  inOrder(readPdf(one!).pages[0]!, 'Act first', '182/121: act now.', 'Rule set', 'Quality');
});

// PDF 1.7 (ISO 32000-1) 14.8: a tagged document says so, says its language, and its figures have an alternative.
test('it is tagged: language, headings, tables, and figures with their text alternative', async () => {
  const page = homeOf(H1, await loadWords('es'));
  const { tags, alternatives, language, isMarked, pages } = await read(page);
  expect([language, isMarked]).toEqual(['es', true]);
  expect(tags.filter((one) => one === 'H1').length).toBe(1);
  expect(tags.filter((one) => one === 'Figure').length).toBe(2);
  expect(tags.filter((one) => one === 'Table').length).toBe(4); // means, days, chances, all readings
  expect(alternatives[0]).toContain('24 de 28 lecturas usadas');
  expect(alternatives[0]).toContain('137/84,96');
  expect(pages[0]).toContain('INVENTADO');
  expect(pages[0]).toContain('no ha tenido revisión clínica'); // nobody reviewed the Spanish
  expect(pages[0]).not.toContain('\uFFFD');
  // The name of a day stands in one line, as it does in English.
  for (const day of ['1. 1 ene', '2. 2 ene', '7. 7 ene']) expect(pages[0]).toContain(day);
});

test('a month of readings runs over sheets, each with the heading of its table, and loses none', async () => {
  const month = Array.from({ length: 120 }, (_, k) =>
    readingAt(
      k + 1,
      Math.floor(k / 4),
      ['07:30', '07:31', '20:30', '20:31'][k % 4]!,
      `${130 + (k % 9)}/80 70`,
    ),
  );
  const { pages } = await read(homeOf(month));
  const lists = pages.slice(1);
  expect(lists.length).toBeGreaterThan(2);
  expect(lists.join('\n').match(/ \d\d:\d\d\n/g)?.length).toBe(120);
  for (const text of lists.slice(1)) expect(text).toContain('Status');
});

test('the mean stands large over all else, with what it is of and the pulse', async () => {
  const { pages } = await read(homeOf(H1));
  // Out-of-office handbook 19: H1, by ISH 2020 without its first day.
  inOrder(pages[0]!, 'Result', '137/84.96', 'mmHg, the mean of 24 of 28 readings, pulse 74', 'Rule set');
  const day = (await read(recordingOf(A1))).pages[0]!;
  inOrder(day, '129.8/80', 'mmHg, the mean of 40 of 40 readings over 24 hours', 'By day 137/86, by night 115/69', 'Rule set'); // biome-ignore format: one thought
});

test('the head has a number of the person, and no empty line for a birth date beside it', async () => {
  const headOf = async (more: Partial<ReportHeader>) =>
    (await read(homeOf(H1, words, 'ish-2020', { ...HEADER, ...more }))).pages[0]!;
  expect(await headOf({})).toContain('Born:');
  const numbered = await headOf({ number: 'INV-0006' });
  inOrder(numbered, 'Number:', 'INV-0006');
  expect(numbered).not.toContain('Born:');
  inOrder(await headOf({ number: 'INV-0006', born: '5 May 1961' }), '5 May 1961', 'INV-0006');
});

// Urgent and with a long tail: what the first sheet has no room for stands over the list, not on a sheet of its own.
test('no sheet is nearly empty, whatever is to be acted on', async () => {
  for (const size of ['a4', 'letter'] as const)
    for (const actFirst of [[], ['182/121: act now. '.repeat(30)], ['182/121: act now. '.repeat(60)]]) {
      const page = homePage({ ...pageInput(), actFirst, settled: ['It is so. '.repeat(40)] }, words);
      const { pages } = await read(page, size);
      expect(pages.length).toBe(2);
      expect(pages[1]!.match(/ \d\d:\d\d\n/g)?.length).toBe(28);
    }
});

test('what was closed says whom somebody told, and is no longer urgent', async () => {
  const told = { lines: ['Told to Dr Abara: she comes today.'], isAll: true };
  const page = homePage({ ...pageInput(), actFirst: ['182/121: act now.'], closed: told }, words);
  const [first] = (await read(page)).pages;
  inOrder(first!, 'To act on first: closed', 'Told to Dr Abara', '182/121: act now.', 'Result');
  expect(page.blocks.some((one) => one.kind === 'lines' && one.isUrgent)).toBe(false);
  const half = homePage({ ...pageInput(), actFirst: ['182/121: act now.'], closed: { ...told, isAll: false } }, words); // biome-ignore format: one thought
  const [open] = (await read(half)).pages;
  inOrder(open!, 'Act first', '182/121: act now.', 'Closed.', 'Told to Dr Abara', 'Result');
});

test('nothing, or one reading, is a page all the same', async () => {
  for (const readings of [[], [H1[0]!]]) {
    for (const page of [homeOf(readings), recordingOf(readings)]) {
      const { pages } = await read(page);
      expect(pages.join('\n')).not.toMatch(/NaN|undefined|Infinity/);
      expect(pages[0]?.replaceAll(/\s+/g, ' ')).toContain('Not enough for this rule set.');
    }
  }
});
