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
};

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
  for (const amended of gatherAmendments(entries.filter(isCharted))) {
    const { original } = amended;
    const id = original.round ?? original.id;
    const round: Writable = rounds.get(id) ?? { signed: null, signedAgain: [], values: [] };
    if (original.kind !== 'round') round.values.push(amended);
    else if (round.signed === null) round.signed = amended;
    else round.signedAgain.push(amended);
    rounds.set(id, round);
  }
  // gatherAmendments answers in the order of the work, so the rounds were met oldest first.
  return { rounds: [...rounds].map(([id, round]) => ({ id, ...round })).reverse(), entries: entries.length };
}

function isCharted(entry: StoredEntry): boolean {
  return ['count', 'taps', 'round', 'entered-in-error'].includes(entry.kind);
}
