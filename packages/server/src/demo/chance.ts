/**
 * A small seeded generator for invented data: the same demo on every machine.
 * Source: the 32-bit step known as mulberry32 (public domain; from memory).
 */
export function chanceFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** Sixteen bytes of chance, as an id is made from. */
export function bytesFrom(chance: () => number): Uint8Array {
  return Uint8Array.from({ length: 16 }, () => Math.floor(chance() * 256));
}
