import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { typed } from '../../testing/typed.js';

const CONVENTIONS = readFileSync('docs/conventions.md', 'utf8');

// Whoever reads an answer by a program finds each of its names on that page.
test.each([
  'home docs/examples/home-week.csv',
  'ambulatory docs/examples/recording-24h.csv --asleep 23:00-07:00',
  'usual --office 148/92x2 --threshold 135/85',
  'count --n 19 --window 15',
  'taps docs/examples/taps.txt',
  'run docs/examples/run.json',
  'average --rule esc-2024 150/92 146/90 144/88',
  'category --systolic 142 --diastolic 88 --guideline esc-2024',
  'cuff --arm 48 --at-hand adult',
  'child --sex f --age-months 60 --height-cm 105 --systolic 108 --diastolic 70',
])('docs/conventions.md says every name of the answer of evenfall %s', async (line) => {
  const { json } = await typed(`${line} --json`);
  const names = Object.keys(json[0] as object);
  expect(names.length).toBeGreaterThan(3);
  expect(names.filter((name) => !new RegExp(`\\b${name}\\b`).test(CONVENTIONS))).toEqual([]);
});
