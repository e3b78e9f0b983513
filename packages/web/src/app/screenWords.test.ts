import { readdirSync, readFileSync } from 'node:fs';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';

const read = (path: string) => readFileSync(new URL(path, import.meta.url), 'utf8');

// The browser's copy of the catalogue is built without these (packages/web/bundling/screenWords.json).
const UNSAID = ['commands', 'options', 'commandLine', 'reach', 'average', 'category', 'score'];

test('no screen says a word that is left out of the browser’s catalogue', () => {
  const files = readdirSync(new URL('../', import.meta.url), { recursive: true, encoding: 'utf8' });
  const sources = files.filter((name) => /\.tsx?$/.test(name) && !/\.test\.tsx?$/.test(name));
  expect(sources.length).toBeGreaterThan(100);
  const key = new RegExp(`['"\`](${UNSAID.join('|')})\\.[A-Za-z$]`);
  expect(
    sources.filter((name) => key.test(read(`../${name}`)) || /refusedStart/.test(read(`../${name}`))),
  ).toEqual([]);
});

test('what is left out are whole files of every language, by the names they export', () => {
  const unsaid = JSON.parse(read('../../bundling/screenWords.json')) as Record<string, string[]>;
  for (const [file, names] of Object.entries(unsaid)) {
    const text = read(`../../../words/src/english/${file}`);
    const exported = [...text.matchAll(/^export const (\w+)/gm)].map(([, name]) => name);
    expect(exported.sort(), file).toEqual([...names].sort());
  }
  expect(wordsFor('en').sentence('commandLine.howToStop')).toMatch(/\w/); // tests and command line have them all
});
