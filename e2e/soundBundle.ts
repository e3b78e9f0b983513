import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** The sounds of `physiology` and their player (`soundEntry`) as one module, as a browser loads it. */
export async function soundBundle(): Promise<string> {
  const made = await build({
    configFile: false,
    logLevel: 'error',
    root: here('..'),
    resolve: { conditions: ['source', 'module', 'browser'] },
    build: {
      write: false,
      minify: false,
      lib: { entry: here('soundEntry.ts'), formats: ['es'], fileName: 'sound' },
    },
  });
  const [first] = Array.isArray(made) ? made : [made];
  if (first === undefined || !('output' in first)) throw new Error('nothing was built');
  const chunk = first.output.find((one) => one.type === 'chunk');
  if (chunk === undefined) throw new Error('no module was built');
  return chunk.code;
}
