/**
 * Notes on classes as the container inside `@peculiar/x509` keeps them; it asks for them when it is loaded, so this
 * is imported before it. Only what it calls: the decorators' proposal is gone from the language.
 */
const notes = new WeakMap<object, Map<unknown, unknown>>();

function getOwnMetadata(key: unknown, target: object): unknown {
  return notes.get(target)?.get(key);
}

function getMetadata(key: unknown, target: object): unknown {
  for (let at: object | null = target; at !== null; at = Object.getPrototypeOf(at) as object | null) {
    if (notes.get(at)?.has(key) === true) return getOwnMetadata(key, at);
  }
  return undefined;
}

function defineMetadata(key: unknown, value: unknown, target: object): void {
  const own = notes.get(target) ?? new Map<unknown, unknown>();
  notes.set(target, own.set(key, value));
}

if (!('getMetadata' in Reflect)) Object.assign(Reflect, { getMetadata, getOwnMetadata, defineMetadata });
