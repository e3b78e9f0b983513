import type { ReportedContent, StoredEntry } from '@evenfall/record';
import { PlacedNames } from './placedNames.js';

/** A series of an Evenfall in the name of one of its readings. */
const OF_SERIES = /^([0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12})\//;

type Said = {
  readonly content: ReportedContent;
  readonly measuredAt: { readonly at: string };
};

/**
 * When the sources of kept values said them last: of each value by its name and instant, and of each series as a whole,
 * since a reading that a later saying of its series does not have was taken out of it, or its time was put right.
 */
export class SaidLater {
  private readonly newest = new Map<string, number>();

  constructor(entries: readonly StoredEntry[]) {
    const names = new PlacedNames();
    for (const { kind, content, measuredAt } of entries) {
      if (kind !== 'reported' || content.source.id === null) continue;
      const name = names.of(content, Date.parse(measuredAt.at));
      if (content.saidAt === null) continue;
      const saidAtMs = Date.parse(content.saidAt);
      for (const key of keysOf(name, { content, measuredAt }))
        this.newest.set(key, Math.max(this.newest.get(key) ?? Number.NEGATIVE_INFINITY, saidAtMs));
    }
  }

  /** Whether what is kept was said later than a value of a file; false where either does not tell. */
  than({ content, measuredAt }: Said): boolean {
    const { saidAt, source } = content;
    if (saidAt === null || source.id === null) return false;
    const saidAtMs = Date.parse(saidAt);
    return keysOf(`${source.format} ${source.id}`, { content, measuredAt }).some(
      (key) => (this.newest.get(key) ?? Number.NEGATIVE_INFINITY) > saidAtMs,
    );
  }
}

function keysOf(name: string, { content: { source, value }, measuredAt }: Said): string[] {
  const [, series] = (source.format === 'csv' && OF_SERIES.exec(source.id ?? '')) || [];
  return [
    `${name} ${value.of} ${Date.parse(measuredAt.at)}`,
    ...(series === undefined ? [] : [`series ${series}`]),
  ];
}
