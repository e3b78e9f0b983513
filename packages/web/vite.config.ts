import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { askedOfReact } from './bundling/askedOfReact.ts';
import { figuresAlone } from './bundling/figuresAlone.ts';
import { LIBRARY, libraryModules } from './bundling/libraryModules.ts';
import { noCircles } from './bundling/noCircles.ts';
import { PARTS, partFileName } from './bundling/parts.ts';
import { screenWords } from './bundling/screenWords.ts';
import { serviceWorker } from './bundling/serviceWorkerPlugin.ts';
import { tableInSteps } from './bundling/tableInSteps.ts';
import { SCHEMA_BUILDER, unaskedSchemas } from './bundling/unaskedSchemas.ts';

const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as {
  version: string;
};

/**
 * The page runs under a policy that allows nothing inline: no inlined assets, no polyfill script. Calls that only
 * build a schema of the record are dropped from the bundle (`unaskedSchemas`), and so is what nothing here asks for of
 * the distributions' library (`libraryModules`, `moduleSideEffects`).
 */
export default defineConfig({
  plugins: [
    askedOfReact(),
    figuresAlone(),
    tableInSteps(),
    libraryModules(),
    unaskedSchemas(),
    screenWords(),
    noCircles(),
    serviceWorker(),
  ],
  resolve: {
    conditions: ['source', 'module', 'browser', 'development|production'],
    alias: {
      debug: fileURLToPath(new URL('bundling/noDebug.cjs', import.meta.url)),
      // What is installed as `react` has it itself; the router still asks for the stand-in.
      'use-sync-external-store/shim/index.js': 'react',
    },
  },
  define: { __PROGRAM__: JSON.stringify(`evenfall ${version}`) },
  build: {
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: {
      output: { codeSplitting: PARTS, chunkFileNames: partFileName },
      treeshake: {
        manualPureFunctions: [SCHEMA_BUILDER],
        moduleSideEffects: [{ test: LIBRARY, sideEffects: false }],
      },
    },
  },
  server: { proxy: { '/api': 'http://127.0.0.1:4780' } },
});
