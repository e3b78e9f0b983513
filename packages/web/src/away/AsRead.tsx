import type { SeriesColumn } from '@evenfall/exchange';
import type { SeriesReadingKept } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { Scrolling } from '../parts/Scrolling.js';
import { beside } from './Readings.js';
import { pressureText, readingTime } from './readingText.js';
import type { IntakeState } from './useIntake.js';

type AsReadProps = { readonly state: IntakeState; readonly readings: readonly SeriesReadingKept[] };

/** Enough to see a column that was taken for another; the rest is read alike. */
const SHOWN = 5;
const OF_TIME: readonly SeriesColumn[] = ['time', 'date', 'clock'];
const OF_PRESSURE: readonly SeriesColumn[] = ['pressure', 'systolic', 'diastolic'];

/** The first readings of a table as they were read, each number under the column that it was taken from, before they are signed. */
export function AsRead({ state: { intake }, readings }: AsReadProps) {
  const { words } = useApp();
  if (intake.way === 'typed' || intake.read === null || readings.length === 0) return null;
  const { headings, columns } = intake.read.mapping;
  const nameOf = (at: number) =>
    words.sentence('away.column', { column: at + 1, text: headings?.[at] ?? '' });
  const from = (...roles: readonly SeriesColumn[]) =>
    columns.flatMap((role, at) => (role !== null && roles.includes(role) ? [nameOf(at)] : []));
  const shown = readings.slice(0, SHOWN);
  const others = columns.flatMap((role, at) =>
    role === null || [...OF_TIME, ...OF_PRESSURE, 'pulse'].includes(role)
      ? []
      : [
          words.sentence('away.columnTaken', {
            text: nameOf(at),
            role: words.sentence(`away.column-${role}`),
          }),
        ],
  );
  const unread = columns.flatMap((role, at) => (role === null ? [nameOf(at)] : []));
  const hasPulse = columns.includes('pulse') || readings.some(({ pulse }) => pulse !== null);
  return (
    <details className="more" open>
      <summary>{words.sentence('away.asRead', { shown: shown.length, readings: readings.length })}</summary>
      <Scrolling label={words.sentence('away.asRead', { shown: shown.length, readings: readings.length })}>
        <table className="away-table away-readings">
          <thead>
            <tr>
              <Head says={words.sentence('trend.when')} from={from(...OF_TIME)} />
              <Head says={words.sentence('trend.pressure')} from={from(...OF_PRESSURE)} />
              {hasPulse ? <Head says={words.sentence('trend.pulse')} from={from('pulse')} /> : null}
            </tr>
          </thead>
          <tbody>
            {shown.map((reading, place) => {
              const says = beside(reading, false, words).join(' · ');
              return (
                // biome-ignore lint/suspicious/noArrayIndexKey: readings of one instant have no other name than their place
                <tr key={place}>
                  <th scope="row">
                    {readingTime(reading, words)}
                    {says === '' ? null : <span className="away-from small soft">{says}</span>}
                  </th>
                  <td>{pressureText(reading, words)}</td>
                  {hasPulse ? <td>{reading.pulse === null ? '–' : words.say.short(reading.pulse)}</td> : null}
                </tr>
              );
            })}
          </tbody>
        </table>
      </Scrolling>
      {others.length === 0 ? null : (
        <p className="away-rest small soft">
          {words.sentence('away.alsoTaken', { text: words.say.allOf(others) })}
        </p>
      )}
      {unread.length === 0 ? null : (
        <p className="away-rest small soft">
          {words.sentence('away.columnsNotRead', { text: words.say.allOf(unread) })}
        </p>
      )}
    </details>
  );
}

/** What stands in a column here, and under it which of the table it was read from. */
function Head({ says, from }: { readonly says: string; readonly from: readonly string[] }) {
  return (
    <th scope="col">
      {says}
      {from.map((name) => (
        <span key={name} className="away-from small soft">
          {name}
        </span>
      ))}
    </th>
  );
}
