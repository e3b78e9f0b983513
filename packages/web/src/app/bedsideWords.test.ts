import { existsSync, readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { wordsFor, wordsInParts } from '@evenfall/words';
import { expect, test } from 'vitest';

const web = fileURLToPath(new URL('..', import.meta.url));
const words = fileURLToPath(new URL('../../../words/src', import.meta.url));
/** What is drawn with the words of the bedside alone, and with those of a guided round too (`App.tsx`, `roundRoutes.tsx`). */
const AT_BEDSIDE = ['main.tsx', 'signIn/gatePages.ts', 'quickPages.ts'];
const IN_A_ROUND = [...AT_BEDSIDE, 'roundPages.ts', 'goOnPages.ts'];
const ASIDE = [...IN_A_ROUND, 'asidePages.ts'];
/** Lines that the catalogue's own package makes. */
const LINES_AT_BEDSIDE = ['gaugeStandingText.ts'];
const LINES_IN_A_ROUND = [...LINES_AT_BEDSIDE, 'beginningText.ts', 'restText.ts'];
/** Screens whose texts come later, or some of them: of these a key is written out, so that the test sees it. */
const PARTED_IN_A_ROUND = [
  'amend',
  'away',
  'bring',
  'card',
  'chart',
  'class',
  'diary',
  'equipment',
  'handover',
  'person',
  'protocol',
  'run',
  'series',
  'signIn',
  'trend',
];
const PARTED_AT_BEDSIDE = [
  ...PARTED_IN_A_ROUND,
  'begun',
  'count',
  'moments',
  'prepare',
  'rest',
  'result',
  'review',
  'second',
  'signs',
  'taps',
];

/** Files with everything that they import at once from this package. */
function withImports(entries: readonly string[]): string[] {
  const all = new Set(entries.map((name) => resolve(web, name)));
  for (const file of all) {
    const text = readFileSync(file, 'utf8');
    for (const [, from] of text.matchAll(/^(?:import|export) (?!type)[^;]*? from '(\.[^']+)\.js'/gm)) {
      const path = resolve(dirname(file), from as string);
      const found = [`${path}.ts`, `${path}.tsx`].find((name) => existsSync(name));
      if (found !== undefined) all.add(found);
    }
  }
  return [...all];
}

const textsOf = (files: readonly string[]) => files.map((file) => readFileSync(file, 'utf8')).join('\n');
const filesOf = (entries: readonly string[], lines: readonly string[]) => [
  ...withImports(entries),
  ...lines.map((name) => resolve(words, name)),
];

test.each([
  [
    'the bedside',
    [],
    filesOf(AT_BEDSIDE, LINES_AT_BEDSIDE),
    PARTED_AT_BEDSIDE,
    'QuickPage.tsx',
    'PressurePage.tsx',
  ],
  [
    'a round',
    ['round'],
    filesOf(IN_A_ROUND, LINES_IN_A_ROUND),
    PARTED_IN_A_ROUND,
    // What was taken can be reviewed with every part that the review is in.
    'MeasuresReview.tsx',
    'SignsPage.tsx',
  ],
  [
    'what stands aside in a round',
    ['round', 'aside'],
    filesOf(ASIDE, LINES_IN_A_ROUND),
    PARTED_IN_A_ROUND,
    'SignsPage.tsx',
    'PersonPage.tsx',
  ],
] as const)('what %s says stands in the parts of the catalogue that it has', async (...given) => {
  const [, parts, files, parted, drawn, later] = given;
  expect(files.some((file) => file.endsWith(drawn))).toBe(true);
  expect(files.some((file) => file.endsWith(later))).toBe(false);
  const device = wordsInParts();
  for (const part of parts) await device.bring(part);
  const [own, whole] = [device.english('en'), wordsFor('en')];
  const figures = new Proxy({}, { get: () => 1 });
  const isIn = (of: typeof own, key: string) => {
    try {
      (of.sentence as (key: string, figures: object) => string)(key, figures);
      return true;
    } catch (fault) {
      return !String(fault).includes(`No text for ${key}`);
    }
  };
  const texts = textsOf(files);
  const written = [...texts.matchAll(/['"`]([a-zA-Z]+\.[a-zA-Z]\w*)['"`]/g)].map(([, key]) => key as string);
  const keys = [...new Set(written)].filter((key) => isIn(whole, key));
  expect(keys.length).toBeGreaterThan(150);
  expect(keys.filter((key) => !isIn(own, key))).toEqual([]);
  const begun = [...texts.matchAll(/`([a-zA-Z]+)\.\w*\$\{/g)].map(([, section]) => section as string);
  expect([...new Set(begun)].filter((section) => (parted as readonly string[]).includes(section))).toEqual(
    [],
  );
});

test('what the bedside and a round name has its title there', () => {
  const [own, whole] = [wordsInParts().english('en'), wordsFor('en')];
  const texts = textsOf(filesOf(ASIDE, LINES_IN_A_ROUND));
  const asked = [...texts.matchAll(/\.title\(\s*'(\w+)'/g)].map(([, of]) => of as 'mark');
  expect(new Set(asked).size).toBeGreaterThan(10);
  for (const of of new Set(asked)) {
    expect(() => own.title(of, 'x'), of).not.toThrow();
    expect(whole.title(of, 'x'), of).toBe('x');
  }
  // Of later pages there is none.
  expect(() => own.title('homeScheme', 'x')).toThrow();
});
