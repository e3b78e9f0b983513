import type { Entry } from '../entry/entry.js';

/** The sign that an entry holds a value of; null for one that holds none. A pulse replaces a pulse, however taken. */
export function signOf(entry: Entry): string | null {
  switch (entry.kind) {
    case 'count':
      return entry.content.evidence.count.of;
    case 'taps':
      return entry.content.evidence.taps.of;
    case 'run':
      return 'pressure';
    case 'sign':
      return entry.content.evidence.sign.of;
    default:
      return null;
  }
}
