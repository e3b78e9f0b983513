import type { StoredEntry } from '../entry/entry.js';
import { onDay as factsOnDay, type OnDay } from '../person/onDay.js';
import { standingFacts } from '../person/standingFacts.js';
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
  /** A preliminary one of which no supervisor said anything, or anything that still holds. */
  readonly isToCountersign: boolean;
  /** What supervisors said of its signings, in order of recording. */
  readonly countersigned: readonly Countersigned[];
  /** What closes its acts-now, in order of recording. */
  readonly closed: readonly Closed[];
  /** Every signing of the round was entered in error, and with it everything in it. */
  readonly isInError: boolean;
  /** What the record says of the person on the day of the round, whether or not it was known when it was signed. */
  readonly onDay: OnDay;
};

export type Countersigned = StoredEntry & { readonly kind: 'countersigned' };
export type Closed = StoredEntry & { readonly kind: 'act-now-closed' };

/** A person's chart, newest round first. Built from entries alone: the same entries give the same chart. */
export type Chart = {
  readonly rounds: readonly ChartRound[];
  /** Values that came from elsewhere, newest first: in no round, and nothing is made of them. */
  readonly reported: readonly AmendedEntry[];
  /** How many entries it was built from. */
  readonly entries: number;
};

/** Every signing of a round, in order. */
export function signingsOf({
  signed,
  signedAgain,
}: Pick<ChartRound, 'signed' | 'signedAgain'>): readonly AmendedEntry[] {
  return signed === null ? [] : [signed, ...signedAgain];
}

type Writable = { signed: AmendedEntry | null; signedAgain: AmendedEntry[]; values: AmendedEntry[] };

/** Builds a chart from a person's entries, in any order. */
export function projectChart(entries: readonly StoredEntry[]): Chart {
  const rounds = new Map<string, Writable>();
  // A mark of error belongs to what it marks: one of a fact is gathered with the fact and is not of the chart.
  const gathered = gatherAmendments(entries);
  for (const amended of gathered.filter(({ original }) => isCharted(original))) {
    const { original } = amended;
    const id = original.round ?? original.id;
    const round: Writable = rounds.get(id) ?? { signed: null, signedAgain: [], values: [] };
    if (original.kind !== 'round') round.values.push(amended);
    else if (round.signed === null) round.signed = amended;
    else round.signedAgain.push(amended);
    rounds.set(id, round);
  }
  const about = aboutRounds(gathered);
  const facts = standingFacts(entries);
  // gatherAmendments answers in the order of the work, so the rounds were met oldest first.
  const inOrder = [...rounds].map(([id, round]) => ({
    id,
    ...round,
    ...sayings(round, about.get(id) ?? NOTHING_SAID),
    onDay: factsOnDay(facts, dayOf(round)),
  }));
  const reported = gathered.filter(({ original }) => original.kind === 'reported').reverse();
  return { rounds: inOrder.reverse(), reported, entries: entries.length };
}

/** The day of a round, local, as its signing has it, else its first value. */
function dayOf({ signed, values }: Writable): string {
  return (signed?.original ?? values[0]?.original)?.measuredAt.at.slice(0, 'YYYY-MM-DD'.length) ?? '';
}

type About = { readonly countersigned: readonly Countersigned[]; readonly closed: readonly Closed[] };

const NOTHING_SAID: About = { countersigned: [], closed: [] };

/** What was said of each round without amending it and was not entered in error, in order of recording, by the round. */
function aboutRounds(gathered: readonly AmendedEntry[]): ReadonlyMap<string | null, About> {
  const said = gathered
    .flatMap(({ current }) => current)
    .filter((entry) => entry.kind === 'countersigned' || entry.kind === 'act-now-closed')
    .toSorted((a, b) => Date.parse(a.recordedAt) - Date.parse(b.recordedAt) || (a.id < b.id ? -1 : 1));
  const about = new Map<string | null, { countersigned: Countersigned[]; closed: Closed[] }>();
  for (const entry of said) {
    const beside = about.get(entry.round) ?? { countersigned: [], closed: [] };
    if (entry.kind === 'countersigned') beside.countersigned.push(entry);
    else beside.closed.push(entry);
    about.set(entry.round, beside);
  }
  return about;
}

/** What the signings of a round that stand say of it and of its values. */
function sayings(round: Writable, about: About) {
  const signings = signingsOf(round);
  const { values } = round;
  const standing = signings.flatMap(({ current }) => current);
  const isInError = signings.length > 0 && standing.length === 0;
  const named = new Set((isInError ? signings.flatMap(({ story }) => story) : standing).flatMap(namedIn));
  const isNamed = ({ story }: AmendedEntry) => story.some(({ id }) => named.has(id));
  const words = signings
    .filter((signing) => signing.current.length > 0 && isLearners(signing))
    .map((signing) => lastWord(signing, values, about));
  return {
    unsigned: values.filter((value) => !isNamed(value)).map(({ original }) => original.id),
    isPreliminary: words.some((word) => word !== 'agreed'),
    isToCountersign: words.includes(null),
    ...about,
    isInError,
    values: isInError ? values.map(inError) : values,
  };
}

/** A signing, of a round or a series, that was ever preliminary is a learner's: no amendment of it countersigns it. */
export function isLearners({ story }: AmendedEntry): boolean {
  return story.some(
    (entry) => (entry.kind === 'round' || entry.kind === 'series') && entry.content.status === 'preliminary',
  );
}

/** What a supervisor last said of a signing. */
export type SupervisorWord = 'agreed' | 'not-relied-on';

/**
 * What the last supervisor who said anything of a signing still says of it; null where nobody did. What was amended since is
 * not what it was said of; only where a supervisor of it relied on it, and amended it, is that theirs too.
 */
export function lastWord(
  signing: AmendedEntry,
  values: readonly AmendedEntry[],
  { countersigned }: Pick<About, 'countersigned'>,
): SupervisorWord | null {
  const ids = new Set(signing.story.map(({ id }) => id));
  const of = countersigned.filter(({ content }) => ids.has(content.signing));
  const last = of.at(-1);
  if (last === undefined) return null;
  const { agrees } = last.content;
  const supervisors = new Set(of.map(({ agent }) => agent));
  const isAmendedSince = [signing, ...values]
    .flatMap(({ story }) => story)
    .some(
      ({ amends, recordedAt, agent }) =>
        amends !== null &&
        Date.parse(recordedAt) > Date.parse(last.recordedAt) &&
        !(agrees && supervisors.has(agent) && agent !== signing.original.agent),
    );
  if (isAmendedSince) return null;
  return agrees ? 'agreed' : 'not-relied-on';
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
