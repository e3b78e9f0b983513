import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { readPdf } from '../../../report/testing/pdfText.js';
import { typedArgs } from '../../testing/typed.js';

const example = (name: string) => new URL(`../../../../docs/examples/${name}`, import.meta.url).pathname;
const WEEK = example('home-week.csv');
const MESSY = example('home-messy.csv');
const DAY = example('recording-24h.csv');

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'evenfall-sheets-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const at = (name: string) => join(folder, name);
const pdf = (name: string) => readPdf(readFileSync(at(name)));

// Source of the numbers: H1 and A1 of the out-of-office handbook 19, which the examples hold.
describe('a page and a figure from the command line', () => {
  test('home: the answer as ever, a PDF of two pages and an SVG', async () => {
    const plain = await typedArgs(['home', WEEK, '--json']);
    const drawn = await typedArgs([
      'home',
      WEEK,
      '--json',
      '--invented',
      '--pdf',
      at('out.pdf'),
      '--svg',
      at('out.svg'),
    ]);
    const wrote = `Wrote ${at('out.pdf')}\nWrote ${at('out.svg')}\n`;
    expect([drawn.code, drawn.stderr, drawn.stdout]).toEqual([0, wrote, plain.stdout]);
    const { pages, sizes } = pdf('out.pdf');
    expect(pages.length).toBe(2);
    expect(sizes[0]![1]).toBeCloseTo(841.89, 1); // A4
    for (const one of ['136.58', '84.96', 'By this rule set: high.', '61 %', 'INVENTED'])
      expect(pages[0]).toContain(one);
    const svg = readFileSync(at('out.svg'), 'utf8');
    expect(svg).toMatch(/^<svg [\s\S]*<\/svg>\n$/);
    expect(svg).toContain('24 of 28 readings used, on 6 days; 4 left out.');
    expect(readdirSync(folder).sort()).toEqual(['out.pdf', 'out.svg']); // nothing half-written is left
    expect(statSync(at('out.pdf')).mode & 0o077).toBe(0); // a person's readings are for their owner's eyes
  });

  test('office pressures that are too far from the readings are said on the page, too', async () => {
    for (const [one, office] of [
      ['none.pdf', '2024-01-01=160/90'],
      ['some.pdf', '2024-01-01=160/90,2025-03-04=150/92'],
    ] as const) {
      const { code } = await typedArgs(['home', WEEK, '--office', office, '--pdf', at(one)]);
      expect(code).toBe(0);
      expect(pdf(one).pages.join(' ').replace(/\s+/g, ' ')).toContain(
        '1 pressure not taken, more than 92 days',
      );
    }
  });

  test('ambulatory: Letter, in Spanish', async () => {
    const args = ['ambulatory', DAY, '--rules', 'esc-2024', '--asleep', '23:00-07:00', '--language', 'es'];
    const { code, stderr } = await typedArgs([
      ...args,
      '--paper',
      'letter',
      '--pdf',
      at('out.pdf'),
      '--svg',
      at('out.svg'),
    ]);
    expect([code, stderr]).toEqual([0, `Escrito: ${at('out.pdf')}\nEscrito: ${at('out.svg')}\n`]);
    const { pages, sizes, language } = pdf('out.pdf');
    expect([sizes[0], language]).toEqual([[612, 792], 'es']);
    for (const one of ['Presión arterial durante 24 horas', '129,82', '137,31', '115,13', '16,2 %'])
      expect(pages[0]).toContain(one);
    expect(pages[0]).not.toContain('INVENTADO');
    expect(readFileSync(at('out.svg'), 'utf8')).toContain(
      '40 de 40 lecturas conservadas: 32 de día, 8 de noche',
    );
  });

  test('what is dangerous stands first on the page, with when it was; refused rows stand at its end', async () => {
    const { code } = await typedArgs(['home', MESSY, '--zone', 'Europe/Lisbon', '--pdf', at('out.pdf')]);
    expect(code).toBe(0);
    const { pages } = pdf('out.pdf');
    const first = pages[0]!;
    expect(first.indexOf('Act first')).toBeGreaterThan(0);
    expect(first.indexOf('Act first')).toBeLessThan(first.indexOf('Rule set'));
    expect(first).toContain('182/121 (Mar 13 20:30)');
    expect(pages.at(-1)).toContain('Rows that could not be read');
  });
});

describe('a file that is there', () => {
  test('is never written over silently, and nothing else is written then', async () => {
    writeFileSync(at('out.pdf'), 'mine');
    const args = ['home', WEEK, '--pdf', at('out.pdf'), '--svg', at('out.svg')];
    const { code, stdout, stderr } = await typedArgs(args);
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr).toContain('--pdf');
    expect(stderr).toContain('--replace');
    expect(readFileSync(at('out.pdf'), 'utf8')).toBe('mine');
    expect(existsSync(at('out.svg'))).toBe(false);
    expect((await typedArgs([...args, '--replace'])).code).toBe(0);
    expect(pdf('out.pdf').pages.length).toBe(2);
  });

  test('nor is a folder that is not there made up', async () => {
    const { code, stdout, problems } = await typedArgs(['home', WEEK, '--json', '--pdf', at('no/out.pdf')]);
    expect([code, stdout]).toEqual([2, '']);
    expect(problems).toMatchObject([{ field: '--pdf', code: 'contradicts' }]);
  });
});

describe('what cannot be drawn', () => {
  test('several files: refused with the reason, and none of them is answered', async () => {
    for (const command of ['home', 'ambulatory']) {
      const { code, stdout, problems } = await typedArgs([
        command,
        WEEK,
        DAY,
        '--json',
        '--pdf',
        at('out.pdf'),
      ]);
      expect([code, stdout, existsSync(at('out.pdf'))]).toEqual([2, '', false]);
      expect(problems).toMatchObject([{ field: '--pdf', code: 'contradicts' }]);
      expect(problems[0]!.message).toContain('one file at a time');
    }
  });

  test('a series that is refused: no file', async () => {
    const { code } = await typedArgs(['home', '-', '--pdf', at('out.pdf')], {
      input: 'time,systolic,diastolic\n2025-03-03T07:30,142,90\n', // no zone: asked
    });
    expect([code, existsSync(at('out.pdf'))]).toEqual([2, false]);
  });

  test.each([
    [['--pdf', 'x.pdf', '--svg', 'x.pdf'], '--svg'],
    [['--svg', 'x.svg', '--paper', 'letter'], '--paper'],
    [['--replace'], '--replace'],
    [['--invented'], '--invented'],
    [['--pdf', 'x.pdf', '--paper', 'a5'], '--paper'],
  ])('%j is refused', async (more, field) => {
    const { code, problems } = await typedArgs(['home', WEEK, '--json', ...more]);
    expect([code, problems.map((one) => one.field)]).toEqual([2, [field]]);
  });
});
