import {
  type combinedLoad,
  DERIVED,
  type DerivedSpreads,
  type PeriodCounts,
  type PeriodResult,
  type SidedLimit,
} from '@evenfall/clinical';
import type { AnsweredRecording } from '@evenfall/record';
import { sidedText } from '@evenfall/report';
import { useApp } from '../app/context.js';
import { useIsPrinting } from '../chart/useIsPrinting.js';
import { Scrolling } from '../parts/Scrolling.js';
import { meanText } from './readingText.js';

type Limits = (period: 'whole' | 'day' | 'night') => {
  readonly systolic: SidedLimit | null;
  readonly diastolic: SidedLimit | null;
};

const PERIODS = ['whole', 'day', 'night'] as const;
const MEASURES = ['systolic', 'diastolic', 'pulse'] as const;
const COLUMNS = ['mean', 'limit', 'sd', 'least', 'most', 'load'] as const;
const PAPER_COLUMNS = ['mean', 'limit', 'sd', 'range', 'load'] as const;

type PeriodRow = {
  readonly name: string;
  readonly mean: string;
  readonly limit: string;
  readonly sd: string;
  readonly least: string;
  readonly most: string;
  readonly load: string;
};
type PeriodRows = { readonly name: string; readonly n: number; readonly rows: readonly PeriodRow[] };

type PeriodsProps = Pick<AnsweredRecording, 'result'> & {
  readonly limits: Limits;
  readonly spreads: DerivedSpreads;
  readonly counts: PeriodCounts;
  readonly wholeLoad: ReturnType<typeof combinedLoad>;
};

/** What each period comes to: one under another on a screen, side by side on paper. */
export function Periods({ result, limits, spreads, counts, wholeLoad }: PeriodsProps) {
  const { words } = useApp();
  const isPrinting = useIsPrinting();
  const of: Record<(typeof PERIODS)[number], PeriodResult> = {
    whole: result.all,
    day: result.day,
    night: result.night,
  };
  /** A number that some of the readings lack says how many have it. */
  const nameOf = (measure: (typeof MEASURES)[number], n: number, all: number) =>
    [
      words.sentence(`away.${measure}`),
      ...(n === all ? [] : [words.sentence('away.count', { readings: n })]),
    ].join(', ');
  const periods = PERIODS.map((period): PeriodRows => {
    const one = of[period];
    const limit = limits(period);
    const load = period === 'whole' ? wholeLoad : (result.load[period]?.percent ?? null);
    const limitText = (of: SidedLimit | null) => (of === null ? '' : sidedText(of, words));
    const decimal = (value: number | null) => (value === null ? '' : words.say.number(value, 1));
    const whole = (value: number | null) => (value === null ? '' : words.say.number(value));
    const spread = MEASURES.map((measure) => {
      const ofMeasure = measure === 'pulse' ? null : limit[measure];
      const isJudged = period === 'whole' && measure !== 'pulse';
      return {
        name: nameOf(measure, counts[period][measure], one.n),
        mean: meanText(isJudged ? result.judged.whole.mean[measure] : one.mean[measure], ofMeasure, words),
        limit: limitText(ofMeasure),
        sd: decimal(one.sd[measure]),
        least: whole(one.least[measure]),
        most: whole(one.most[measure]),
        load: measure === 'pulse' || load?.[measure] == null ? '' : words.say.number(load[measure]),
      };
    });
    const derived = DERIVED.map((measure) => {
      const { sd, least, most } = spreads[period][measure];
      return {
        name: words.sentence(`away.${measure}`),
        mean: meanText(one[measure], null, words),
        ...{ limit: '', sd: decimal(sd), least: whole(least), most: whole(most), load: '' },
      };
    });
    return { name: words.sentence(`series.${period}`), n: one.n, rows: [...spread, ...derived] };
  });
  return isPrinting ? <SideBySide periods={periods} /> : <OneUnderAnother periods={periods} />;
}

function OneUnderAnother({ periods }: { readonly periods: readonly PeriodRows[] }) {
  const { words } = useApp();
  return (
    <Scrolling label={words.sentence('away.comesTo')}>
      <table className="away-table away-periods">
        <thead>
          <tr>
            <td />
            <td />
            {COLUMNS.map((column) => (
              <th key={column} scope="col">
                {words.sentence(`away.${column}Column`)}
              </th>
            ))}
          </tr>
        </thead>
        {periods.map(({ name, n, rows }) => (
          <tbody key={name}>
            {rows.map((row, at) => (
              <tr key={row.name}>
                {at === 0 ? (
                  <th scope="rowgroup" rowSpan={rows.length}>
                    {name}
                    <span className="small soft"> {words.sentence('away.count', { readings: n })}</span>
                  </th>
                ) : null}
                <th scope="row">{row.name}</th>
                {COLUMNS.map((column) => (
                  <td key={column}>{row[column]}</td>
                ))}
              </tr>
            ))}
          </tbody>
        ))}
      </table>
    </Scrolling>
  );
}

/** As it stands over the width of a sheet: the lowest and the highest in one column, a load where there is one. */
function SideBySide({ periods }: { readonly periods: readonly PeriodRows[] }) {
  const { words } = useApp();
  const [first] = periods;
  const columnsOf = ({ rows }: PeriodRows) =>
    PAPER_COLUMNS.filter((column) => column !== 'load' || rows.some(({ load }) => load !== ''));
  const heading = (column: (typeof PAPER_COLUMNS)[number]) =>
    column === 'range'
      ? `${words.sentence('away.leastColumn')}–${words.sentence('away.mostColumn').toLocaleLowerCase(words.say.locale)}`
      : words.sentence(`away.${column}Column`);
  const cell = (row: PeriodRow | undefined, column: (typeof PAPER_COLUMNS)[number]) => {
    if (row === undefined) return '';
    if (column !== 'range') return row[column];
    return row.least === '' ? '' : `${row.least}–${row.most}`;
  };
  return (
    <table className="away-table away-beside">
      <thead>
        <tr>
          <td />
          {periods.map((period) => (
            <th key={period.name} scope="colgroup" colSpan={columnsOf(period).length}>
              {period.name}, {words.sentence('away.count', { readings: period.n })}
            </th>
          ))}
        </tr>
        <tr>
          <td />
          {periods.flatMap((period) =>
            columnsOf(period).map((column) => (
              <th key={`${period.name} ${column}`} scope="col">
                {heading(column)}
              </th>
            )),
          )}
        </tr>
      </thead>
      <tbody>
        {(first?.rows ?? []).map(({ name }, at) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            {periods.flatMap((period) =>
              columnsOf(period).map((column) => (
                <td key={`${period.name} ${column}`} className={column === 'mean' ? 'away-first' : undefined}>
                  {cell(period.rows[at], column)}
                </td>
              )),
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
