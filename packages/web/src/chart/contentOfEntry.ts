import type { StoredEntry } from '@evenfall/record';
import type { Charted } from '../parts/charted.js';

/** The value that an entry charts, with its kind; null for an entry that charts none. */
export function contentOfEntry(entry: StoredEntry): Charted | null {
  switch (entry.kind) {
    case 'count':
      return { kind: 'count', content: entry.content };
    case 'taps':
      return { kind: 'taps', content: entry.content };
    case 'run':
      return { kind: 'run', content: entry.content };
    case 'sign':
      return { kind: 'sign', content: entry.content };
    default:
      return null;
  }
}
