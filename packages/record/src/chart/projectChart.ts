import type { StoredEntry } from '../entry/entry.js';
import { type AmendedEntry, gatherAmendments } from './amendmentTree.js';

/** One signed set of signs, as the chart shows it. */
export type ChartRound = {
  readonly id: string;
  /** The signing: who, in what role, when. Null when values of the round arrived without it. */
  readonly signed: AmendedEntry | null;
  /** Any further signing of the same round, which two devices could make without knowing of each other. */
  readonly signedAgain: readonly AmendedEntry[];
  readonly values: readonly AmendedEntry[];
  /** Originals among the values that no standing signing of this round names: they came without a signature. */
  readonly unsigned: readonly string[];
  /** A learner's round that nobody qualified has countersigned. */
  readonly isPreliminary: boolean;
  /** What supervisors said of its signings, in order of recording. */
  readonly countersigned: readonly Countersigned[];
  /** What closes its acts-now, in order of recording. */
  readonly closed: readonly Closed[];
  /** Every signing of the round was entered in error, and with it everything in it. */
  readonly isInError: boolean;
};

export type Countersigned = StoredEntry & { readonly kind: 'countersigned' };
export type Closed = StoredEntry & { readonly kind: 'act-now-closed' };

/** A person's chart, newest round first. Built from entries alone: the same entries give the same chart. */
export type Chart = {
  readonly rounds: readonly ChartRound[];
  /** How many entries it was built from. */
  readonly entries: number;
};

type Writable = { signed: AmendedEntry | null; signedAgain: AmendedEntry[]; values: AmendedEntry[] };

/** Builds a chart from a person's entries, in any order. */
export function projectChart(entries: readonly StoredEntry[]): Chart {
  const rounds = new Map<string, Writable>();
  // A mark of error belongs to what it marks: one of a fact is gathered with the fact and is not of the chart.
  const charted = gatherAmendments(entries).filter(({ original }) => isCharted(original));
  for (const amended of charted) {
    const { original } = amended;
    const id = original.round ?? original.id;
    const round: Writable = rounds.get(id) ?? { signed: null, signedAgain: [], values: [] };
    if (original.kind !== 'round') round.values.push(amended);
    else if (round.signed === null) round.signed = amended;
    else round.signedAgain.push(amended);
    rounds.set(id, round);
  }
  // gatherAmendments answers in the order of the work, so the rounds were met oldest first.
  const inOrder = [...rounds].map(([id, round]) => ({
    id,
    ...round,
    ...sayings(round, aboutRound(entries, id)),
  }));
  return { rounds: inOrder.reverse(), entries: entries.length };
}

type About = { readonly countersigned: readonly Countersigned[]; readonly closed: readonly Closed[] };

/** What was said of a round without amending it, in order of recording. */
function aboutRound(entries: readonly StoredEntry[], round: string): About {
  const about = entries
    .filter((entry) => entry.round === round)
    .toSorted((a, b) => Date.parse(a.recordedAt) - Date.parse(b.recordedAt) || (a.id < b.id ? -1 : 1));
  return {
    countersigned: about.filter((entry): entry is Countersigned => entry.kind === 'countersigned'),
    closed: about.filter((entry): entry is Closed => entry.kind === 'act-now-closed'),
  };
}

/** What the signings of a round that stand say of it and of its values. */
function sayings({ signed, signedAgain, values }: Writable, about: About) {
  const signings = signed === null ? [] : [signed, ...signedAgain];
  const standing = signings.flatMap(({ current }) => current);
  const isInError = signings.length > 0 && standing.length === 0;
  const named = new Set((isInError ? signings.flatMap(({ story }) => story) : standing).flatMap(namedIn));
  return {
    unsigned: values.map(({ original }) => original.id).filter((id) => !named.has(id)),
    isPreliminary: standing.some(
      (signing) =>
        signing.kind === 'round' &&
        signing.content.status === 'preliminary' &&
        !isAgreed(signing, signings, about),
    ),
    ...about,
    isInError,
    values: isInError ? values.map(inError) : values,
  };
}

/** Whether a supervisor agreed to a signing, and the last one who said anything still does. */
function isAgreed(
  signing: StoredEntry,
  signings: readonly AmendedEntry[],
  { countersigned }: About,
): boolean {
  const story = signings.find(({ current }) => current.includes(signing))?.story ?? [];
  const ids = new Set(story.map(({ id }) => id));
  return countersigned.findLast(({ content }) => ids.has(content.signing))?.content.agrees === true;
}

function namedIn(entry: StoredEntry): readonly string[] {
  if (entry.kind !== 'round') return [];
  return entry.content.signs.flatMap((sign) => ('entries' in sign ? sign.entries : []));
}

/** A value of a round that should never have been charted: nothing of it stands, all of it can be read. */
function inError(value: AmendedEntry): AmendedEntry {
  return { ...value, current: [], standing: 'entered-in-error' };
}

function isCharted(entry: StoredEntry): boolean {
  return ['count', 'taps', 'run', 'sign', 'round', 'entered-in-error'].includes(entry.kind);
}
