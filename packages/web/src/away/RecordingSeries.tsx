import {
  combinedLoad,
  derivedSpreads,
  marksBeside,
  ofSchedule,
  periodCategories,
  periodCounts,
  recordingNotes,
} from '@evenfall/clinical';
import { type AnsweredRecording, type InForce, type SeriesContent, seriesLimits } from '@evenfall/record';
import {
  loadText,
  loneText,
  periodCategoriesSaid,
  recordingFigure,
  stiffnessText,
  wholeText,
  windowsText,
} from '@evenfall/report';
import type { ReactNode } from 'react';
import { useApp } from '../app/context.js';
import { Flags } from '../parts/Flags.js';
import { AboutSeries } from './AboutSeries.js';
import { Chances, PrintedAssumptions } from './Chances.js';
import { FigureShown, SERIES_SCALE } from './FigureShown.js';
import { isNothingLeftOut } from './LeftOut.js';
import { OfficeAndAway } from './OfficeAndAway.js';
import { Curve } from './RecordingCurve.js';
import { Fall } from './RecordingFall.js';
import { Loads } from './RecordingLoads.js';
import { Periods } from './RecordingPeriods.js';
import { Variation } from './RecordingVariation.js';
import { RulesNamed } from './RulesNamed.js';
import { pairText } from './readingText.js';
import { Target } from './Target.js';

/** Room for pressure and a strip of pulse, in pixels; on a phone the figure scrolls in its frame. */
const FIGURE_HEIGHT = 420;
const FIGURE_LEAST = 250;
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
  /** What stands beside the hours of day and night: the way to put them right. */
  readonly beside: ReactNode;
};

/** A recording over 24 hours: whether it can be trusted, what each period comes to, the fall by night, and the rest folded away. */
export function RecordingSeries({
  content,
  answered,
  rules,
  first,
  last,
  asksStiffness,
  onAskStiffness,
  beside: besideHours,
}: RecordingProps) {
  const { words } = useApp();
  const { readings, dayNight, result, usual, office, beside } = answered;
  const { ambulatoryRules: a } = rules;
  const marks = marksBeside(readings, dayNight);
  const limits = (period: 'whole' | 'day' | 'night') =>
    seriesLimits('ambulatory', period === 'whole' ? 'mean' : period, rules);
  const wholeLoad = combinedLoad(readings, result.edited, dayNight, a);
  const categories = periodCategoriesSaid(periodCategories(result, a), result.pattern, words);
  const lone = loneText(answered.lone, result.judged.whole.mean, words);
  const loadSaid = loadText(wholeLoad, a, words);
  return (
    <>
      <div className="away-sheet">
        <div className="away-head">
          <div className="away-first">{first}</div>
          <div className="away-result">
            <section className="away-comes-to" aria-label={words.sentence('away.comesTo')}>
              <p className="away-mean">
                <strong>{pairText(result.judged.whole.mean, limits('whole'), words)}</strong>{' '}
                <span>{words.sentence('away.over24')}</span>
              </p>
              {lone === null ? null : <p className="notice">{lone}</p>}
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
                  <p className="away-category">
                    {words.sentence('away.categoryIs', { text: categories.text })}
                  </p>
                  <Flags flags={categories.flags} />
                </>
              )}
              <Quality result={result} readings={readings} dayNight={dayNight} rules={a} content={content} />
              {besideHours}
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
            <AboutSeries content={content} />
          </div>
        </div>
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
