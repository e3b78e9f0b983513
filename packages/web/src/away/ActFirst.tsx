import { actFirstGroups, actFirstIn, completedYears, isChild, upright } from '@evenfall/clinical';
import type { SeriesContent } from '@evenfall/record';
import { type ReactNode, useState } from 'react';
import { useApp } from '../app/context.js';
import { ActNowList } from '../chart/ActNowList.js';
import { pressureText, readingTime } from './readingText.js';

type Row = {
  readonly line: number | null;
  readonly systolic: number | null;
  readonly diastolic: number | null;
};

type ActFirstProps = {
  readonly content: SeriesContent;
  readonly rows: readonly Row[];
  /** That it was closed, with whom and when: then what was to be done lies behind it; null while something is open. */
  readonly closed?: ReactNode;
  /** Whether where a limit comes from is behind a touch, so that the result stands near the top; what to do never is, and paper has all of it. */
  readonly isShort?: boolean;
};

/** Readings that somebody must act on, whatever the mean says: first on the page, with what to do. */
export function ActFirstIn({ content, rows, closed = null, isShort = false }: ActFirstProps) {
  const { words } = useApp();
  const [isMore, setMore] = useState(false);
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
  const isBehind = isShort || closed !== null;
  const groups = actFirstGroups(all, found, alerts);
  return (
    <section
      id="away-act-first"
      tabIndex={-1}
      className={closed === null ? 'act-now' : 'notice'}
      role={closed === null ? 'alert' : undefined}
      aria-label={words.sentence(closed === null ? 'away.actFirst' : 'away.actFirstClosed')}
    >
      <h2>{words.sentence(closed === null ? 'away.actFirst' : 'away.actFirstClosed')}</h2>
      {closed}
      {groups.map(({ rows: dangerous, flags }, k) => {
        const isOfPulse = flags.some(({ figures }) => figures.pulsePerMinute !== undefined);
        const isAlert = flags.some((flag) => 'condition' in flag);
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
            <div className={closed !== null && isAlert && !isMore ? 'printed-only' : undefined}>
              <ActNowList
                alerts={flags.flatMap((flag) => ('condition' in flag ? [flag] : []))}
                isSourceFolded={isBehind && !isMore}
              />
              {flags.map((flag) =>
                'condition' in flag ? null : <p key={flag.code}>{words.detail(flag)}</p>,
              )}
            </div>
          </div>
        );
      })}
      {isBehind && alerts.length > 0 ? (
        <button
          type="button"
          className="button button-quiet not-printed"
          aria-expanded={isMore}
          onClick={() => setMore(!isMore)}
        >
          {words.sentence(closed === null ? 'away.whereFrom' : 'away.whatWasToDo')}
        </button>
      ) : null}
    </section>
  );
}
