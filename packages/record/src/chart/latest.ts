import { mostUrgent, recheckUrgency } from '@evenfall/clinical';
import type { StoredEntry } from '../entry/entry.js';
import type { DueDiary } from './chartDiaries.js';
import { dutiesOf } from './duties.js';
import { GENERAL_RULES } from './generalRules.js';
import { type NewestValues, newestValues } from './newestValues.js';
import { projectChart } from './projectChart.js';
import type { DueRecheck } from './rechecks.js';
import type { RulesOf } from './valueStanding.js';

/** What the list of people shows of one person, projected from the person's entries. */
export type Latest = NewestValues & {
  /** Acts-now that nobody has closed. */
  readonly actNow: number;
  /** The most urgent of their conditions; null of none. */
  readonly actNowFirst: string | null;
  /** The most urgent time when the pressure is to be looked at again, of equal ones the first: why, from when, and by when if a source says so. */
  readonly recheck: Omit<DueRecheck, 'round'> | null;
  /** Learners' rounds that wait for a supervisor. */
  readonly toCountersign: number;
  /** The diary that is out and due back first, and from which day (`YYYY-MM-DD`, local). */
  readonly diary: Pick<DueDiary, 'entry' | 'dueOn'> | null;
  /** Every diary that is out, the one due back first first, with the day from which it was to be kept. */
  readonly diaries: readonly Pick<DueDiary, 'entry' | 'dueOn' | 'from'>[];
  /** The last day (`YYYY-MM-DD`, local) of the newest readings from away; null where there are none. */
  readonly awayUntil: string | null;
};

/**
 * What is newest of a person, and what somebody still has to do.
 *
 * @param rulesOf the rules by which a round that was amended after signing is judged again
 */
export function projectLatest(entries: readonly StoredEntry[], rulesOf: RulesOf = GENERAL_RULES): Latest {
  const { rounds } = projectChart(entries);
  const { actNow, rechecks, toCountersign, diaries, awayUntil } = dutiesOf(rounds, entries, rulesOf);
  const [diary] = diaries;
  const [first] = rechecks.toSorted(
    (a, b) => recheckUrgency(a.code) - recheckUrgency(b.code) || Date.parse(a.fromAt) - Date.parse(b.fromAt),
  );
  return {
    ...newestValues(rounds, rulesOf),
    actNow: actNow.length,
    actNowFirst: mostUrgent(actNow.map(({ condition }) => condition)),
    recheck: first === undefined ? null : { code: first.code, fromAt: first.fromAt, byAt: first.byAt },
    toCountersign: toCountersign.length,
    diary: diary === undefined ? null : { entry: diary.entry, dueOn: diary.dueOn },
    awayUntil,
    diaries: diaries.map(({ entry, dueOn, from }) => ({ entry, dueOn, from })),
  };
}
