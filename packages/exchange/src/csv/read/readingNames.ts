/** A reading of a series as its row says it. `entry` is the one that holds it, `value` its numbers as written. */
export type NamedReading = {
  readonly series: string;
  readonly entry: string | null;
  readonly atMs: number;
  readonly value: string;
};

/**
 * What the source calls the readings of series: the series and the instant, so that a reading has the same name when
 * the series has grown, and when two entries that contest each other both have it. Of several at one instant, as a week
 * that was written down by the minute has, the later ones have a number as well.
 */
export class ReadingNames {
  private readonly named = new Map<string, { readonly value: string; readonly by: Set<string | null> }[]>();

  of({ series, entry, atMs, value }: NamedReading): string {
    const name = `${series}/${new Date(atMs).toISOString()}`;
    const all = this.named.get(name) ?? [];
    this.named.set(name, all);
    let at = all.findIndex((one) => one.value === value && !one.by.has(entry));
    if (at < 0) at = all.push({ value, by: new Set() }) - 1;
    all[at]?.by.add(entry);
    return at === 0 ? name : `${name}/${at + 1}`;
  }
}
