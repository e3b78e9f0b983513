import type { Plugin } from 'vite';

/** The files of the distributions' library. */
export const LIBRARY = /node_modules.@stdlib/;

/**
 * Reads the distributions' library, which comes as CommonJS in some hundred small files, as ES modules: what nothing here
 * asks for falls out of the bundle (factories, checks for old engines), and no file needs a wrapper of its own.
 */
export function libraryModules(): Plugin {
  return {
    name: 'evenfall-library-modules',
    apply: 'build',
    enforce: 'pre',
    transform(code, id) {
      if (!LIBRARY.test(id) || !id.endsWith('.js')) return undefined;
      return { code: asModule(code, id), map: null };
    },
  };
}

/**
 * One file of the library as an ES module; what hangs on its export (`main.factory`) becomes an export by that name.
 *
 * @throws if it is written otherwise than the library's files are
 */
export function asModule(code: string, id: string): string {
  const array = TYPED_ARRAY.exec(id)?.[1];
  if (array !== undefined) return `export default ${ARRAYS[array]};`;
  const bare = code.replace(/^\s*\/\*[\s\S]*?\*\//gm, '');
  const members: string[] = [];
  let module = bare
    .replace(/^var (\w+) = require\( '([^']+)' \);/gm, "import $1 from '$2';")
    .replace(/^var (\w+) = require\( '([^']+)' \)\.(\w+);/gm, "import { $3 as $1 } from '$2';")
    .replace(/^setReadOnly\( main, '(\w+)', (\w+) \);/gm, 'export { $2 as $1 };')
    .replace(/^module\.exports = (\w+);/gm, 'export default $1;');
  for (const [, name, from] of module.matchAll(/^import (\w+) from '(.+)';/gm)) {
    module = module.replace(new RegExp(`\\b${name}\\.(${HANGING})\\b`, 'g'), (_, member: string) => {
      members.push(`import { ${member} as ${name}_${member} } from '${from}';`);
      return `${name}_${member}`;
    });
  }
  if (/\brequire\s*\(|\bexports\b/.test(module.replace(/\/\/.*$/gm, ''))) {
    throw new Error(`Not read as a module: ${id}`);
  }
  return [...new Set(members), module].join('\n');
}

/** What the library hangs on a function and calls there. */
const HANGING = 'assign|isPrimitive|isObject';

/** Typed arrays, which every browser that reads modules has: what stands in for them elsewhere is not needed. */
const ARRAYS: Readonly<Record<string, string>> = {
  uint8: 'Uint8Array',
  uint16: 'Uint16Array',
  uint32: 'Uint32Array',
  float64: 'Float64Array',
};
const TYPED_ARRAY = new RegExp(`array-(${Object.keys(ARRAYS).join('|')}).lib.index\\.js$`);
