import { actFirstIn, completedYears, type Flag, isChild } from '@evenfall/clinical';
import type { SeriesContent } from '@evenfall/record';
import { useApp } from '../app/context.js';
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
    when: row.line === null ? '' : words.sentence('away.line', { line: row.line }),
  }));
  const found = actFirstIn<(typeof readings)[number] | (typeof refused)[number]>(
    [...readings, ...refused],
    facts.isPregnant === true,
    isChild(facts.ageMonths === null ? null : completedYears(facts.ageMonths)),
  );
  if (found.length === 0 && value.actNow.length === 0) return null;
  const alerts: readonly Flag[] = value.actNow.map(({ condition, figures }) => ({
    code: condition,
    figures,
  }));
  const codes = [...new Set(found.map(({ flag }) => flag.code))];
  return (
    <section className="act-now" role="alert" aria-label={words.sentence('away.actFirst')}>
      <h2>{words.sentence('away.actFirst')}</h2>
      {codes.map((code) => {
        const ofCode = found.filter(({ flag }) => flag.code === code);
        const [first] = ofCode;
        return (
          <div key={code}>
            <ul className="away-dangerous">
              {ofCode.map(({ row }, at) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: rows of one answer keep their order
                <li key={at}>
                  <strong>{pressureText(row, words)}</strong> {row.when}
                </li>
              ))}
            </ul>
            {first === undefined || alerts.length > 0 ? null : <p>{words.detail(first.flag)}</p>}
          </div>
        );
      })}
      {alerts.length === 0 ? null : (
        <ul className="flags">
          {alerts.map((alert) => (
            <li key={alert.code}>{words.detail(alert)}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
