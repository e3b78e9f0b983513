/** The offset written in an RFC 3339 instant, in minutes east of UTC: `+05:30` is 330, `Z` is 0. */
export function offsetMinutes(at: string): number {
  const found = /([+-])(\d{2}):(\d{2})$/.exec(at);
  if (found === null) return 0;
  const minutes = Number(found[2]) * 60 + Number(found[3]);
  return found[1] === '-' ? 0 - minutes : minutes;
}

/** The instant so many seconds after another, written with the same offset: a wall clock there shows it. */
export function laterBy(at: string, seconds: number): string {
  const laterMs = Date.parse(at) + seconds * 1000;
  if (at.endsWith('Z')) return new Date(laterMs).toISOString();
  const local = new Date(laterMs + offsetMinutes(at) * 60_000).toISOString().slice(0, -1);
  return `${local}${at.slice(-OFFSET_CHARACTERS)}`;
}

/** `+01:00` */
const OFFSET_CHARACTERS = 6;
