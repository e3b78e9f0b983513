import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Figure } from '@evenfall/clinical';
import { build, type Rollup } from 'vite';
import { expect, test } from 'vitest';
import { CDC_HEIGHTS } from '../../../clinical/src/child/cdcHeightsTable.js';
import { FIGURES } from '../../../clinical/src/figures.js';
import { figuresAlone, withPartsAlone } from '../../bundling/figuresAlone.js';
import { tableInSteps } from '../../bundling/tableInSteps.js';

const clinical = fileURLToPath(new URL('../../../clinical/src/', import.meta.url));

/** What the browser has of a file of `clinical`. */
async function bundled<Exports>(code: string): Promise<{ readonly code: string; readonly all: Exports }> {
  const entry = '\0entry';
  const built = (await build({
    configFile: false,
    logLevel: 'error',
    root: clinical,
    plugins: [
      figuresAlone(),
      tableInSteps(),
      {
        name: 'entry',
        resolveId: (id) => (id === entry ? id : undefined),
        load: (id) => (id === entry ? code : undefined),
      },
    ],
    build: {
      write: false,
      minify: false,
      rolldownOptions: { input: entry, preserveEntrySignatures: 'strict' },
    },
  })) as Rollup.RollupOutput;
  const { code: made } = built.output[0];
  return { code: made, all: await import(`data:text/javascript,${encodeURIComponent(made)}`) };
}

const from = (name: string, file: string) =>
  `export { ${name} } from ${JSON.stringify(`${clinical}${file}`)};`;

test('every figure has its value, its unit, its source and how sure it is', async () => {
  const { all } = await bundled<{ FIGURES: typeof FIGURES }>(from('FIGURES', 'figures.ts'));
  const rows = (tables: Readonly<Record<string, Readonly<Record<string, Figure>>>>) =>
    Object.entries(tables).flatMap(([folder, table]) =>
      Object.entries(table).map(([key, { value, unit, source, sure }]) => {
        return [`${folder}.${key}`, { value, unit, source, sure }] as const;
      }),
    );
  expect(rows(FIGURES).length).toBeGreaterThan(500);
  expect(new Map(rows(all.FIGURES))).toEqual(new Map(rows(FIGURES)));
});

test('all that is made of figures is in the browser as elsewhere', async () => {
  const { all } = await bundled<Record<string, unknown>>(
    `export * from ${JSON.stringify(`${clinical}index.ts`)};`,
  );
  const whole: Record<string, unknown> = await import('@evenfall/clinical');
  const made = Object.keys(whole).filter(
    (name) => typeof whole[name] !== 'function' && !/FIGURES$/.test(name),
  );
  expect(made.length).toBeGreaterThan(50);
  for (const name of made) {
    // What a figure is for is said of fields of the protocol alone.
    const isSaid = name === 'SECTIONS';
    const plain = (one: unknown) =>
      JSON.stringify(one, (key, value) => (key === 'meaning' && !isSaid ? undefined : value)) ?? '';
    expect(JSON.parse(plain(all[name])), name).toEqual(JSON.parse(plain(whole[name])));
  }
  expect(made).toContain('SECTIONS');
});

test('a figure that nothing asks for is not there', async () => {
  const { code } = await bundled(
    `import { SCORE_FIGURES as F } from ${JSON.stringify(`${clinical}score/figures.ts`)}; export const third = F.meanThird.value;`,
  );
  expect(code).toContain('"value": 3');
  expect(code).not.toMatch(/standingSystolicFall|orthostatic/);
});

test('a rule that asks for its number alone has no more of the figure than that', async () => {
  const { code, all } = await bundled<{ plainMeanPressure: (systolic: number, diastolic: number) => number }>(
    from('plainMeanPressure', 'score/meanPressure.ts'),
  );
  expect(code).not.toMatch(/source|meanThird/);
  // A third of the way up from the diastolic: bedside handbook 5.1.
  expect(all.plainMeanPressure(120, 90)).toBe(100);
});

test('only the number of a figure and how sure it is are taken alone, by whichever name', () => {
  const taken = withPartsAlone(
    [
      "import { COUNT_FIGURES as F } from './figures.js';",
      "import { SIGN_FIGURES } from '../sign/figures.js';",
      'const a = [F.slow.value, F[id].sure, F[limits.high].value, SIGN_FIGURES.hot.value];',
      'const b = [F.slow.source, F[id], rules.F.slow.value, F.slow.values, FF.slow.value];',
    ].join('\n'),
  );
  expect(taken).toContain(
    'const a = [F_value.slow, F_sure[id], F_value[limits.high], SIGN_FIGURES_value.hot];',
  );
  expect(taken).toContain(
    'const b = [F.slow.source, F[id], rules.F.slow.value, F.slow.values, FF.slow.value];',
  );
  expect(taken).toContain("import * as F_value from './figures.js?value';");
  expect(taken).toContain("import * as F_sure from './figures.js?sure';");
  expect(taken).toContain("import * as SIGN_FIGURES_value from '../sign/figures.js?value';");
});

test('a rule asks for figures by name: taken apart, their table would come whole', () => {
  const rules = readdirSync(clinical, { recursive: true, encoding: 'utf8' }).filter(
    (file) => file.endsWith('.ts') && !file.endsWith('.test.ts'),
  );
  expect(rules.length).toBeGreaterThan(200);
  const whole = rules.filter((file) =>
    /\} = (\w+_FIGURES|F);/.test(readFileSync(`${clinical}${file}`, 'utf8')),
  );
  expect(whole).toEqual([]);
});

test('the heights of children are to the last bit those of the table', async () => {
  const { code, all } = await bundled<{ CDC_HEIGHTS: typeof CDC_HEIGHTS }>(
    from('CDC_HEIGHTS', 'child/cdcHeightsTable.ts'),
  );
  expect(CDC_HEIGHTS.rows).toHaveLength(217 + 1);
  expect(all.CDC_HEIGHTS).toEqual(CDC_HEIGHTS);
  expect(code.length).toBeLessThan(JSON.stringify(CDC_HEIGHTS).length);
});
