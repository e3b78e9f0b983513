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
  /** Marked as entered in error: by its source, or by somebody here; null for a value that stands. */
  readonly takenBack: 'there' | 'here' | null;
  readonly name: string;
  readonly of: string;
  /** When it was measured, ms. */
  readonly atMs: number;
  /** What was said and of which instant, to compare. */
  readonly said: string;
  readonly isAmended: boolean;
  /** The source said it as a correction, which may be of another instant. */
  readonly isCorrection: boolean;
  /** When the source said it, ms; null where nobody knows. */
  readonly saidAtMs: number | null;
  /** It was brought by its place in a series, and not by its instant. */
  readonly isByPlace: boolean;
};

/**
 * What sources said so far, by their names of it: of each value what is kept last, and when it was said last. A value that
 * replaced another is found under the instant of that one, too. A reading that a later saying of its series does not
 * have was taken out of it, or its time was put right: so a series has a time as a whole. Another value whose time was
 * put right has one name at both instants.
 */
export class KeptSayings {
  private readonly ofSlot = new Map<string, Kept>();
  private readonly newestOfSlot = new Map<string, number>();
  private readonly newestOfSeries = new Map<string, number>();
  private readonly slots = new Map<string, readonly string[]>();
  /** Instants of corrections that are kept as of another instant. */
  private readonly explained = new Set<string>();
  /** By name: what was said under it of each instant. */
  private readonly said = new Map<string, Map<string, SaidOfSlot>>();
  /** What the file itself says beside each other: neither is the other's correction. */
  private readonly beside: ReadonlySet<string>;

  /** @param isHistory the file holds what its source said before, too, and not only what it says now */
  constructor(entries: readonly StoredEntry[], read: readonly Saying[], isHistory: boolean) {
    const now = isHistory ? [] : read.filter(({ isInError }) => isInError !== true);
    this.beside = new Set(now.map(slotOfSaying));
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
    for (const kept of named.values()) this.put(kept, before.get(kept.id) ?? null);
  }

  /** What is kept last of a value: under its name and instant, or for a correction of another instant under its name alone. */
  of(one: Saying): Kept | undefined {
    const own = this.ofSlot.get(slotOfSaying(one));
    if (!isCorrection(one.content)) return own;
    if (own !== undefined) return own.takenBack === 'there' ? (this.movedBy(one) ?? own) : own;
    const saidAtMs = saidAtOf(one.content);
    return this.standingUnder(one).findLast(
      (kept) => saidAtMs === null || kept.saidAtMs === null || kept.saidAtMs <= saidAtMs,
    );
  }

  /** Whether what is kept of a value, or of its series, was said later; false where either does not tell. */
  isLaterThan(one: Saying): boolean {
    const saidAtMs = saidAtOf(one.content);
    if (saidAtMs === null) return false;
    const newest = this.newestOfSlot.get(slotOfSaying(one)) ?? Number.NEGATIVE_INFINITY;
    return Math.max(newest, this.seriesSaidAtMs(one.content)) > saidAtMs || this.isMovedAfter(one, saidAtMs);
  }

  /**
   * Whether a correction that is not the last saying of its instant tells first that the value was moved there: what it
   * corrected at another instant stands no more, be it kept or brought later.
   */
  tellsMove(one: Saying): boolean {
    const told = this.said.get(keyOf(one))?.get(slotOfSaying(one));
    const saidAtMs = saidAtOf(one.content);
    if (!isCorrection(one.content) || saidAtMs === null || told === undefined) return false;
    // Of the first saying of an instant it counts only if nothing else tells that what it corrected has gone.
    if (!told.isCorrectionFirst && saidAtMs < told.firstMs) return !this.isMovedAfter(one, saidAtMs, false);
    return saidAtMs > told.correctedMs && !this.isMovedAfter(one, saidAtMs);
  }

  /** What a correction moved here from another instant; undefined for nothing that is kept, and where several stand under the name. */
  movedBy(one: Saying): Kept | undefined {
    const slot = slotOfSaying(one);
    const own = this.ofSlot.get(slot);
    const [was, ...others] = this.standingUnder(one).filter((kept) => kept !== own);
    const [saidAtMs, wasMs] = [saidAtOf(one.content), was?.saidAtMs ?? null];
    if (was === undefined || others.length > 0 || saidAtMs === null || wasMs === null) return undefined;
    // What was said here before can have gone elsewhere by a correction alone.
    const firstMs = this.said.get(keyOf(one))?.get(slot)?.firstMs ?? saidAtMs;
    const canBe = saidAtMs < firstMs || (was.isCorrection && wasMs > firstMs);
    return canBe && wasMs < saidAtMs ? was : undefined;
  }

  /**
   * Whether a value was moved to another instant after this was said of it. Of a name under which several stand, as the
   * measurements of one order do, nobody can tell which it was.
   */
  private isMovedAfter(one: Saying, saidAtMs: number, isOfAny = isCorrection(one.content)): boolean {
    const slot = slotOfSaying(one);
    const own = this.ofSlot.get(slot);
    const standsHere = own?.takenBack === null && own.atMs === Date.parse(one.measuredAt.at);
    if (standsHere || this.standingUnder(one).length > 1) return false;
    const isMoved = isOfAny
      ? isAnyCorrection
      : // A correction of which it is known what it corrected moved nothing else.
        (said: SaidOfSlot, atMs: number, other: string) =>
          !this.explained.has(other) && isCorrectionFirst(said, atMs);
    return [...(this.said.get(keyOf(one)) ?? [])].some(
      ([other, said]) => other !== slot && !this.beside.has(other) && isMoved(said, saidAtMs, other),
    );
  }

  /** What stands under the name of a value at another instant than those that the file says now. */
  private standingUnder(one: Saying): Kept[] {
    const slots = [...(this.said.get(keyOf(one))?.keys() ?? [])].filter((slot) => !this.beside.has(slot));
    const heads = new Set(slots.flatMap((slot) => this.ofSlot.get(slot) ?? []));
    return [...heads].filter(({ takenBack }) => takenBack === null);
  }

  /** When anything kept of the series of a reading was said last; before all times where nothing was, or of no reading. */
  private seriesSaidAtMs(content: ReportedContent): number {
    return this.newestOfSeries.get(seriesOf(content) ?? '') ?? Number.NEGATIVE_INFINITY;
  }

  /** Takes in that a value was kept or marked. The times of series stay those from before the file: all of it is one saying. */
  put(kept: Kept, before: string | null): void {
    const own = slotOf(kept.name, kept.of, kept.atMs);
    const earlier = this.slots.get(before ?? '') ?? [];
    if (kept.isCorrection && earlier.length > 0 && !earlier.includes(own)) this.explained.add(own);
    const slots = [...new Set([...earlier, own])];
    this.slots.set(kept.id, slots);
    this.takeInSaid(kept, own);
    for (const slot of slots) {
      const newest = this.newestOfSlot.get(slot) ?? Number.NEGATIVE_INFINITY;
      if (kept.saidAtMs !== null && kept.saidAtMs < newest) continue;
      this.ofSlot.delete(slot);
      this.ofSlot.set(slot, kept);
      if (kept.saidAtMs !== null) this.newestOfSlot.set(slot, kept.saidAtMs);
    }
  }

  private takeInSaid({ name, of, takenBack, isCorrection, saidAtMs }: Kept, slot: string): void {
    const key = `${name} ${of}`;
    const ofKey = this.said.get(key) ?? new Map<string, SaidOfSlot>();
    this.said.set(key, ofKey);
    const before = ofKey.get(slot) ?? NOTHING_SAID;
    const isTold = takenBack === null && saidAtMs !== null;
    const isFirst = isTold && saidAtMs < before.firstMs;
    ofKey.set(slot, {
      firstMs: isFirst ? saidAtMs : before.firstMs,
      isCorrectionFirst: isFirst ? isCorrection : before.isCorrectionFirst,
      correctedMs: isTold && isCorrection ? Math.max(saidAtMs, before.correctedMs) : before.correctedMs,
    });
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

/** When a source first said a value of one instant, whether as a correction, and when it last corrected it to that; ms. */
type SaidOfSlot = {
  readonly firstMs: number;
  readonly isCorrectionFirst: boolean;
  readonly correctedMs: number;
};
const NOTHING_SAID: SaidOfSlot = {
  firstMs: Number.POSITIVE_INFINITY,
  isCorrectionFirst: false,
  correctedMs: Number.NEGATIVE_INFINITY,
};

/** A correction of an instant of which more was said before is one of that: it moved nothing that was said first. */
const isCorrectionFirst = ({ isCorrectionFirst, firstMs }: SaidOfSlot, saidAtMs: number) =>
  isCorrectionFirst && firstMs > saidAtMs;
const isAnyCorrection = ({ correctedMs }: SaidOfSlot, saidAtMs: number) => correctedMs > saidAtMs;

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
    isCorrection: isCorrection(saying.content),
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

function isCorrection({ status }: ReportedContent): boolean {
  return status === 'amended' || status === 'corrected';
}

function slotOfSaying({ content, measuredAt }: Saying): string {
  return slotOf(nameOf(content), content.value.of, Date.parse(measuredAt.at));
}

function keyOf({ content }: Saying): string {
  return `${nameOf(content)} ${content.value.of}`;
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
