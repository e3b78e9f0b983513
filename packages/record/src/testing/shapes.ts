/** A content with one key taken away or one added, and where that was. */
export type Bent = { readonly what: string; readonly content: Record<string, unknown> };

/**
 * Every way to take one key from a content or to put one more into any of its objects. The figures of a flag are
 * left alone: their keys are open.
 */
export function bentByOneKey(content: object): Bent[] {
  const bent: Bent[] = [];
  for (const path of objectsIn(content, [])) {
    const at = `/${path.join('/')}`;
    for (const key of Object.keys(objectAt(content, path))) {
      const copy = structuredClone(content) as Record<string, unknown>;
      delete objectAt(copy, path)[key];
      bent.push({ what: `${at} without ${key}`, content: copy });
    }
    const copy = structuredClone(content) as Record<string, unknown>;
    objectAt(copy, path).anotherKey = 1;
    bent.push({ what: `${at} with another key`, content: copy });
  }
  return bent;
}

function objectsIn(value: unknown, path: readonly string[]): string[][] {
  if (typeof value !== 'object' || value === null || path.at(-1) === 'figures') return [];
  const below = Object.entries(value).flatMap(([key, member]) => objectsIn(member, [...path, key]));
  return Array.isArray(value) ? below : [[...path], ...below];
}

function objectAt(value: unknown, path: readonly string[]): Record<string, unknown> {
  return path.reduce((at, key) => at[key] as Record<string, unknown>, value as Record<string, unknown>);
}
