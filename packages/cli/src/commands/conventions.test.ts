import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { typed } from '../../testing/typed.js';

const CONVENTIONS = readFileSync('docs/conventions.md', 'utf8');
const [, NAMES = ''] = /```text\n(By \{[^`]+)```/.exec(CONVENTIONS) ?? [];

/** What the page says is inside a name: by name, and the shape that it names instead. */
type Inside = Map<string, Inside | string | null>;

/** The names of the page, `name { name, name Shape, name { ... } }`, each with what is inside it. */
function namesOnPage(): Inside {
  const tokens = NAMES.match(/[A-Za-z0-9]+|[{}]/g) ?? [];
  let at = 0;
  const inside = (): Inside => {
    const found: Inside = new Map();
    while (at < tokens.length && tokens[at] !== '}') {
      const name = tokens[at++] as string;
      const next = tokens[at] ?? '';
      if (next === '{') {
        at++;
        found.set(name, inside());
        at++;
      } else if (/^[A-Z]/.test(next)) {
        found.set(name, next);
        at++;
      } else found.set(name, null);
    }
    return found;
  };
  return inside();
}

const ON_PAGE = namesOnPage();

function shapeOf(named: Inside | string | null | undefined): Inside | null {
  const shape = typeof named === 'string' ? ON_PAGE.get(named) : named;
  return shape instanceof Map ? shape : null;
}

/** Names of an answer that are not on the page at their place. What is inside `figures` goes by the code beside it. */
function notOnPage(value: unknown, page: Inside | null, path: string): string[] {
  if (Array.isArray(value)) return value.flatMap((one) => notOnPage(one, page, path));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, inside]) => {
    const place = `${path}.${name}`;
    if (page?.has(name) !== true) return [place];
    return name === 'figures' ? [] : notOnPage(inside, shapeOf(page.get(name)), place);
  });
}

const HOME = 'home docs/examples/home-week.csv';
const RECORDING = 'ambulatory docs/examples/recording-24h.csv --asleep 23:00-07:00';

// Whoever reads an answer by a program finds each of its names on that page, the nested ones at their place.
test.each([
  HOME,
  `${HOME} --rules esc-2024 --office 2025-03-01=148/92`,
  `${HOME} --rules nice-ng136 --treated yes --age 60`,
  RECORDING,
  `${RECORDING} --rules esc-2024 --office 148/92x2 --stiffness`,
  `${RECORDING} --rules nice-ng136 --treated yes --age 60`,
  'usual --office 148/92x2 --threshold 135/85',
  'usual --home 138/86x24 --days 7 --threshold 135/85',
  'usual --ambulatory 137/86 --threshold 135/85',
  'count --n 19 --window 15',
  'taps docs/examples/taps.txt',
  'run docs/examples/run.json',
  'average --rule esc-2024 150/92 146/90 144/88',
  'category --systolic 142 --diastolic 88 --guideline esc-2024',
  'cuff --arm 48 --at-hand adult',
  'child --sex f --age-months 60 --height-cm 105 --systolic 108 --diastolic 70',
])('docs/conventions.md says every name of the answer of evenfall %s', async (line) => {
  const { json } = await typed(`${line} --json`);
  expect(Object.keys(json[0] as object).length).toBeGreaterThan(3);
  const [command = ''] = line.split(' ');
  expect([...new Set(notOnPage(json[0], shapeOf(ON_PAGE.get(command)), command))]).toEqual([]);
});
