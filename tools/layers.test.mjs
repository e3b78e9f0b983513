// The layers of ARCHITECTURE.md: an import that goes the wrong way fails the build, types included.
import { spawnSync } from 'node:child_process';
import {
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from './ensure.mjs';

const ORDER = [
  'clinical',
  'physiology',
  'practice',
  'record',
  'words',
  'exchange',
  'report',
  'api',
  'server',
  'web',
  'cli',
];

/** Which of the sources planted in packages the project's own linter takes; one run for all of them. */
function taken(planted) {
  const folder = mkdtempSync(join(tmpdir(), 'evenfall-layers-'));
  try {
    copyFileSync(join(root, 'biome.json'), join(folder, 'biome.json'));
    planted.forEach(({ name, source }, index) => {
      const at = join(folder, 'packages', name, 'src');
      mkdirSync(at, { recursive: true });
      writeFileSync(join(at, `planted${index}.ts`), source);
    });
    const args = [
      'lint',
      '--vcs-enabled=false',
      '--reporter=json',
      '--max-diagnostics=none',
      '--error-on-warnings',
    ];
    const biome = join(root, 'node_modules', '.bin', 'biome');
    const { stdout } = spawnSync(biome, args, { cwd: folder, encoding: 'utf8', maxBuffer: 1e8 });
    return planted.map((_, index) => !stdout.includes(`planted${index}.ts`));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

test('an import goes up the list only, as a value and as a type', () => {
  const pairs = ORDER.flatMap((name) =>
    ORDER.filter((other) => other !== name).map((other) => ({ name, other })),
  );
  const asked = pairs.flatMap(({ name, other }) => [
    { name, other, source: `import { thing } from '@evenfall/${other}';\nexport const same = thing;\n` },
    { name, other, source: `import type { Thing } from '@evenfall/${other}';\nexport type Same = Thing;\n` },
  ]);
  const said = taken(asked).map(
    (isTaken, index) => `${asked[index].name} imports ${asked[index].other}: ${isTaken}`,
  );
  const wanted = asked.map(({ name, other }) => {
    const isAbove = ORDER.indexOf(other) < ORDER.indexOf(name);
    // The browser and the command never hold the server: they speak to it.
    const isBarred = ['web', 'cli'].includes(name) && ['server', 'web'].includes(other);
    return `${name} imports ${other}: ${isAbove && !isBarred}`;
  });
  expect(said).toEqual(wanted);
}, 60_000);

test('clinical holds no clock, no time zone, no file, no page; and only the server knows SQL', () => {
  const sources = {
    clock: 'export const now = () => Date.now();\n',
    zone: "export const zone = () => new Intl.DateTimeFormat('en');\n",
    file: "import { readFileSync } from 'node:fs';\nexport const read = readFileSync;\n",
    page: 'export const title = () => document.title;\n',
    sum: 'export const sum = (a: number, b: number) => a + b;\n',
  };
  const asked = Object.values(sources).map((source) => ({ name: 'clinical', source }));
  expect(taken(asked)).toEqual([false, false, false, false, true]);
  const sql = "import { Kysely } from 'kysely';\nexport const Database = Kysely;\n";
  const inAll = taken(ORDER.map((name) => ({ name, source: sql })));
  expect(ORDER.filter((_, index) => inAll[index])).toEqual(['server']);
}, 60_000);

test('no chance in what is pure', () => {
  for (const file of sourcesOf('clinical'))
    expect(readFileSync(join(root, file), 'utf8'), file).not.toContain('Math.random');
});

test('every package declares what it imports of ours', () => {
  for (const name of ORDER) {
    const { dependencies } = JSON.parse(readFileSync(join(root, 'packages', name, 'package.json'), 'utf8'));
    const sources = sourcesOf(name);
    const imported = new Set(
      sources.flatMap((file) =>
        [...readFileSync(join(root, file), 'utf8').matchAll(/from '(@evenfall\/\w+)/g)].map(([, of]) => of),
      ),
    );
    for (const one of imported)
      expect(Object.keys(dependencies ?? {}), `${name} imports ${one}`).toContain(one);
  }
});

function sourcesOf(name) {
  const files = readdirSync(join(root, 'packages', name, 'src'), { recursive: true });
  return files
    .filter((file) => /\.tsx?$/.test(file) && !/\.test\./.test(file))
    .map((file) => join('packages', name, 'src', file));
}

test('no browser loads the writer of PDF files, and what draws reads no file but in that writer', () => {
  const pdf = "import { pagePdf } from '@evenfall/report/pdf';\nexport const same = pagePdf;\n";
  const file = "import { readFileSync } from 'node:fs';\nexport const read = readFileSync;\n";
  const asked = [
    { name: 'web', source: pdf },
    { name: 'cli', source: pdf },
    { name: 'report', source: file },
  ];
  expect(taken(asked)).toEqual([false, true, false]);
}, 60_000);
