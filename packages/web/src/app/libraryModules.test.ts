import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { build, type Rollup } from 'vite';
import { expect, test } from 'vitest';
import { asModule, LIBRARY, libraryModules } from '../../bundling/libraryModules.js';

const DISTRIBUTIONS = [
  'beta-quantile',
  'binomial-cdf',
  'chisquare-cdf',
  'chisquare-quantile',
  'f-cdf',
  'f-quantile',
  'normal-cdf',
  'normal-quantile',
  't-cdf',
  't-quantile',
];
const inTest = createRequire(import.meta.url);
/** From within the package that declares the distributions. */
const asInstalled = createRequire(inTest.resolve('../../../clinical/package.json'));
type Distribution = (...given: number[]) => number;

async function bundled(): Promise<{ readonly code: string; readonly all: Record<string, Distribution> }> {
  const entry = '\0all';
  const built = (await build({
    configFile: false,
    logLevel: 'error',
    root: fileURLToPath(new URL('../../../clinical', import.meta.url)),
    resolve: { alias: { debug: fileURLToPath(new URL('../../bundling/noDebug.cjs', import.meta.url)) } },
    plugins: [
      libraryModules(),
      {
        name: 'entry',
        resolveId: (id) => (id === entry ? id : undefined),
        load: (id) =>
          id === entry
            ? DISTRIBUTIONS.map(
                (name, at) =>
                  `export { default as d${at} } from ${JSON.stringify(asInstalled.resolve(`@stdlib/stats-base-dists-${name}`))};`,
              ).join('\n')
            : undefined,
      },
    ],
    build: {
      write: false,
      minify: false,
      rolldownOptions: {
        input: entry,
        preserveEntrySignatures: 'strict',
        treeshake: { moduleSideEffects: [{ test: LIBRARY, sideEffects: false }] },
      },
    },
  })) as Rollup.RollupOutput;
  const { code } = built.output[0];
  return { code, all: await import(`data:text/javascript,${encodeURIComponent(code)}`) };
}

test('what the browser computes is to the last bit what the library computes', async () => {
  const { code, all } = await bundled();
  const shares = [0, 1e-9, 0.025, 0.3, 0.5, 0.9, 0.975, 0.999999, 1];
  const sizes = [0.5, 1, 4, 4.3, 10, 30, 79, 500.5, 1e6];
  for (const [at, name] of DISTRIBUTIONS.entries()) {
    const asked = all[`d${at}`] as Distribution;
    const installed = asInstalled(`@stdlib/stats-base-dists-${name}`) as Distribution;
    const firsts = name.endsWith('quantile') ? shares : [-3, 0, 0.2, 1, 2.5, 17, 400];
    let numbers = 0;
    for (const first of firsts) {
      for (const a of sizes) {
        for (const b of name === 'binomial-cdf' ? shares : sizes) {
          const given = [first, name === 'binomial-cdf' ? Math.round(a) : a, b];
          const one = asked(...given);
          expect(Object.is(one, installed(...given)), `${name} of ${given}`).toBe(true);
          if (Number.isFinite(one)) numbers += 1;
        }
      }
    }
    expect(numbers, name).toBeGreaterThan(50);
  }
  // Left out are their factories, and the wrapper that each file would need as CommonJS.
  expect(code.match(/stats-base-dists-[\w-]+.lib.factory\.js|stdlib.+__commonJS/g)).toBe(null);
});

test('a file that is written otherwise stops the build', () => {
  const path = asInstalled.resolve('@stdlib/stats-base-dists-t-quantile');
  expect(asModule(readFileSync(path, 'utf8'), path)).toMatch(/^export default main;$/m);
  expect(() => asModule("if (x) { y = require( './y.js' ); }", 'other.js')).toThrow('other.js');
  expect(() => asModule('exports.a = 1;', 'other.js')).toThrow('other.js');
});
