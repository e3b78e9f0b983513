import { canonicalJson } from '@evenfall/clinical';
import type { ReportedContent, StoredEntry } from '@evenfall/record';
import { PlacedNames } from './placedNames.js';

/** A value as its source says it, kept or not: what, when it was measured, and when it was said. */
export type Saying = {
  readonly content: ReportedContent;
  readonly measuredAt: { readonly at: string };
  readonly isInError?: boolean;
};

/** What is kept last of a value under the name that its source gives it. */
export type Kept = {
  /** The entry that stands, or the mark of error on it. */
  readonly id: string;
  /** Marked as entered in error by its source, or by somebody here, or replaced by one of another instant; null for a value that stands. */
  readonly takenBack: 'there' | 'here' | 'moved' | null;
  readonly name: string;
  readonly of: string;
  /** When it was measured, ms. */
  readonly atMs: number;
  /** What was said and of which instant, to compare. */
  readonly said: string;
  readonly isAmended: boolean;
  /** When the source said it, ms; null where nobody knows. */
  readonly saidAtMs: number | null;
  /** It was brought by its place in a series, and not by its instant. */
  readonly isByPlace: boolean;
};

/**
 * What sources said so far, by their names of it and the instant: of each value what is kept last, and when it was said
 * last. A name may be that of an order of several measurements, so a correction of an instant of which nothing was said
 * before could be of any of them, and is held to be of none. A reading that a later saying of its series does not have
 * was taken out of it, or its time was put right: so a series has a time as a whole.
 */
export class KeptSayings {
  private readonly ofSlot = new Map<string, Kept>();
  private readonly newestOfSlot = new Map<string, number>();
  private readonly newestOfSeries = new Map<string, number>();

  constructor(entries: readonly StoredEntry[], read: readonly Saying[]) {
    const names = new PlacedNames();
    const all = new Map<string, Kept>();
    const before = new Map<string, string>();
    for (const entry of entries) {
      const { id, kind, amends } = entry;
      const was = amends === null ? undefined : all.get(amends.entry);
      if (kind === 'entered-in-error' && was !== undefined)
        all.set(id, { ...was, id, takenBack: entry.role === 'importer' ? 'there' : 'here' });
      else if (kind === 'reported' && entry.content.source.id !== null) {
        const name = names.of(entry.content, Date.parse(entry.measuredAt.at));
        all.set(id, { ...keptOf(id, entry, name), isByPlace: name !== nameOf(entry.content) });
        this.sayOfSeries(entry);
      } else continue;
      if (amends !== null && was !== undefined) before.set(id, amends.entry);
    }
    const named = renamed(all, new Set(before.values()), read);
    for (const kept of named.values()) {
      const was = named.get(before.get(kept.id) ?? '');
      // An earlier program took a correction of another instant for one of what stood under the name: that stays replaced.
      if (was !== undefined && slotOfKept(was) !== slotOfKept(kept))
        this.put({ ...was, takenBack: 'moved', saidAtMs: kept.saidAtMs });
      this.put(kept);
    }
  }

  /** What is kept last of a value of this name and instant. */
  of(one: Saying): Kept | undefined {
    return this.ofSlot.get(slotOfSaying(one));
  }

  /** Whether what is kept of a value, or of its series, was said later; false where either does not tell. */
  isLaterThan(one: Saying): boolean {
    const saidAtMs = saidAtOf(one.content);
    if (saidAtMs === null) return false;
    const newest = this.newestOfSlot.get(slotOfSaying(one)) ?? Number.NEGATIVE_INFINITY;
    return Math.max(newest, this.seriesSaidAtMs(one.content)) > saidAtMs;
  }

  /** When anything kept of the series of a reading was said last; before all times where nothing was, or of no reading. */
  private seriesSaidAtMs(content: ReportedContent): number {
    return this.newestOfSeries.get(seriesOf(content) ?? '') ?? Number.NEGATIVE_INFINITY;
  }

  /** Takes in that a value was kept or marked. The times of series stay those from before the file: all of it is one saying. */
  put(kept: Kept): void {
    const slot = slotOfKept(kept);
    const newest = this.newestOfSlot.get(slot) ?? Number.NEGATIVE_INFINITY;
    if (kept.saidAtMs !== null && kept.saidAtMs < newest) return;
    this.ofSlot.set(slot, kept);
    if (kept.saidAtMs !== null) this.newestOfSlot.set(slot, kept.saidAtMs);
  }

  /** Takes in when a series was said: once all of a file is read. */
  sayOfSeries({ content }: Pick<Saying, 'content'>): void {
    const [series, saidAtMs] = [seriesOf(content), saidAtOf(content)];
    if (series !== null && saidAtMs !== null)
      this.newestOfSeries.set(series, Math.max(this.seriesSaidAtMs(content), saidAtMs));
  }

  /** Whether nothing that is kept of a value, or of its series, has the time of this saying of it. */
  lacksTimeOf({ content }: Saying, kept: Kept): boolean {
    const saidAtMs = saidAtOf(content);
    if (saidAtMs === null || kept.saidAtMs === null) return false;
    const newest = seriesOf(content) === null ? kept.saidAtMs : this.seriesSaidAtMs(content);
    return newest < saidAtMs;
  }
}

/** A value under a name, as it stands once it is kept. */
export function keptOf(id: string, saying: Saying, name = nameOf(saying.content)): Kept {
  const { value, status } = saying.content;
  const saidAtMs = saidAtOf(saying.content);
  const isAmended = status === 'amended';
  return {
    id,
    takenBack: null,
    name,
    of: value.of,
    atMs: Date.parse(saying.measuredAt.at),
    said: saidOf(saying),
    isAmended,
    saidAtMs,
    isByPlace: false,
  };
}

/** What was said of which instant, to compare. */
export function saidOf({ content: { value, until }, measuredAt }: Saying): string {
  return canonicalJson({ value, until, at: Date.parse(measuredAt.at) });
}

/** When a source said a value, ms; null where the file does not tell. */
export function saidAtOf({ saidAt }: ReportedContent): number | null {
  return saidAt === null ? null : Date.parse(saidAt);
}

function nameOf({ source }: ReportedContent): string {
  return `${source.format} ${source.id}`;
}

function slotOfSaying({ content, measuredAt }: Saying): string {
  return slotOf(nameOf(content), content.value.of, Date.parse(measuredAt.at));
}

function slotOfKept({ name, of, atMs }: Kept): string {
  return slotOf(name, of, atMs);
}

function slotOf(name: string, of: string, atMs: number): string {
  return `${name} ${of} ${atMs}`;
}

/** A series of an Evenfall in the name of one of its readings. */
const OF_SERIES = /^([0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12})\//;

function seriesOf({ source }: ReportedContent): string | null {
  return (source.format === 'csv' && OF_SERIES.exec(source.id ?? '')?.[1]) || null;
}

/**
 * The same, but that a reading which was brought by its place has the name under which the file says just that: of a week
 * that is contested two entries gave one place, and the name of its instant alone may be the other one's. Where both say
 * the same at other places, what an earlier program brought twice stays twice: nothing kept tells it from two readings.
 */
function renamed(
  all: ReadonlyMap<string, Kept>,
  replaced: ReadonlySet<string>,
  read: readonly Saying[],
): ReadonlyMap<string, Kept> {
  const stands = ({ id, takenBack }: Kept) => takenBack === null && !replaced.has(id);
  const standing = new Map([...all.values()].filter(stands).map((kept) => [kept.name, kept]));
  const said = new Map(read.map((one) => [nameOf(one.content), saidOf(one)]));
  const astray = [...standing.values()].filter((kept) => kept.isByPlace && said.get(kept.name) !== kept.said);
  if (astray.length === 0) return all;
  const names = new Map(all);
  for (const one of read) {
    const name = nameOf(one.content);
    if (standing.get(name)?.said === saidOf(one)) continue;
    const found = astray.find(
      (kept) =>
        kept.said === saidOf(one) && (name.startsWith(`${kept.name}/`) || kept.name.startsWith(`${name}/`)),
    );
    if (found === undefined) continue;
    standing.delete(found.name);
    standing.set(name, found);
    names.set(found.id, { ...found, name });
  }
  return names;
}
