import type { Plugin } from 'vite';

/** What the schemas of the record are built with, under a name that nothing else in the bundle has. */
export const SCHEMA_BUILDER = 'schemaBuilder';

/**
 * Schemas belong to the server, and so does their library. Calls that only build one are dropped from the bundle by the
 * name of what they call, and that name is made unlike every other: parts that come minified have functions of one
 * letter, whose calls must stay.
 */
export function unaskedSchemas(): Plugin {
  return {
    name: 'evenfall-unasked-schemas',
    apply: 'build',
    enforce: 'pre',
    transform(code, id) {
      if (!/packages.(record|api).src/.test(id) || !code.includes(IMPORT)) return undefined;
      return code
        .replace(IMPORT, `import { z as ${SCHEMA_BUILDER} } from 'zod'`)
        .replace(/\bz(?=\s*\.)/g, SCHEMA_BUILDER);
    },
  };
}

const IMPORT = "import { z } from 'zod'";
