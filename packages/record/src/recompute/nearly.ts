import { pointer } from '@evenfall/clinical';

/**
 * How far two computations of one value may lie apart before they differ: browsers and Node compute a logarithm
 * to the last bit differently. Relative to the larger one, absolute
 * below 1; dimensionless. Source: decision of this project.
 */
const RELATIVE_TOLERANCE = 1e-9;

/** Where two plain JSON values first differ, as a JSON Pointer; null when they are the same for every purpose. */
export function firstDifference(kept: unknown, computed: unknown, at = ''): string | null {
  if (typeof kept === 'number' && typeof computed === 'number') {
    const scale = Math.max(Math.abs(kept), Math.abs(computed), 1);
    return Math.abs(kept - computed) <= RELATIVE_TOLERANCE * scale ? null : at;
  }
  if (Array.isArray(kept) && Array.isArray(computed)) {
    if (kept.length !== computed.length) return at;
    return firstOf(kept.map((item, index) => firstDifference(item, computed[index], pointer(at, index))));
  }
  if (isPlain(kept) && isPlain(computed)) {
    const keys = [...new Set([...Object.keys(kept), ...Object.keys(computed)])];
    return firstOf(keys.map((key) => firstDifference(kept[key], computed[key], pointer(at, key))));
  }
  return kept === computed ? null : at;
}

function firstOf(differences: readonly (string | null)[]): string | null {
  return differences.find((difference) => difference !== null) ?? null;
}

function isPlain(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
