import type { Plugin } from 'vite';

/** The files that wait for each other, in the order in which they are asked for; null where none does. */
export function circleOf(imports: ReadonlyMap<string, readonly string[]>): readonly string[] | null {
  const done = new Set<string>();
  const visit = (file: string, path: readonly string[]): readonly string[] | null => {
    const at = path.indexOf(file);
    if (at >= 0) return path.slice(at);
    if (done.has(file)) return null;
    for (const next of imports.get(file) ?? []) {
      const circle = visit(next, [...path, file]);
      if (circle !== null) return circle;
    }
    done.add(file);
    return null;
  };
  for (const file of imports.keys()) {
    const circle = visit(file, []);
    if (circle !== null) return circle;
  }
  return null;
}

/** No build in which one file waits for another that waits for it: what is asked for first would not be there yet. */
export function noCircles(): Plugin {
  return {
    name: 'no-circles',
    generateBundle(_, bundle) {
      const chunks = Object.values(bundle).filter((one) => one.type === 'chunk');
      const circle = circleOf(new Map(chunks.map(({ fileName, imports }) => [fileName, imports])));
      if (circle !== null)
        this.error(`files that wait for each other (bundling/parts.ts cuts them): ${circle.join(', ')}`);
    },
  };
}
