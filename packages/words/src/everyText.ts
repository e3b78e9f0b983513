import type { Say } from './say.js';

type Text = string | ((...parts: unknown[]) => string);

/** Answers any figure with the same number and any list with the same two words, so that every text can be said. */
function everything(number: number): Record<string, unknown> {
  const f = { value: () => number, has: () => true, parts: ['a', 'b'] };
  return new Proxy(f as Record<string, unknown>, { get: (all, key) => all[String(key)] ?? number });
}

/** Every text of a catalogue with its key, said of one number; for tests. */
export function everyText(branch: object, number: number, say: Say, above = ''): [string, string][] {
  return Object.entries(branch as Record<string, Text | object>).flatMap(([key, one]): [string, string][] => {
    const path = `${above}${key}`;
    if (typeof one === 'string') return [[path, one]];
    if (typeof one === 'function')
      return [[path, (one as (...p: unknown[]) => string)(everything(number), say, ['a', 'b'])]];
    return everyText(one, number, say, `${path}.`);
  });
}
