import { pointer, type Refusal, refusal } from '@evenfall/clinical';

/** How many levels deep a value may go; an entry needs seven. Deeper ones only exhaust whoever walks them. */
const DEEPEST_LEVELS = 40;

/**
 * Texts and keys that cannot be kept as Unicode: a NUL, or half of a surrogate pair. No keyboard makes them and no
 * database or file takes them, so they are refused at the edge, each at its JSON Pointer. So is a list or an object
 * that is nested too deep (`out-of-range`).
 *
 * @param value anything that was read as JSON
 */
export function unkeepableTexts(value: unknown, at = ''): Refusal[] {
  if (typeof value === 'string') return isKeepable(value) ? [] : [refused(at, value)];
  if (typeof value !== 'object' || value === null) return [];
  if (levelsOf(at) >= DEEPEST_LEVELS) {
    const figures = { maximum: DEEPEST_LEVELS };
    return [refusal(at, 'out-of-range', 'levels-at-most', null, { figures })];
  }
  return Object.entries(value).flatMap(([key, member]) =>
    isKeepable(key) ? unkeepableTexts(member, pointer(at, key)) : [refused(at, key)],
  );
}

function levelsOf(at: string): number {
  return at.split('/').length - 1;
}

/** Half of a pair, however it came about. */
const LONE_SURROGATE = /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;

function refused(at: string, text: string): Refusal {
  const readable = text.replaceAll('\0', '\u2400').replace(LONE_SURROGATE, '\uFFFD');
  return refusal(at, 'contradicts', 'keepable-text', readable);
}

function isKeepable(text: string): boolean {
  return !text.includes('\0') && text.search(LONE_SURROGATE) < 0;
}
