import { dayPartOf, type HomeParts, homeDayOf, homeParts, type SeriesReading } from '@evenfall/clinical';
import { type AnsweredHome, type InForce, type SeriesContent, timesSaid } from '@evenfall/record';
import { dayMeanText, homeFigure, signedText } from '@evenfall/report';
import type { ReactNode } from 'react';
import { useApp } from '../app/context.js';
import { dayOfYearText } from '../app/times.js';
import { Flags } from '../parts/Flags.js';
import { Scrolling } from '../parts/Scrolling.js';
import { AboutSeries } from './AboutSeries.js';
import { Chances, PrintedAssumptions } from './Chances.js';
import { dateOfDay } from './dateOfDay.js';
import { FigureShown, SERIES_SCALE } from './FigureShown.js';
import { type Measure, MeasuresTable } from './MeasuresTable.js';
import { OfficeAndAway } from './OfficeAndAway.js';
import { meanText, pressureText } from './readingText.js';
import { ShortResult } from './ShortResult.js';
import { Target } from './Target.js';

type HomeProps = {
  readonly content: SeriesContent;
  readonly answered: AnsweredHome;
  readonly rules: InForce;
  /** What stands first and last on the first sheet. */
  readonly first: ReactNode;
  readonly last: ReactNode;
};
type TableProps = Pick<AnsweredHome, 'readings' | 'result'> & Pick<HomeProps, 'rules'>;

/** Room for a week of pairs, in pixels; on a phone the figure scrolls in its frame. */
const FIGURE_HEIGHT = 320;
const FIGURE_LEAST = 480;
/** Over the width of a sheet: its lettering is 7 pt there. */
const ON_PAPER = { width: 620, heights: [200, 160, 120] };
/** Days that stand on the first sheet, beside the means; more of them stand before the list of all readings. */
const MOST_DAYS_BESIDE = 8;

/** Readings at home: the mean with its category, then how sure it is, then the numbers behind it. */
export function HomeSeries({ content, answered, rules, first, last }: HomeProps) {
  const { words } = useApp();
  const { readings, result, usual, office, beside } = answered;
  const { homeRules } = rules;
  const about = timesSaid(content.readings);
  const days = new Set(readings.map((one) => homeDayOf(one, homeRules))).size;
  const dayByDay = (
    <section aria-label={words.sentence('away.dayByDay')}>
      <h2>{words.sentence('away.dayByDay')}</h2>
      <DayTable readings={readings} result={result} rules={rules} />
    </section>
  );
  return (
    <>
      <div className="away-sheet">
        <div className="away-head">
          <div className="away-first">{first}</div>
          <div className="away-result">
            <section className="away-comes-to" aria-label={words.sentence('away.comesTo')}>
              <ShortResult content={content} rules={rules} asked={answered.asked} />
              <Target target={answered.target} />
            </section>
            <AboutSeries content={content} />
          </div>
        </div>
        <div className="away-tables">
          <div className="away-parts">
            <PartsTable result={result} rules={rules} />
            <DayToDay result={result} parts={homeParts(readings, result.dropped, homeRules)} />
            <Extremes readings={readings} />
          </div>
          {days > MOST_DAYS_BESIDE ? null : dayByDay}
        </div>
        <FigureShown
          name="home"
          height={FIGURE_HEIGHT}
          leastWidth={FIGURE_LEAST}
          leastScale={SERIES_SCALE}
          hasTable
          onPaper={ON_PAPER}
          draw={(how) => homeFigure({ readings, result, rules: homeRules, about }, words, how)}
        />
        {usual === null ? null : <Chances {...usual} office={office} />}
        {office === null || beside === null ? null : <OfficeAndAway office={office} beside={beside} />}
        {last}
      </div>
      {days > MOST_DAYS_BESIDE ? dayByDay : null}
      {usual === null ? null : <PrintedAssumptions {...usual} office={office} />}
    </>
  );
}

/** The means of morning and evening and what lies between them. */
function PartsTable({ result, rules }: Omit<TableProps, 'readings'>) {
  const { words } = useApp();
  const limits = {
    systolic: rules.homeRules.highSystolic,
    diastolic: rules.homeRules.highDiastolic,
    pulse: null,
  };
  return (
    <MeasuresTable
      label={words.sentence('away.comesTo')}
      rows={[
        ...(['mean', 'morning', 'evening'] as const).map((part) => ({
          name: words.sentence(`series.${part}`),
          cell: (one: Measure) => meanText(result[part][one], limits[one], words),
        })),
        {
          name: words.sentence('away.morningMinusEvening'),
          cell: (one) => signedText(result.morningMinusEvening[one], words),
        },
        { name: words.sentence('away.sd'), cell: (one) => numberText(result.sd[one], words) },
      ]}
    />
  );
}

function numberText(value: number | null, { say }: ReturnType<typeof useApp>['words']): string {
  return value === null ? '–' : say.number(value, 1);
}

/** Every day with a reading: those that are left out too, greyed and never gone. */
function DayTable({ readings, result, rules }: TableProps) {
  const { words } = useApp();
  const { homeRules } = rules;
  const dropped = new Set(result.dropped.map(({ index }) => index));
  const days = [...new Set(readings.map((one) => homeDayOf(one, homeRules)))].sort((a, b) => a - b);
  const of = (ofDay: readonly SeriesReading[], part: 'morning' | 'evening' | 'other') =>
    ofDay
      .filter((one) => dayPartOf(one, homeRules) === part)
      .map((one) => ({ one, text: pressureText(one, words) }));
  const hasOther = readings.some((one) => dayPartOf(one, homeRules) === 'other');
  const parts = ['morning', 'evening', ...(hasOther ? (['other'] as const) : [])] as const;
  return (
    <Scrolling label={words.sentence('away.dayByDay')}>
      <table className="away-table away-days">
        <thead>
          <tr>
            <th scope="col">{words.sentence('away.dayColumn')}</th>
            {parts.map((part) => (
              <th key={part} scope="col">
                {words.sentence(part === 'other' ? 'away.other' : `series.${part}`)}
              </th>
            ))}
            <th scope="col">{words.sentence('away.dayMean')}</th>
          </tr>
        </thead>
        <tbody>
          {days.map((day) => {
            const ofDay = readings.filter((one) => homeDayOf(one, homeRules) === day);
            const mean = result.dayMeans.find((one) => one.day === day);
            return (
              <tr key={day} className={mean === undefined ? 'away-grey' : undefined}>
                <th scope="row">{dayOfYearText(dateOfDay(day), words)}</th>
                {parts.map((part) => (
                  <td key={part}>
                    {of(ofDay, part).map(({ one, text }) => (
                      <span key={one.index} className="away-pressure">
                        {dropped.has(one.index) ? <s>{text}</s> : text}
                      </span>
                    ))}
                  </td>
                ))}
                <td>
                  {mean === undefined
                    ? words.sentence('away.dayLeftOut')
                    : dayMeanText(mean, homeRules.highSystolic, homeRules.highDiastolic, words)}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </Scrolling>
  );
}

function DayToDay({ result, parts }: Pick<TableProps, 'result'> & { readonly parts: HomeParts }) {
  const { words } = useApp();
  const { sd, days } = result.dayToDay;
  if (sd.systolic === null || sd.diastolic === null) return null;
  const { morning, evening, flags } = parts;
  const pair = (of: HomeParts['morning']['sd']) =>
    `${numberText(of.systolic, words)}/${numberText(of.diastolic, words)}`;
  const hasBoth = morning.sd.systolic !== null && evening.sd.systolic !== null;
  return (
    <>
      <p className="small soft">
        {words.sentence('away.dayToDay', { days, systolic: sd.systolic, diastolic: sd.diastolic })}
        {hasBoth
          ? ` ${words.sentence('series.partsSd', { morning: pair(morning.sd), evening: pair(evening.sd) })}.`
          : null}
      </p>
      <Flags flags={flags} />
    </>
  );
}

/** The highest and the lowest reading: shown, and not what the category is by. */
function Extremes({ readings }: Pick<TableProps, 'readings'>) {
  const { words } = useApp();
  const known = readings.filter(({ systolic }) => systolic !== null);
  const byHeight = known.toSorted((a, b) => (a.systolic ?? 0) - (b.systolic ?? 0));
  const [lowest] = byHeight;
  const highest = byHeight.at(-1);
  if (lowest === undefined || highest === undefined) return null;
  return (
    <p>
      {words.sentence('away.extremes', {
        highest: pressureText(highest, words),
        lowest: pressureText(lowest, words),
      })}
    </p>
  );
}
