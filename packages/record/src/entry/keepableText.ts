import { pointer, type Refusal, refusal } from '@evenfall/clinical';

/**
 * Texts and keys that cannot be kept as Unicode: a NUL, or half of a surrogate pair. No keyboard makes them and no
 * database or file takes them, so they are refused at the edge, each at its JSON Pointer.
 *
 * @param value anything that was read as JSON
 */
export function unkeepableTexts(value: unknown, at = ''): Refusal[] {
  if (typeof value === 'string') return isKeepable(value) ? [] : [refused(at, value)];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, member]) =>
    isKeepable(key) ? unkeepableTexts(member, pointer(at, key)) : [refused(at, key)],
  );
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
