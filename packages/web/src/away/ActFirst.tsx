import { actFirstIn, completedYears, type Flag, isChild, upright } from '@evenfall/clinical';
import type { SeriesContent } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { ActNowList } from '../chart/ActNowList.js';
import type { ActNowSaid } from '../chart/allOpen.js';
import { actFirstGroups } from './actFirstGroups.js';
import { pressureText, readingTime } from './readingText.js';

type Row = {
  readonly line: number | null;
  readonly systolic: number | null;
  readonly diastolic: number | null;
};

/** Readings that somebody must act on, whatever the mean says: first on the page, with what to do. */
export function ActFirstIn({
  content,
  rows,
}: {
  readonly content: SeriesContent;
  readonly rows: readonly Row[];
}) {
  const { words } = useApp();
  const { facts, value } = content;
  const readings = content.readings.map((one) => ({ ...one, when: readingTime(one, words) }));
  const refused = rows.map((row) => ({
    ...row,
    pulse: null,
    when: row.line === null ? '' : words.sentence('away.line', { line: row.line }),
  }));
  const all = [...readings, ...refused].map((row) => ({ ...upright(row), when: row.when }));
  const found = actFirstIn(
    all,
    facts.isPregnant === true,
    isChild(facts.ageMonths === null ? null : completedYears(facts.ageMonths)),
  );
  if (found.length === 0 && value.actNow.length === 0) return null;
  const alerts: readonly Flag[] = value.actNow.map(({ condition, figures }) => ({
    code: condition,
    figures,
  }));
  const groups = actFirstGroups(all, found, alerts);
  return (
    <section className="act-now" role="alert" aria-label={words.sentence('away.actFirst')}>
      <h2>{words.sentence('away.actFirst')}</h2>
      {groups.map((group, k) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: groups of one answer keep their order
        <div key={k}>
          <ul className="away-dangerous">
            {group.rows.map((row, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: rows of one answer keep their order
              <li key={at}>
                <strong>{pressureText(row, words)}</strong> {row.when}
              </li>
            ))}
          </ul>
          <Said flags={group.flags} alerts={new Map(alerts.map((flag, at) => [flag, value.actNow[at]]))} />
        </div>
      ))}
    </section>
  );
}

/** What is said of readings: an alert with its source and that local protocol may say otherwise, else the words alone. */
function Said({
  flags,
  alerts,
}: {
  readonly flags: readonly Flag[];
  readonly alerts: ReadonlyMap<Flag, ActNowSaid | undefined>;
}) {
  const { words } = useApp();
  const all = flags.flatMap((flag) => alerts.get(flag) ?? []);
  return (
    <>
      {all.length === 0 ? null : <ActNowList alerts={all} />}
      {flags.map((flag) => (alerts.has(flag) ? null : <p key={flag.code}>{words.detail(flag)}</p>))}
    </>
  );
}
