import type { CountOf } from '@evenfall/clinical';
import type { StoredEntry } from '@evenfall/record';
import type { Content } from '../parts/ValueFigures.js';

/** The value that an entry charts, with its kind; null for an entry that charts none. */
export function contentOfEntry(entry: StoredEntry): Content | null {
  if (entry.kind === 'count') return { kind: 'count', content: entry.content };
  if (entry.kind === 'taps') return { kind: 'taps', content: entry.content };
  return null;
}

/** Which sign a value is of. */
export function signOf(given: Content): CountOf {
  return given.kind === 'count' ? given.content.evidence.count.of : given.content.evidence.taps.of;
}
