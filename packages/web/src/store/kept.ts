import type { TemplateId } from '@evenfall/exchange';
import type { EntryFrame, Stamp } from '@evenfall/record';
import type { PracticeDraft } from '../practice/keptPractice.js';
import { NOTHING_TAKEN, type RoundDraft } from '../round/draft.js';
import type { CountStart } from '../round/measuring.js';

/** What an entry is called and when it was made: made once, so that sending it again sends the same. */
export type EntryStart = {
  readonly id: string;
  readonly sequence: number;
  readonly measuredAt: Stamp;
  readonly writtenAt: string;
};

/** A form half filled: what was typed, and what its sending will use. */
export type FormDraft = {
  readonly fields: Readonly<Record<string, string>>;
  /** The id of what the form adds (a person, an agent); null until it is first sent. */
  readonly adds: string | null;
  /** The entry it sends; null until it is first sent. */
  readonly entry: EntryStart | null;
};

/**
 * What was signed here and the server has not taken yet: a round; a series, under a round of its own; what closes an
 * act-now; or an exercise of practice that is over, under its own id.
 */
export type WaitingRound = {
  /** The round; of an act-now that was closed, the entry that closes it. */
  readonly round: string;
  /** Null of an exercise, which is about nobody. */
  readonly person: string | null;
  /** Exactly what is sent, each time the same. */
  readonly entries: readonly EntryFrame[];
  /** As it stood when it was signed, so that a refused one can be put right; null of the others. */
  readonly draft: RoundDraft | null;
  /** The form that a series was signed from; absent of a round. */
  readonly form?: { readonly name: string; readonly was: FormDraft };
  /** What the practice room kept of an exercise, so that a refused one can be gone on with, but for what hands did (`practisedOf`). */
  readonly practised?: PracticeDraft;
  readonly tries: number;
  /** What the server refused, in words; null while it has not answered. */
  readonly refused: string | null;
};

/** Everything that this device keeps between visits. */
export type Kept = {
  readonly version: 3;
  /** This device, as its entries name it. */
  readonly device: string;
  /** The number of the next entry of this device. */
  readonly sequence: number;
  /** Who is measuring; null until somebody was chosen. */
  readonly agent: string | null;
  /** Who said on this device that they are learning: their rounds stay preliminary, nobody else's do. */
  readonly learners?: readonly string[];
  /** Templates of plain text that were changed on this device; one that is not there is as it was brought. */
  readonly templates?: { readonly [Which in TemplateId]?: string };
  /** What each column of a table of readings is, by its headings: roles with commas, blank for one that is not read. */
  readonly seriesColumns?: readonly { readonly headings: readonly string[]; readonly columns: string }[];
  /** The browser was asked to keep the store for good; it is asked once. */
  readonly askedToKeep?: boolean;
  /** The gauge of the place that was last read on this device; absent or null for none. */
  readonly gauge?: string | null;
  /** How this device's user starts the clock; null for as the rules say. */
  readonly start: Pick<CountStart, 'clock' | 'first'> | null;
  /** The cue at the start and the end of a count; absent for silent. */
  readonly cue?: 'silent' | 'tick';
  /** Whether the sounds of a run are remembered and typed, or marked in time, here or on another device; absent for remembered. */
  readonly hearing?: 'remember' | 'mark' | 'second';
  readonly forms: Readonly<Record<string, FormDraft>>;
  /** One round at a time for each person. */
  readonly drafts: Readonly<Record<string, RoundDraft>>;
  readonly waiting: readonly WaitingRound[];
};

export function freshKept(device: string): Kept {
  return {
    version: 3,
    device,
    sequence: 0,
    agent: null,
    start: null,
    forms: {},
    drafts: {},
    waiting: [],
  };
}

/**
 * Reads what was kept; null when there is nothing that this program can read (nothing, damage, or a newer
 * version), which the caller must then leave alone.
 *
 * @param isOfAccount whether an account keeps it: only what is of a class is then of whoever was chosen on the device
 */
export function readKept(text: string | null, isOfAccount = false): Kept | null {
  if (text === null) return null;
  try {
    const kept = JSON.parse(text) as (Omit<Partial<Kept>, 'version'> & { version?: number }) | null;
    const isKept =
      (kept?.version === 1 || kept?.version === 2 || kept?.version === 3) &&
      typeof kept.device === 'string' &&
      Array.isArray(kept.waiting);
    if (!isKept) return null;
    return fromOlder(kept as unknown as Kept, isOfAccount);
  } catch {
    return null;
  }
}

/** Version 1 knew rounds of pulse and breaths alone, version 2 no book but that of the charts, 3 at first no rest, nor whose a round is: whoever measured last on the device, of an account's own whoever is signed in. */
function fromOlder(kept: Kept, isOfAccount: boolean): Kept {
  type Older = Omit<RoundDraft, 'by'> & Partial<Pick<RoundDraft, 'by'>>;
  const measuredLast = ({ book }: Older) => (isOfAccount && book !== 'class' ? null : kept.agent);
  const whole = (draft: Older, by: string | null): RoundDraft => ({ ...NOTHING_TAKEN, by, ...draft });
  return {
    ...kept,
    version: 3,
    drafts: Object.fromEntries(
      Object.entries(kept.drafts).map(([person, draft]) => [person, whole(draft, measuredLast(draft))]),
    ),
    waiting: kept.waiting.map((one) =>
      one.draft === null ? one : { ...one, draft: whole(one.draft, one.entries[0]?.agent ?? null) },
    ),
  };
}
