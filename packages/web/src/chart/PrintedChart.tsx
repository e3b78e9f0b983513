import type { RoundSign } from '@evenfall/clinical';
import {
  type Agent,
  type AmendedEntry,
  type Chart,
  type ChartRound,
  type DueRecheck,
  type FailedGauge,
  failedGauge,
  type Gauge,
  notReliedOn,
  openIn,
  pressureWritten,
  projectTrend,
  resultsStanding,
  type StoredEntry,
  signingOf,
  type TrendRound,
  valueStanding,
} from '@evenfall/record';
import { beginningText, restText } from '@evenfall/words';
import { type ReactNode, useMemo } from 'react';
import { useApp, useKept } from '../app/context.js';
import { signText } from '../app/signText.js';
import { stampText } from '../app/times.js';
import { useKnownEquipment } from '../equipment/useEquipment.js';
import { FactsLines } from '../facts/FactsLines.js';
import { isVoidCharted, signOfCharted } from '../parts/charted.js';
import { duesText } from '../people/dueText.js';
import { localDate } from '../ports/stampAt.js';
import { notDoneText } from '../round/NotDoneForm.js';
import { bandsOf } from '../trend/bands.js';
import { drawnIn, evenScale } from '../trend/evenScale.js';
import { TrendFigure } from '../trend/TrendFigure.js';
import { TrendKey } from '../trend/TrendKey.js';
import { averageText, titleText } from '../trend/trendText.js';
import { wholeSpan } from '../trend/view.js';
import { amendedTexts } from './amendedTexts.js';
import { contentOfEntry } from './contentOfEntry.js';
import { gaugeFailedText } from './GaugeFailed.js';
import { PrintedFoot } from './PrintedEnds.js';
import { PrintedOther, PrintedValues } from './PrintedValue.js';
import { preparedText } from './preparedText.js';
import { openText, openTitles, printedNotes, printedResults } from './printedNotes.js';
import { useOpenActs } from './useOpenActs.js';
import { useRulesOf } from './useRulesOf.js';
import { whoText } from './who.js';

/** The drawing as it is printed, px: the width of a page of A4 or Letter within its margins, and low enough for one page. */
const TREND_WIDTH = 690;
const TREND_HEIGHT = 170;
/** A round of no more lines than this is never parted between two sheets; a longer one would leave too much of a sheet blank. */
const MOST_KEPT_WHOLE = 12;
/** Columns of their own, where somebody measured it; everything else stands in words under them. */
const COLUMNS = ['pressure', 'pulse', 'breaths', 'oxygen-saturation', 'temperature'] as const;

type PrintedProps = {
  readonly person: string;
  /** As of `RoundBlock`. */
  readonly birthDate: string | null;
  readonly entries: readonly StoredEntry[];
  readonly chart: Chart;
  readonly agents: readonly Agent[];
  /** Pressures that are to be taken again. */
  readonly rechecks: readonly DueRecheck[];
};

/**
 * A chart on paper: facts, what is open, the drawing, and each round, newest first: its numbers in columns, its words under
 * them across the sheet. It is never shown on a screen.
 */
export function PrintedChart({ person, birthDate, entries, chart, agents, rechecks }: PrintedProps) {
  const { words, clock } = useApp();
  const rulesOf = useRulesOf();
  const { equipment } = useKnownEquipment();
  const trend = useMemo(() => projectTrend(chart, rulesOf, equipment?.gauges), [chart, rulesOf, equipment]);
  const isWaiting = useKept(({ kept }) =>
    kept.waiting.some((one) => one.draft !== null && one.person === person),
  );
  const facts = <FactsLines entries={entries} day={localDate(clock.stamp())} />;
  if (chart.rounds.length === 0) return <div className="printed-only printed-chart">{facts}</div>;
  const hasScore = chart.rounds.some((round) => valueStanding(round, rulesOf)?.earlyWarning != null);
  const signs = COLUMNS.filter((sign) =>
    chart.rounds.some(({ values }) => valuesOf(values, sign).length > 0),
  );
  return (
    <div className="printed-only printed-chart">
      {facts}
      {isWaiting ? <p>{words.sentence('people.waiting')}</p> : null}
      <PrintedOpen rounds={chart.rounds} entries={entries} />
      <PrintedTrend trend={trend} />
      <table className="printed-table">
        <thead>
          <tr>
            <th scope="col">{words.sentence('chart.printedWhen')}</th>
            {signs.map((sign) => (
              <th key={sign} scope="col" className={`print-${sign}`}>
                {titleText(sign, words)}
              </th>
            ))}
            {areWordsBeside(signs) ? <th scope="col">{words.sentence('chart.printedNoted')}</th> : null}
          </tr>
        </thead>
        {chart.rounds.map((round) => (
          <PrintedRound
            key={round.id}
            round={round}
            birthDate={birthDate}
            average={trend.find((one) => one.round === round.id) ?? null}
            signs={signs}
            agents={agents}
            due={round.isInError ? [] : rechecks.filter((one) => one.round === round.id)}
          />
        ))}
        <tfoot>
          <tr>
            <td colSpan={signs.length + (areWordsBeside(signs) ? 2 : 1)} className="print-foot">
              <PrintedFoot />
              {hasScore ? (
                <p>
                  <b>{words.sentence('result.earlyWarning')}:</b> {words.sentence('result.college')}
                </p>
              ) : null}
            </td>
          </tr>
        </tfoot>
      </table>
    </div>
  );
}

/** Everything that nobody closed yet, with what to do about it: before any number. */
function PrintedOpen({ rounds, entries }: Pick<Chart, 'rounds'> & Pick<PrintedProps, 'entries'>) {
  const { words } = useApp();
  const all = useOpenActs(rounds, entries);
  if (all.length === 0) return null;
  return (
    <section className="print-open">
      {all.map(({ id, open, says }) => (
        <p key={id}>
          {open.map((one) => (
            <strong key={one.condition} className="print-line">
              {openText(one, words)}
            </strong>
          ))}
          {says}
        </p>
      ))}
    </section>
  );
}

/** Pressures and pulse alone: what they were stands beside every other number in the table. */
function PrintedTrend({ trend }: { readonly trend: readonly TrendRound[] }) {
  const { words } = useApp();
  const bands = bandsOf(trend)
    .filter(({ id }) => id === 'circulation')
    .map((band) => ({ ...band, height: TREND_HEIGHT }));
  const span = wholeSpan(trend);
  if (span === null || evenScale(trend, drawnIn(bands)) === null) return null;
  return (
    <figure className="print-trend">
      <TrendFigure
        bands={bands}
        rounds={trend}
        span={span}
        at={-1}
        printedWidth={TREND_WIDTH}
        label={words.sentence('chart.printedTrend')}
        onRead={nothing}
        onPart={nothing}
      />
      <figcaption>
        <TrendKey rounds={trend} />
        {words.sentence('chart.printedEven')}
      </figcaption>
    </figure>
  );
}

function nothing(): void {
  // Paper answers no pointer.
}

/** Without pressures, which take half of the sheet, the words have room beside the numbers. */
function areWordsBeside(signs: readonly RoundSign[]): boolean {
  return signs.length > 0 && !signs.includes('pressure');
}

type RoundProps = Pick<PrintedProps, 'birthDate'> & {
  readonly round: ChartRound;
  /** The round in the trend, for what its pressures come to; null where it has no number that stands. */
  readonly average: TrendRound | null;
  readonly signs: readonly (typeof COLUMNS)[number][];
  readonly agents: readonly Agent[];
  /** When its pressure is to be taken again; none where it was since. */
  readonly due: readonly DueRecheck[];
};

function PrintedRound({ round, birthDate, average, signs, agents, due }: RoundProps) {
  const { words } = useApp();
  const says = usePrintedWords({ round, birthDate, signs, agents, due });
  const signing = signingOf(round) ?? round.signed?.original;
  const first = signing ?? round.values[0]?.original;
  if (first === undefined) return null;
  // A cell that spans both rows would keep a sheet from ending between them.
  const isLong = says.length > MOST_KEPT_WHOLE;
  // With nothing in the columns the words stand beside the time.
  const hasNumbers = signs.some((sign) => valuesOf(round.values, sign).length > 0);
  const isBeside = areWordsBeside(signs);
  const numbers = signs.map((sign) => (
    <td key={sign}>
      {sign === 'pressure' && average !== null && averageText(average, words) !== null ? (
        <strong className="print-line">
          {average.isNotReliedOn ? <s>{averageText(average, words)}</s> : averageText(average, words)}
        </strong>
      ) : null}
      <PrintedValues values={valuesOf(round.values, sign)} round={round} />
    </td>
  ));
  const noted = (
    <td key="says" colSpan={isBeside ? 1 : Math.max(signs.length, 1)} className="print-says">
      {says.map((line, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the lines of a printed cell never move
        <span key={at} className="print-line">
          {line}
        </span>
      ))}
    </td>
  );
  const rows = isBeside
    ? [[...numbers, noted]]
    : [...(hasNumbers ? [numbers] : []), ...(says.length > 0 || !hasNumbers ? [noted] : [])];
  return (
    <tbody className={isLong ? 'print-round print-long' : 'print-round'}>
      {rows.map((cells, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: numbers, then words
        <tr key={at}>
          {at > 0 ? (
            isLong && <td />
          ) : (
            <th scope="rowgroup" rowSpan={isLong ? 1 : rows.length}>
              {stampText(first.measuredAt, words)}
              <span className="print-line">
                {signing === undefined ? words.sentence('chart.unsigned') : whoText(signing, agents, words)}
              </span>
              {notReliedOn(round) !== null ? (
                <strong className="print-line">{words.sentence('chart.notAgreed')}</strong>
              ) : round.isPreliminary ? (
                <strong className="print-line">{words.sentence('chart.preliminary')}</strong>
              ) : null}
              {round.isInError ? (
                <strong className="print-line">{words.sentence('chart.enteredInError')}</strong>
              ) : null}
            </th>
          )}
          {cells}
        </tr>
      ))}
    </tbody>
  );
}

type WordsProps = Pick<RoundProps, 'round' | 'birthDate' | 'signs' | 'agents' | 'due'>;

/** What the round comes to, what was to be acted on, and everything that has no column of its own: a line each. */
function usePrintedWords({ round, birthDate, signs, agents, due }: WordsProps): readonly ReactNode[] {
  const { words, clock } = useApp();
  const rulesOf = useRulesOf();
  const { equipment } = useKnownEquipment();
  const by = { rulesOf, birthDate };
  const signing = signingOf(round) ?? round.signed?.original;
  const values = round.isInError ? [] : resultsStanding(round, rulesOf);
  const open = round.isInError ? [] : openIn(round, rulesOf);
  const others = round.values.filter(({ original }) => {
    const given = contentOfEntry(original);
    return given !== null && !signs.some((sign) => sign === signOfCharted(given));
  });
  const hasPressure = valuesOf(round.values, 'pressure').length > 0;
  const notDone =
    signing?.kind === 'round' ? signing.content.signs.flatMap((one) => ('notDone' in one ? [one] : [])) : [];
  return [
    // What to do about it stands above, before the rounds.
    ...(open.length > 0 ? [<strong key="open">{openTitles(open, words)}</strong>] : []),
    ...duesText(due, clock.stamp(), words).map((text) => <strong key={text}>{text}.</strong>),
    ...round.closed.map((entry) => (
      <span key={entry.id}>
        {words.sentence('chart.closedSays', {
          conditions: entry.content.conditions.map((one) => words.title('condition', one)).join(', '),
          whom: entry.content.toldWhom,
          at: stampText(entry.content.toldAt, words),
          said: entry.content.saidBack,
          who: whoText(entry, agents, words),
        })}
      </span>
    )),
    ...(signing?.kind === 'round' && signing.content.rest !== null
      ? [restText(signing.content.rest, words)]
      : []),
    ...(signing?.kind === 'round' && signing.content.evidence !== null && hasPressure
      ? [preparedText({ ...signing.content.evidence, ...signing.content }, words)]
      : []),
    ...(signing?.kind === 'round' && signing.content.begun !== null
      ? [`${beginningText(signing.content.begun, words)}.`]
      : []),
    ...(others.length > 0
      ? [others.map((one) => <PrintedOther key={one.original.id} value={one} round={round} />)]
      : []),
    ...failedIn(round, equipment?.gauges ?? []).map(({ written, failed }) => (
      <strong key={`${written} ${failed.name}`}>
        {written.join(', ')}: {gaugeFailedText(failed, words)}
      </strong>
    )),
    ...(round.isInError ? [] : amendedTexts(round.values, agents, words)).map(({ of, text }) => (
      <span key={`${of} ${text}`}>
        <b>{of}:</b> {text}
      </span>
    )),
    ...(values.length > 1 ? [words.sentence('chart.disputed')] : []),
    ...[...printedResults(round, by, words), ...printedNotes(round, by, words)].map(({ of, text }) => (
      <span key={`${of} ${text}`}>
        <b>{of}:</b> {text}
      </span>
    )),
    ...(notDone.length > 0
      ? [
          notDone
            .map((one) =>
              words.sentence('chart.notDone', {
                sign: signText(one.sign, words),
                reason: notDoneText(one.notDone, words),
              }),
            )
            .join(' · '),
        ]
      : []),
    ...(signing?.kind === 'round' && signing.content.note !== null ? [signing.content.note] : []),
    ...round.countersigned.map((entry) => (
      <span key={entry.id}>
        <b>{words.sentence(entry.content.agrees ? 'chart.countersigned' : 'chart.notAgreed')}</b>{' '}
        {whoText(entry, agents, words)}, {stampText(entry.measuredAt, words)}
        {entry.content.note === null ? null : `: ${entry.content.note}`}
      </span>
    )),
  ];
}

/** The pressures that stand in a round and were read from a gauge that failed, those of one gauge together. */
function failedIn({ values, isInError }: ChartRound, gauges: readonly Gauge[]) {
  if (isInError) return [];
  const of = new Map<string, { readonly failed: FailedGauge; readonly written: string[] }>();
  for (const entry of values.flatMap(({ current }) => current)) {
    const failed = entry.kind === 'run' ? failedGauge(entry, gauges) : null;
    if (entry.kind !== 'run' || failed === null) continue;
    const key = JSON.stringify(failed);
    const one = of.get(key) ?? { failed, written: [] };
    one.written.push(pressureWritten(entry.content));
    of.set(key, one);
  }
  return [...of.values()];
}

/** The values of a sign in a round, as it was first signed; what was broken off has no number and no line. */
function valuesOf(values: readonly AmendedEntry[], sign: RoundSign): readonly AmendedEntry[] {
  return values.filter(({ original }) => {
    const given = contentOfEntry(original);
    return given !== null && !isVoidCharted(given) && signOfCharted(given) === sign;
  });
}
