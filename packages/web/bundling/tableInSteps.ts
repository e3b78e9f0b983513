import { type Plugin, runnerImport } from 'vite';

type Table = { readonly rows: readonly (readonly number[])[] };

/** Tables of `clinical` that are long and smooth: each column changes evenly from row to row. */
const SMOOTH = /clinical.src.child.cdcHeightsTable\.ts$/;

/**
 * Gives the browser a long table as the changes of its changes from row to row, in whole numbers of its last decimal: a
 * quarter of the bytes, and the same numbers to the last bit.
 */
export function tableInSteps(): Plugin {
  return {
    name: 'evenfall-table-in-steps',
    apply: 'build',
    enforce: 'pre',
    async load(id) {
      if (!SMOOTH.test(id)) return undefined;
      const { module } = await runnerImport<Readonly<Record<string, Table>>>(id);
      const tables = Object.entries(module).map(([name, { rows, ...origin }]) => {
        const columns = (rows[0] ?? []).map((_, at) => stepsOf(rows.map((row) => row[at] ?? Number.NaN)));
        return `export const ${name} = { ...${JSON.stringify(origin)}, rows: rowsOf(${JSON.stringify(columns)}) };`;
      });
      return { code: [READ, ...tables].join('\n'), moduleSideEffects: false };
    },
  };
}

/** The whole numbers of the last decimal in 1, and the second differences of a column in them. */
function stepsOf(column: readonly number[]): [perOne: number, steps: readonly number[]] {
  const decimals = Math.max(...column.map((value) => String(value).split('.')[1]?.length ?? 0));
  const perOne = 10 ** decimals;
  const whole = column.map((value) => Math.round(value * perOne));
  return [perOne, changes(changes(whole))];
}

function changes(values: readonly number[]): number[] {
  return values.map((value, at) => value - (values[at - 1] ?? 0));
}

/** What makes the rows again in the browser. A whole number by a power of ten is the number as it is written. */
const READ = `function rowsOf(columns) {
  const values = columns.map(([perOne, steps]) => {
    let step = 0;
    let value = 0;
    return steps.map((change) => {
      step += change;
      value += step;
      return value / perOne;
    });
  });
  return values[0].map((_, row) => values.map((column) => column[row]));
}`;
