import { type EquipmentRules, type GaugeDone, type GaugeStanding, gaugeStanding } from '@evenfall/clinical';
import { type AmendedEntry, gatherAmendments } from '../chart/amendmentTree.js';
import type { CuffNamed, EquipmentContent, GaugeNamed } from '../content/equipment.js';
import type { StoredEntry } from '../entry/entry.js';

/** A line of a gauge's log as it stands, or one that was entered in error. */
export type GaugeLine = {
  readonly entry: StoredEntry & { readonly kind: 'gauge-logged' };
  readonly isInError: boolean;
};

/** A naming of a thing: the first one, or one that put it right. */
export type Naming = StoredEntry & { readonly kind: 'equipment' };

/**
 * What both kinds of thing have. `id` is the entry that first named it, `newest` the one that says it now, `namings`
 * both and all between, in order of recording.
 */
type Thing = {
  readonly id: string;
  readonly newest: string;
  readonly namings: readonly Naming[];
  readonly endedOn: string | null;
};

/** A gauge of the place, with its log in order of doing and how it stands. */
export type Gauge = Thing & {
  readonly named: GaugeNamed;
  readonly log: readonly GaugeLine[];
  readonly standing: GaugeStanding;
};

/** Cuffs of one size in one room. */
export type Cuffs = Thing & { readonly named: CuffNamed };

/** What the place measures with; what ended is among it, and what was named in error is not. */
export type PlaceEquipment = { readonly gauges: readonly Gauge[]; readonly cuffs: readonly Cuffs[] };

/**
 * The equipment of the place from its entries, in any order, as it stands on a local day (`YYYY-MM-DD`) by
 * the rules in force. Gauges by
 * name, cuffs by room and then as they were entered. Of two amendments that disagree the later one names the thing.
 */
export function placeEquipment(
  entries: readonly StoredEntry[],
  today: string,
  rules: EquipmentRules,
): PlaceEquipment {
  const gathered = gatherAmendments(entries);
  const ends = new Map<string, string>();
  const lines = new Map<string, GaugeLine[]>();
  for (const { original, current } of gathered) {
    const entry = current.at(-1) ?? original;
    if (entry.kind === 'equipment-ended' && current.length > 0)
      ends.set(entry.content.equipment, entry.measuredAt.at.slice(0, DAY_CHARACTERS));
    if (entry.kind !== 'gauge-logged') continue;
    const { gauge } = entry.content;
    lines.set(gauge, [...(lines.get(gauge) ?? []), { entry, isInError: current.length === 0 }]);
  }
  const things = gathered.flatMap((one) => thingIn(one, ends));
  const gauges = things.flatMap(({ named, ...thing }): Gauge[] => {
    if (named.what !== 'gauge') return [];
    const log = (lines.get(thing.id) ?? []).sort(byTime);
    const done = log.filter(({ isInError }) => !isInError).map(({ entry }) => doneIn(entry));
    return [{ ...thing, named, log, standing: gaugeStanding(named.type, done, today, rules) }];
  });
  const cuffs = things.flatMap(({ named, ...thing }): Cuffs[] =>
    named.what === 'cuff' ? [{ ...thing, named }] : [],
  );
  return {
    gauges: gauges.sort((a, b) => compare(a.named.name, b.named.name)),
    cuffs: cuffs.sort((a, b) => compare(a.named.room ?? '', b.named.room ?? '')),
  };
}

/** `YYYY-MM-DD` at the start of an instant with its offset: the local day. */
const DAY_CHARACTERS = 10;

function thingIn(
  { original, current, story }: AmendedEntry,
  ends: ReadonlyMap<string, string>,
): (Thing & { readonly named: EquipmentContent })[] {
  const newest = current.at(-1);
  if (original.kind !== 'equipment' || newest?.kind !== 'equipment') return [];
  return [
    {
      id: original.id,
      newest: newest.id,
      namings: story.filter((one) => one.kind === 'equipment'),
      endedOn: ends.get(original.id) ?? null,
      named: newest.content,
    },
  ];
}

function doneIn({ content, measuredAt }: GaugeLine['entry']): GaugeDone {
  return {
    of: content.evidence.log.of,
    verdict: content.value.verdict,
    day: measuredAt.at.slice(0, DAY_CHARACTERS),
    atMs: Date.parse(measuredAt.at),
  };
}

function byTime(one: GaugeLine, other: GaugeLine): number {
  const apart = Date.parse(one.entry.measuredAt.at) - Date.parse(other.entry.measuredAt.at);
  return apart === 0 ? one.entry.sequence - other.entry.sequence : apart;
}

function compare(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}
