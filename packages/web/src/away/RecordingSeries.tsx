import {
  combinedLoad,
  DERIVED,
  type DerivedSpreads,
  derivedSpreads,
  marksBeside,
  ofSchedule,
  type PeriodCounts,
  type PeriodResult,
  periodCategories,
  periodCounts,
  recordingNotes,
  type SidedLimit,
  type Surge,
} from '@evenfall/clinical';
import type { AnsweredRecording, InForce, SeriesContent } from '@evenfall/record';
import {
  fallText,
  loadText,
  periodCategoriesSaid,
  periodLoadText,
  recordingFigure,
  risesSaid,
  riseText,
  sidedText,
  stiffnessText,
  variationRows,
  wholeText,
  windowsText,
} from '@evenfall/report';
import type { Words } from '@evenfall/words';
import type { ReactNode } from 'react';
import { useApp } from '../app/context.js';
import { timeText } from '../app/times.js';
import { useIsPrinting } from '../chart/useIsPrinting.js';
import { Flags } from '../parts/Flags.js';
import { Scrolling } from '../parts/Scrolling.js';
import { AboutSeries } from './AboutSeries.js';
import { Chances, PrintedAssumptions } from './Chances.js';
import { FigureShown, SERIES_SCALE } from './FigureShown.js';
import { isNothingLeftOut } from './LeftOut.js';
import { OfficeAndAway } from './OfficeAndAway.js';
import { RulesNamed } from './RulesNamed.js';
import { meanText, pairText } from './readingText.js';
import { limitsOf } from './ShortResult.js';
import { Target } from './Target.js';

/** Room for pressure and a strip of pulse, in pixels; on a phone the figure scrolls in its frame. */
const FIGURE_HEIGHT = 420;
const FIGURE_LEAST = 480;
/** Over the width of a sheet: its lettering is 7 pt there. */
const ON_PAPER = { width: 620, heights: [300, 250, 195] };

type RecordingProps = {
  readonly content: SeriesContent;
  readonly answered: AnsweredRecording;
  readonly rules: InForce;
  /** What stands first and last on the first sheet. */
  readonly first: ReactNode;
  readonly last: ReactNode;
  /** Whether a hand asked for the stiffness index, which the rules may ask for too. */
  readonly asksStiffness: boolean;
  readonly onAskStiffness: (asks: boolean) => void;
};
type ResultProps = Pick<AnsweredRecording, 'result'>;

/** A recording over 24 hours: whether it can be trusted, what each period comes to, the fall by night, and the rest folded away. */
export function RecordingSeries({
  content,
  answered,
  rules,
  first,
  last,
  asksStiffness,
  onAskStiffness,
}: RecordingProps) {
  const { words } = useApp();
  const { readings, dayNight, result, usual, office, beside } = answered;
  const { ambulatoryRules: a } = rules;
  const marks = marksBeside(readings, dayNight);
  const limits = (period: 'whole' | 'day' | 'night') =>
    limitsOf('ambulatory', period === 'whole' ? 'mean' : period, rules);
  const wholeLoad = combinedLoad(readings, result.edited, dayNight, a);
  const categories = periodCategoriesSaid(periodCategories(result, a), result.pattern, words);
  const loadSaid = loadText(wholeLoad, a, words);
  return (
    <>
      <div className="away-sheet">
        {first}
        <AboutSeries content={content} />
        <section className="away-comes-to" aria-label={words.sentence('away.comesTo')}>
          <p className="away-mean">
            <strong>{pairText(result.judged.whole.mean, limits('whole'), words)}</strong>{' '}
            <span>{words.sentence('away.over24')}</span>
          </p>
          {result.pattern === null ? null : (
            <p className="away-category">
              {words.sentence('away.patternIs', {
                text: words.sentence('series.consistentWith', {
                  names: words.title('ambulatoryPattern', result.pattern),
                }),
              })}
            </p>
          )}
          {categories === null ? null : (
            <>
              <p className="away-category">{words.sentence('away.categoryIs', { text: categories.text })}</p>
              <Flags flags={categories.flags} />
            </>
          )}
          <Quality result={result} readings={readings} dayNight={dayNight} rules={a} content={content} />
          {marks === null ? null : <p>{words.sentence('series.marksNotUsed', marks)}</p>}
          <Flags flags={result.why} />
          <Periods
            result={result}
            limits={limits}
            spreads={derivedSpreads(readings, result.edited, dayNight)}
            counts={periodCounts(readings, result.edited, dayNight)}
            wholeLoad={wholeLoad}
          />
          {result.counts.kept === 0 ? null : (
            <p className="small soft">
              {[
                wholeText(result, a, words),
                ...(loadSaid === null ? [] : [`${words.sentence('series.load')}, ${loadSaid}.`]),
              ].join(' ')}
            </p>
          )}
          <RulesNamed of="ambulatory" computedBy={content.computedBy} />
          <Target target={answered.target} />
        </section>
        <FigureShown
          name="recording"
          height={FIGURE_HEIGHT}
          leastWidth={FIGURE_LEAST}
          leastScale={SERIES_SCALE}
          hasTable
          onPaper={ON_PAPER}
          draw={(how) => recordingFigure({ readings, result, rules: a, dayNight }, words, how)}
        />
        <div className="away-two">
          <section aria-label={words.sentence('series.fall')}>
            <h2>{words.sentence('series.fall')}</h2>
            <Fall result={result} />
            <Flags flags={result.flags.filter(({ code }) => code === 'class-is-weak')} />
          </section>
          {office === null || beside === null ? null : <OfficeAndAway office={office} beside={beside} />}
          <Loads result={result} rules={a} />
          {last}
        </div>
      </div>
      {usual === null ? null : <Chances {...usual} office={office} />}
      {usual === null ? null : <PrintedAssumptions {...usual} office={office} />}
      <Variation result={result}>
        {a.reportsStiffness ? null : (
          <label className="tick not-printed">
            <input
              type="checkbox"
              checked={asksStiffness}
              onChange={(event) => onAskStiffness(event.currentTarget.checked)}
            />
            {words.sentence('away.askStiffness')}
          </label>
        )}
        {answered.rules.reportsStiffness ? (
          <p>
            {words.sentence('report.line', {
              label: words.sentence('series.stiffness'),
              text: stiffnessText(result, words),
            })}
          </p>
        ) : null}
      </Variation>
      <Curve result={result} />
    </>
  );
}

type QualityProps = Pick<AnsweredRecording, 'result' | 'readings' | 'dayNight' | 'rules'> &
  Pick<RecordingProps, 'content'>;

/** Whether the recording can be trusted, its longest gap, and what divides day and night. */
function Quality({ result, readings, dayNight, rules, content }: QualityProps) {
  const { words } = useApp();
  const { scheduled, isPlanSaid, kept, byHand, day, night, percent } = result.counts;
  const gap = result.longestGapHours;
  const notes = recordingNotes(readings, result.edited, dayNight, rules);
  return (
    <>
      <p>
        <strong>{words.sentence(result.valid ? 'away.valid' : 'away.notValid')}</strong>{' '}
        {words.sentence('away.quality', {
          scheduled,
          isPlanSaid,
          kept: kept - byHand,
          ...ofSchedule(readings, result.edited),
          byHandUsed: byHand,
          refused: content.refused.length,
          percent,
          day,
          night,
          gap,
        })}{' '}
        {isNothingLeftOut(content) ? `${words.sentence('away.nothingLeftOut')} ` : null}
        <span className="away-windows">{windowsText({ result, dayNight }, words)}.</span>
      </p>
      <Flags flags={[...result.flags.filter(({ code }) => code !== 'class-is-weak'), ...notes]} />
    </>
  );
}

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

type PeriodsProps = ResultProps & {
  readonly limits: Limits;
  readonly spreads: DerivedSpreads;
  readonly counts: PeriodCounts;
  readonly wholeLoad: ReturnType<typeof combinedLoad>;
};

/** What each period comes to: one under another on a screen, side by side on paper. */
function Periods({ result, limits, spreads, counts, wholeLoad }: PeriodsProps) {
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

/** How far the pressure falls by night, with its class; the rise after waking only where a diary tells the waking. */
function Fall({ result }: ResultProps) {
  const { words } = useApp();
  return (
    <>
      <p>{fallText(result, words) ?? words.sentence('series.notKnown')}</p>
      {result.surge === null ? null : <Rises surge={result.surge} />}
    </>
  );
}

/** The rise by the definition that comes first, the others folded away. */
function Rises({ surge }: { readonly surge: Surge }) {
  const { words } = useApp();
  const { rises, notes } = risesSaid(surge, words);
  const [first, ...others] = rises;
  return (
    <>
      {first === undefined ? null : (
        <p>
          {words.sentence('series.rise')}: {riseText(first, words)}
        </p>
      )}
      <details className="more away-fold">
        <summary>{words.sentence('away.otherRises')}</summary>
        <ul className="away-left-out">
          {others.map((one) => (
            <li key={one.name}>{riseText(one, words)}</li>
          ))}
        </ul>
        {notes.map((note) => (
          <p key={note} className="small soft">
            {note}
          </p>
        ))}
      </details>
    </>
  );
}

function Loads({ result, rules }: ResultProps & { readonly rules: InForce['ambulatoryRules'] }) {
  const { words } = useApp();
  const found = (['day', 'night'] as const).flatMap((period) => {
    const load = result.load[period];
    const text = periodLoadText(period, load, rules, words);
    return load === null || text === null ? [] : [{ period, text, area: load.excessArea }];
  });
  if (found.length === 0) return null;
  return (
    <section aria-label={words.sentence('series.load')}>
      <h2>{words.sentence('series.load')}</h2>
      <ul className="away-left-out">
        {found.map(({ period, text, area }) => (
          <li key={period}>
            {text}
            {area.systolic === null || area.diastolic === null
              ? ''
              : `; ${words.sentence('away.area', { systolic: area.systolic, diastolic: area.diastolic })}`}
          </li>
        ))}
      </ul>
    </section>
  );
}

function Variation({ result, children }: ResultProps & { readonly children: ReactNode }) {
  const { words } = useApp();
  const number = (value: number | null) => (value === null ? '–' : words.say.number(value, 1));
  return (
    <details className="more away-fold">
      <summary>{words.sentence('away.variation')}</summary>
      <Scrolling label={words.sentence('away.variation')}>
        <table className="away-table">
          <thead>
            <tr>
              <td />
              {MEASURES.map((one) => (
                <th key={one} scope="col">
                  {words.sentence(`away.${one}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {variationRows(result, words).map(({ name, of }) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                {MEASURES.map((one) => (
                  <td key={one}>{number(of[one])}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Scrolling>
      {children}
    </details>
  );
}

/** The fitted curve: folded away, since it describes and judges nothing. */
function Curve({ result }: ResultProps) {
  const { words } = useApp();
  const rows = (['one', 'two'] as const).flatMap((which) =>
    MEASURES.flatMap((measure) => {
      const curve = result.cosinor[measure][which];
      return curve === null ? [] : [{ which, measure, curve }];
    }),
  );
  if (rows.length === 0) return null;
  return (
    <details className="more away-fold">
      <summary>{words.sentence('away.curve')}</summary>
      <p className="soft small">{words.sentence('away.curveSays')}</p>
      <Scrolling label={words.sentence('away.curve')}>
        <table className="away-table">
          <thead>
            <tr>
              <td />
              <th scope="col">{words.sentence('away.mesor')}</th>
              <th scope="col">{words.sentence('away.amplitude')}</th>
              <th scope="col">{words.sentence('away.peak')}</th>
              <th scope="col">R²</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ which, measure, curve }) => {
              const [first] = curve.harmonics;
              return (
                <tr key={`${which} ${measure}`}>
                  <th scope="row">
                    {words.sentence(`away.${measure}`)}, {words.sentence(`away.curve-${which}`)}
                  </th>
                  <td>{withError(curve.mesor, curve.mesorSe, words)}</td>
                  <td>{first === undefined ? '' : withError(first.amplitude, first.amplitudeSe, words)}</td>
                  <td>{first === undefined ? '' : timeText(clockOf(first.peakHour), words)}</td>
                  <td>{words.say.number(curve.r2, 2)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </Scrolling>
    </details>
  );
}

function withError(value: number, error: number | null, { say }: Words): string {
  return error === null ? say.number(value, 1) : `${say.number(value, 1)} ± ${say.number(error, 1)}`;
}

/** A time of day from hours since midnight. */
function clockOf(hour: number): string {
  const minutes = Math.round(hour * 60) % (24 * 60);
  return [Math.floor(minutes / 60), minutes % 60].map((one) => String(one).padStart(2, '0')).join(':');
}
