import { existsSync, readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { wordsFor, wordsInParts } from '@evenfall/words';
import { expect, test } from 'vitest';

const web = fileURLToPath(new URL('..', import.meta.url));
const words = fileURLToPath(new URL('../../../words/src', import.meta.url));
/** What a device has before the words of later pages; pages that `App.tsx` brings with them are not among these. */
const AT_BEDSIDE = ['main.tsx', 'signIn/gatePages.ts', 'quickPages.ts', 'roundPages.ts', 'signPages.ts'];
/** Lines that the catalogue's own package makes, for the bedside too. */
const LINES = ['beginningText.ts', 'restText.ts', 'gaugeStandingText.ts'];

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

const said = [...withImports(AT_BEDSIDE), ...LINES.map((name) => resolve(words, name))];
const texts = said.map((file) => readFileSync(file, 'utf8')).join('\n');

test('what the bedside says stands in the part of the catalogue that it has', () => {
  expect(said.some((file) => file.endsWith('PressurePage.tsx'))).toBe(true);
  expect(said.some((file) => file.endsWith('PersonPage.tsx'))).toBe(false);
  const [own, whole] = [wordsInParts().english('en'), wordsFor('en')];
  const figures = new Proxy({}, { get: () => 1 });
  const isIn = (of: typeof own, key: string) => {
    try {
      (of.sentence as (key: string, figures: object) => string)(key, figures);
      return true;
    } catch (fault) {
      return !String(fault).includes(`No text for ${key}`);
    }
  };
  // A key as it is written, and the beginning of one that a screen puts together.
  const written = [...texts.matchAll(/['"`]([a-zA-Z]+\.[a-zA-Z]\w*)['"`]/g)].map(([, key]) => key as string);
  const keys = [...new Set(written)].filter((key) => isIn(whole, key));
  expect(keys.length).toBeGreaterThan(300);
  expect(keys.filter((key) => !isIn(own, key))).toEqual([]);
  const begun = [...texts.matchAll(/`([a-zA-Z]+)\.\$\{/g)].map(([, section]) => section as string);
  expect([...new Set(begun)].filter((section) => IN_BOTH_PARTS.includes(section))).toEqual([]);
});

/** Screens of whose texts a part comes later: at the bedside a key of them is written out, so that the test sees it. */
const IN_BOTH_PARTS = ['amend', 'chart', 'class', 'diary', 'equipment', 'person', 'protocol', 'signIn'];

test('what the bedside names has its title there', () => {
  const [own, whole] = [wordsInParts().english('en'), wordsFor('en')];
  const asked = [...texts.matchAll(/\.title\(\s*'(\w+)'/g)].map(([, of]) => of as 'mark');
  expect(new Set(asked).size).toBeGreaterThan(10);
  for (const of of new Set(asked)) {
    expect(() => own.title(of, 'x'), of).not.toThrow();
    expect(whole.title(of, 'x'), of).toBe('x');
  }
  // Of later pages there is none.
  expect(() => own.title('homeScheme', 'x')).toThrow();
});
