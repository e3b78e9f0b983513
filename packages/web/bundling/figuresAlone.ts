import { fileURLToPath } from 'node:url';
import { type Plugin, runnerImport } from 'vite';

type Figure = { readonly [part: string]: string | number };
type Tables = Readonly<Record<string, Readonly<Record<string, Figure>>>>;
type Shapes = Readonly<
  Record<string, { readonly fields: Readonly<Record<string, { readonly meaning: string }>> }>
>;

const CLINICAL = new URL('../../clinical/src/', import.meta.url);
const OWN = '\0figures:';

/** The tables of figures of `clinical`, by folder; and one part of each figure alone (`?value`), by the name of each. */
const TABLE = /clinical.src.\w+.figures\.ts$/;
const PART = /(clinical.src.\w+.figures\.ts)\?(value|sure)$/;

/**
 * Gives the browser each figure as a module of its own, so that it goes with the pages that ask for it, and where none does
 * falls out of the bundle. A rule that asks for its number alone, or how sure it is, gets no more than that. What a figure is for is said of
 * fields of the protocol alone: it stands only beside the figures of such fields.
 */
export function figuresAlone(): Plugin {
  const modules = new Map<string, string>();
  let meanings: ReadonlySet<string> = new Set();
  return {
    name: 'evenfall-figures-alone',
    apply: 'build',
    enforce: 'pre',
    async buildStart() {
      meanings = await meaningsOfFields();
    },
    resolveId: (id) => (id.startsWith(OWN) ? id : undefined),
    transform(code, id) {
      return /clinical.src.*\.ts$/.test(id) ? { code: withPartsAlone(code), map: null } : undefined;
    },
    async load(id) {
      if (id.startsWith(OWN)) return { code: modules.get(id) ?? '', moduleSideEffects: false };
      if (PART.test(id)) return { code: await partsIn(id), moduleSideEffects: false };
      if (!TABLE.test(id)) return undefined;
      const { module } = await runnerImport<Tables>(id);
      return Object.entries(module)
        .map(([name, table]) => {
          const lines = Object.entries(table).map(([key, figure]) => {
            const own = `${OWN}${name}.${key}`;
            modules.set(own, `export const ${key} = ${JSON.stringify(figureOf(figure, meanings))};`);
            return `export { ${key} } from ${JSON.stringify(own)};`;
          });
          modules.set(`${OWN}${name}`, lines.join('\n'));
          return `import * as ${name} from ${JSON.stringify(`${OWN}${name}`)};\nexport { ${name} };`;
        })
        .join('\n');
    },
  };
}

/**
 * A file of `clinical` that takes the number of a figure (`F.seconds.value`, `F[id].value`) from the bare numbers of its
 * table, and how sure it is likewise; whatever else it asks of a figure stays as it is.
 */
export function withPartsAlone(code: string): string {
  let made = code;
  for (const [, name, local = name, from] of code.matchAll(IMPORTED)) {
    for (const part of ['value', 'sure']) {
      const own = `${local}_${part}`;
      const asked = made
        .replace(new RegExp(`(?<![\\w.])${local}\\.(\\w+)\\.${part}\\b`, 'g'), `${own}.$1`)
        .replace(new RegExp(`(?<![\\w.])${local}\\[([\\w.]+)\\]\\.${part}\\b`, 'g'), `${own}[$1]`);
      if (asked !== made) made = `import * as ${own} from '${from}?${part}';\n${asked}`;
    }
  }
  return made;
}

const IMPORTED = /^import \{ (\w+_FIGURES)(?: as (\w+))? \} from '([^']+figures\.js)';$/gm;

/** One part of each figure of a table, under its name. */
async function partsIn(id: string): Promise<string> {
  const [, part = ''] = id.split('?');
  const { module } = await runnerImport<Tables>(id.slice(0, -part.length - 1));
  return Object.values(module)
    .flatMap((table) => Object.entries(table))
    .map(([key, figure]) => `export const ${key} = ${JSON.stringify(figure[part])};`)
    .join('\n');
}

/** What the browser has of a figure. */
function figureOf({ meaning, ...figure }: Figure, meanings: ReadonlySet<string>): Figure {
  return meaning !== undefined && meanings.has(String(meaning)) ? { ...figure, meaning } : figure;
}

/** What the fields of the protocol say of themselves. */
async function meaningsOfFields(): Promise<ReadonlySet<string>> {
  const path = fileURLToPath(new URL('protocol/sections.ts', CLINICAL));
  const { module } = await runnerImport<{ readonly SECTIONS: Shapes }>(path);
  return new Set(
    Object.values(module.SECTIONS).flatMap(({ fields }) =>
      Object.values(fields).map(({ meaning }) => meaning),
    ),
  );
}
