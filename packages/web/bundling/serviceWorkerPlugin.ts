import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import type { Plugin } from 'vite';

/**
 * Writes `serviceWorker.js` for one build: the list of its files, and a name made from their content, so that a
 * browser finds another worker exactly where another app was built.
 */
export function serviceWorker(): Plugin {
  return {
    name: 'evenfall-service-worker',
    apply: 'build',
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const published = new URL('../public/', import.meta.url);
        const files = new Map<string, string | Uint8Array>(
          readdirSync(published).map((name) => [`/${name}`, readFileSync(new URL(name, published))]),
        );
        for (const part of Object.values(bundle)) {
          files.set(`/${part.fileName}`, part.type === 'chunk' ? part.code : part.source);
        }
        const shell = [...files.keys()].filter((path) => !path.endsWith('.map')).sort();
        const code = readFileSync(new URL('serviceWorker.js', import.meta.url), 'utf8');
        const hash = createHash('sha256').update(code);
        for (const path of shell) hash.update(path).update(files.get(path) ?? '');
        const source = code
          .replace("'__BUILD__'", JSON.stringify(hash.digest('hex').slice(0, 16)))
          .replace("['__SHELL__']", JSON.stringify(shell));
        this.emitFile({ type: 'asset', fileName: 'serviceWorker.js', source });
      },
    },
  };
}
