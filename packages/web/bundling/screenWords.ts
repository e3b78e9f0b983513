import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import type { Plugin } from 'vite';

/** Words of the catalogue that only the command line and the server say, by file (see `app/screenWords.test.ts`). */
const UNSAID = JSON.parse(readFileSync(new URL('screenWords.json', import.meta.url), 'utf8')) as Readonly<
  Record<string, readonly string[]>
>;

/** Leaves out of the browser's copy of the catalogue what no screen says. */
export function screenWords(): Plugin {
  return {
    name: 'evenfall-screen-words',
    apply: 'build',
    load(id) {
      const isOfLanguage = /words.src.[a-z]+.[A-Za-z]+\.ts$/.test(id);
      const names = isOfLanguage ? UNSAID[basename(id)] : undefined;
      return names?.map((name) => `export const ${name} = {};`).join('\n');
    },
  };
}
