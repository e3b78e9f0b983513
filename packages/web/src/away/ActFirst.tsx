import { actFirstGroups, actFirstIn, completedYears, isChild, upright } from '@evenfall/clinical';
import type { SeriesContent } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { ActNowList } from '../chart/ActNowList.js';
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
  const alerts = value.actNow.map((alert) => ({ ...alert, code: alert.condition }));
  const groups = actFirstGroups(all, found, alerts);
  return (
    <section className="act-now" role="alert" aria-label={words.sentence('away.actFirst')}>
      <h2>{words.sentence('away.actFirst')}</h2>
      {groups.map(({ rows: dangerous, flags }, k) => {
        const isOfPulse = flags.some(({ figures }) => figures.pulsePerMinute !== undefined);
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: groups of one answer keep their order
          <div key={k}>
            <ul className="away-dangerous">
              {dangerous.map((row, at) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: rows of one answer keep their order
                <li key={at}>
                  <strong>{pressureText(row, words)}</strong>
                  {isOfPulse && row.pulse !== null
                    ? `, ${words.sentence('away.pulseIs', { pulse: row.pulse })},`
                    : null}{' '}
                  {row.when}
                </li>
              ))}
            </ul>
            <ActNowList alerts={flags.flatMap((flag) => ('condition' in flag ? [flag] : []))} />
            {flags.map((flag) => ('condition' in flag ? null : <p key={flag.code}>{words.detail(flag)}</p>))}
          </div>
        );
      })}
    </section>
  );
}
