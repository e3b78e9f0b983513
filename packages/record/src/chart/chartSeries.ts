import { isCovered } from '../content/actNowClosed.js';
import { type InForce, NOTHING_CHOSEN } from '../content/inForce.js';
import { newReadings } from '../content/newReadings.js';
import type { SeriesContent } from '../content/series.js';
import { type ByHand, valueOfSeries, valueStandingOf } from '../content/seriesMade.js';
import type { SeriesDecision } from '../content/seriesNames.js';
import type { SeriesValueKept } from '../content/seriesValue.js';
import type { StoredEntry } from '../entry/entry.js';
import { onDay } from '../person/onDay.js';
import { standingFacts } from '../person/standingFacts.js';
import { firstDifference } from '../recompute/nearly.js';
import { type AmendedEntry, gatherAmendments } from './amendmentTree.js';
import { type Closed, type Countersigned, isLearners, lastWord } from './projectChart.js';
import type { RulesOf } from './valueStanding.js';

type Stored<K extends StoredEntry['kind']> = Extract<StoredEntry, { readonly kind: K }>;

/** What a hand decided of a reading, as it stands. `entry` is the decision, that can be entered in error itself. */
export type DecidedReading = {
  readonly index: number;
  readonly decision: Exclude<SeriesDecision, 'by-rule'>;
  readonly reason: string;
  readonly entry: Stored<'series-decided'>;
};

/** An alert of a series that nobody has closed. */
export type OpenSeriesAlert = SeriesValueKept['actNow'][number] & {
  readonly round: string;
  /** The series, by the entry that first said it. */
  readonly series: string;
};

/** A series of a person as it stands. */
export type ChartedSeries = {
  /** The entry that first said it: what a link, a decision and a diary name. */
  readonly id: string;
  /** The round under which its alerts are closed. */
  readonly round: string;
  readonly amended: AmendedEntry;
  /** The newest content that stands; of one in error what was said first. */
  readonly content: SeriesContent;
  readonly isInError: boolean;
  /** A learner's series that nobody qualified has countersigned. */
  readonly isPreliminary: boolean;
  /** A preliminary one of which no supervisor said anything, or anything that still holds. */
  readonly isToCountersign: boolean;
  /** What supervisors said of it, in order of recording. */
  readonly countersigned: readonly Countersigned[];
  /** The first and the last local day with a reading (`YYYY-MM-DD`). */
  readonly from: string;
  readonly until: string;
  readonly decided: readonly DecidedReading[];
  /** Every decision that stands, also those that a later one replaced, in order of recording. */
  readonly decisions: readonly Stored<'series-decided'>[];
  /** The rules that it came in under; null where that version is not at hand: what hands decide is then judged by the general ones. */
  readonly rules: InForce | null;
  /** What it came to when it came in; null rules of that time leave what was kept. */
  readonly atEntry: SeriesValueKept;
  /** The same protocol with what hands decided since. */
  readonly value: SeriesValueKept;
  /** Under the protocol that is in force now, with what hands decided. */
  readonly now: SeriesValueKept;
  /** Every alert that it raised, told or not; of one in error what was kept. */
  readonly alerts: SeriesValueKept['actNow'];
  readonly open: readonly OpenSeriesAlert[];
  readonly closed: readonly Closed[];
};

/**
 * The series of a person, newest readings first. Built from entries alone: the same entries give the same answer.
 *
 * @param rulesOf the rules of the protocol version that a series names; null leaves what was kept, and where hands
 *   decided something the general rules stand in
 * @param inForce the rules in force today
 */
export function chartSeries(
  entries: readonly StoredEntry[],
  rulesOf: RulesOf,
  inForce: InForce = NOTHING_CHOSEN,
): ChartedSeries[] {
  // Most people have none: nothing is gathered for them.
  if (!entries.some(({ kind }) => kind === 'series')) return [];
  const gathered = gatherAmendments(entries.filter(({ kind }) => KINDS_OF_SERIES.includes(kind)));
  const said = gathered.flatMap(({ current }) => current).toSorted(asRecorded);
  const facts = standingFacts(entries);
  const charted = gathered.flatMap((amended): ChartedSeries[] => {
    const newest = amended.current.at(-1) ?? amended.original;
    if (newest.kind !== 'series') return [];
    const names = new Set(amended.story.map(({ id }) => id));
    const decisions = said.filter(
      (entry): entry is Stored<'series-decided'> =>
        entry.kind === 'series-decided' && names.has(entry.content.series),
    );
    const round = newest.round ?? newest.id;
    const closed = said.filter(
      (entry): entry is Closed => entry.kind === 'act-now-closed' && entry.round === round,
    );
    const countersigned = said.filter(
      (entry): entry is Countersigned => entry.kind === 'countersigned' && entry.round === round,
    );
    const { content } = newest;
    const decided = decidedOf(decisions, content.readings.length);
    const byHand = byHandOf(decided);
    const { presetVersion } = content.computedBy;
    const rules = presetVersion === null ? NOTHING_CHOSEN : rulesOf(presetVersion);
    const days = content.readings.map(({ at }) => at.at.slice(0, 'YYYY-MM-DD'.length)).sort();
    const isInError = amended.current.length === 0;
    const isLearnersHere = !isInError && isLearners(amended);
    const word = lastWord(amended, [], { countersigned });
    const known = ({ content: of, measuredAt }: Stored<'series'>): SeriesContent => {
      const learnt = onDay(facts, measuredAt.at.slice(0, 'YYYY-MM-DD'.length));
      const isPregnant = learnt.isPregnant ?? of.facts.isPregnant;
      const weeksAfterBirth = of.facts.weeksAfterBirth ?? learnt.weeksAfterBirth;
      return { ...of, facts: { ...of.facts, isPregnant, weeksAfterBirth } };
    };
    const alerts = isInError ? [] : alertsOf(raisingIn(amended, rulesOf), known, rulesOf);
    const open = alerts
      .flatMap((alert) => stillOpen(alert, closed, amended, known, rulesOf))
      .map((alert) => ({ ...alert, round, series: amended.original.id }));
    return [
      {
        id: amended.original.id,
        round,
        amended,
        content,
        isInError,
        isPreliminary: isLearnersHere && word !== 'agreed',
        isToCountersign: isLearnersHere && word === null,
        countersigned,
        from: days[0] ?? '',
        until: days.at(-1) ?? '',
        decided,
        decisions,
        rules,
        atEntry: content.value,
        value:
          decided.length === 0 ? content.value : valueStandingOf(content, rules ?? NOTHING_CHOSEN, byHand),
        now: valueOfSeries(content, inForce, byHand),
        alerts: isInError ? content.value.actNow : alerts,
        open,
        closed,
      },
    ];
  });
  return charted.sort((a, b) => (a.until < b.until ? 1 : a.until > b.until ? -1 : a.id < b.id ? 1 : -1));
}

const KINDS_OF_SERIES: readonly StoredEntry['kind'][] = [
  'series',
  'series-decided',
  'act-now-closed',
  'countersigned',
  'entered-in-error',
];

function asRecorded(a: StoredEntry, b: StoredEntry): number {
  return (
    Date.parse(a.recordedAt) - Date.parse(b.recordedAt) || a.sequence - b.sequence || (a.id < b.id ? -1 : 1)
  );
}

/** The newest decision of each reading; one left to the rule again is decided by nobody. */
function decidedOf(decisions: readonly Stored<'series-decided'>[], readings: number): DecidedReading[] {
  const newest = new Map<number, Stored<'series-decided'>>();
  for (const entry of decisions) for (const index of entry.content.indexes) newest.set(index, entry);
  return [...newest]
    .flatMap(([index, entry]): DecidedReading[] => {
      const { decision, reason } = entry.content;
      return decision === 'by-rule' || index > readings ? [] : [{ index, decision, reason, entry }];
    })
    .sort((a, b) => a.index - b.index);
}

/** Whether the value that stands was made by the general rules, since those it came in under are not at hand. */
export function isByGeneralRules({ decided, rules }: Pick<ChartedSeries, 'decided' | 'rules'>): boolean {
  return decided.length > 0 && rules === null;
}

/** What hands decided, as the analysis takes it. */
export function byHandOf(decided: readonly Pick<DecidedReading, 'index' | 'decision'>[]): ByHand {
  const of = (wanted: SeriesDecision) =>
    new Set(decided.filter(({ decision }) => decision === wanted).map(({ index }) => index));
  return { rejected: of('out'), restored: of('in') };
}

type Alert = SeriesValueKept['actNow'][number];

type Known = (series: Stored<'series'>) => SeriesContent;

/**
 * What raises alerts of a series: what stands of it, and what that goes on with, with those of its readings and rows that still
 * stand. Each is judged by the facts and the protocol of its own day: that a pregnancy ended since takes no alert back.
 */
function raisingIn({ current, story }: AmendedEntry, rulesOf: RulesOf): Stored<'series'>[] {
  const named = new Map(story.map((entry) => [entry.id, entry]));
  return current.flatMap((standing) => {
    if (standing.kind !== 'series') return [];
    const found = [standing];
    let of = named.get(idAmended(standing));
    // One that amends itself, of a damaged backup, goes on with nothing.
    for (; of !== undefined && of !== standing; of = named.get(idAmended(of))) {
      if (of.kind !== 'series') continue;
      const content = stillIn(standing.content, of.content, rulesOf);
      if (content !== null) found.push({ ...of, content });
    }
    return found;
  });
}

function idAmended({ amends }: StoredEntry): string {
  return amends?.entry ?? '';
}

/** The alerts of each: as kept, and with what the record says of that day (a pregnancy that nobody knew of at entry). Each condition once. */
function alertsOf(raising: readonly Stored<'series'>[], known: Known, rulesOf: RulesOf): Alert[] {
  const alerts = raising.flatMap((entry): readonly Alert[] => {
    const { content } = entry;
    const rules = rulesOf(content.computedBy.presetVersion) ?? NOTHING_CHOSEN;
    const learnt = known(entry);
    const isSame = firstDifference(learnt.facts, content.facts) === null;
    return isSame ? content.value.actNow : [...content.value.actNow, ...valueOfSeries(learnt, rules).actNow];
  });
  return alerts.filter(({ condition }, at) => alerts.findIndex((one) => one.condition === condition) === at);
}

/**
 * An alert that nobody was told of with the figures that it has now: it, or where it was told, what has come since and
 * meets its condition by itself. An alert has the figures of the first reading that meets it: a closing says nothing of
 * the readings that were added later.
 */
function stillOpen(
  alert: Alert,
  closed: readonly Closed[],
  amended: AmendedEntry,
  known: Known,
  rulesOf: RulesOf,
): Alert[] {
  const told = closed
    .filter(({ content }) => content.conditions.includes(alert.condition))
    // As it stood then: what was amended since was told to nobody.
    .map((closing) => standingFor(closing, amended.story, rulesOf))
    .filter((then) => alertsOf(then, known, rulesOf).some((one) => isSame(one, alert)));
  if (told.length === 0) return [alert];
  const before = told.flat().map(({ content }) => content);
  const since = raisingIn(amended, rulesOf).flatMap((entry) => {
    const content = without(before, entry.content);
    const rules = rulesOf(entry.content.computedBy.presetVersion) ?? NOTHING_CHOSEN;
    return content === null ? [] : valueOfSeries(known({ ...entry, content }), rules).actNow;
  });
  return since.filter(({ condition }) => condition === alert.condition).slice(0, 1);
}

function isSame(one: Alert, other: Alert): boolean {
  return one.condition === other.condition && firstDifference(one.figures, other.figures) === null;
}

/** What raised alerts of a story for whoever closed them. */
function standingFor(
  closing: Closed,
  story: readonly StoredEntry[],
  rulesOf: RulesOf,
): readonly Stored<'series'>[] {
  const before = story.filter((entry) => isCovered(closing, entry));
  return gatherAmendments(before).flatMap((amended) => raisingIn(amended, rulesOf));
}

const rowOf = ({ line, got }: SeriesContent['refused'][number]) => `${line} ${got}`;

/** A series with only the readings and refused rows that none of the others has; null where they have all. */
function without(others: readonly SeriesContent[], content: SeriesContent): SeriesContent | null {
  const existing = others.map(({ readings }) => ({ series: '', readings }));
  const readings = [...newReadings(existing, content.readings).fresh];
  const rows = new Set(others.flatMap(({ refused }) => refused.map(rowOf)));
  const refused = content.refused.filter((row) => !rows.has(rowOf(row)));
  return readings.length + refused.length === 0 ? null : { ...content, readings, refused };
}

/** The same with only what another has too, and its alerts by the rules of its time; null where that has nothing of it. */
function stillIn(standing: SeriesContent, content: SeriesContent, rulesOf: RulesOf): SeriesContent | null {
  const gone = without([standing], content);
  if (gone === null) return content;
  const kept = without([gone], content);
  if (kept === null) return null;
  const rules = rulesOf(content.computedBy.presetVersion) ?? NOTHING_CHOSEN;
  return { ...kept, value: { ...content.value, actNow: valueOfSeries(kept, rules).actNow } };
}
