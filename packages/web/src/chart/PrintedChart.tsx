import type { RoundSign } from '@evenfall/clinical';
import {
  type Agent,
  type AmendedEntry,
  type Chart,
  type ChartRound,
  type DueRecheck,
  openIn,
  projectTrend,
  resultsStanding,
  type StoredEntry,
  signingOf,
  type TrendRound,
  valueStanding,
} from '@evenfall/record';
import { postureTexts, type Words } from '@evenfall/words';
import { type ReactNode, useMemo } from 'react';
import { useApp, useKept } from '../app/context.js';
import { signText } from '../app/signText.js';
import { stampText } from '../app/times.js';
import { FactsLines } from '../facts/FactsLines.js';
import { chartedText, isVoidCharted, signOfCharted } from '../parts/charted.js';
import { duesText } from '../people/dueText.js';
import { localDate } from '../ports/stampAt.js';
import { placeText } from '../pressure/placeText.js';
import { notDoneText } from '../round/NotDoneForm.js';
import { bandsOf } from '../trend/bands.js';
import { TrendFigure } from '../trend/TrendFigure.js';
import { averageText, titleText } from '../trend/trendText.js';
import { wholeSpan } from '../trend/view.js';
import { contentOfEntry } from './contentOfEntry.js';
import { PrintedFoot } from './PrintedEnds.js';
import { openText, printedNotes, printedResults } from './printedNotes.js';
import { useRulesOf } from './useRulesOf.js';
import { whoText } from './who.js';

/** The drawing as it is printed, px: the width of a page of A4 or Letter within its margins, and low enough for one page. */
const TREND_WIDTH = 690;
const TREND_HEIGHT = 170;
/** Columns of their own, where somebody measured it; everything else stands in the last one. */
const COLUMNS = ['pressure', 'pulse', 'breaths', 'oxygen-saturation', 'temperature'] as const;

type PrintedProps = {
  readonly person: string;
  readonly entries: readonly StoredEntry[];
  readonly chart: Chart;
  readonly agents: readonly Agent[];
  /** Pressures that are to be taken again. */
  readonly rechecks: readonly DueRecheck[];
  /** Whose chart it is, said again above the columns of every page. */
  readonly head: ReactNode;
};

/** A chart on paper: facts, the drawing, and a line for each round, newest first. It is never shown on a screen. */
export function PrintedChart({ person, entries, chart, agents, rechecks, head }: PrintedProps) {
  const { words, clock } = useApp();
  const rulesOf = useRulesOf();
  const trend = useMemo(() => projectTrend(chart, rulesOf), [chart, rulesOf]);
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
      <PrintedTrend trend={trend} />
      <table className="printed-table">
        <thead>
          <tr>
            <td colSpan={signs.length + 2} className="print-again">
              {head}
            </td>
          </tr>
          <tr>
            <th scope="col">{words.sentence('chart.printedWhen')}</th>
            {signs.map((sign) => (
              <th key={sign} scope="col">
                {titleText(sign, words)}
              </th>
            ))}
            <th scope="col">{words.sentence('chart.printedElse')}</th>
          </tr>
        </thead>
        <tbody>
          {chart.rounds.map((round) => (
            <PrintedRound
              key={round.id}
              round={round}
              average={trend.find((one) => one.round === round.id) ?? null}
              signs={signs}
              agents={agents}
              due={round.isInError ? [] : rechecks.filter((one) => one.round === round.id)}
            />
          ))}
        </tbody>
        <tfoot>
          <tr>
            <td colSpan={signs.length + 2} className="print-foot">
              <PrintedFoot />
              {hasScore ? <p>{words.sentence('result.college')}</p> : null}
            </td>
          </tr>
        </tfoot>
      </table>
    </div>
  );
}

/** Pressures and pulse alone: what they were stands beside every other number in the table. */
function PrintedTrend({ trend }: { readonly trend: readonly TrendRound[] }) {
  const { words } = useApp();
  const bands = bandsOf(trend)
    .filter(({ id }) => id === 'circulation')
    .map((band) => ({ ...band, height: TREND_HEIGHT }));
  const span = wholeSpan(trend);
  // One round is no course of anything.
  if (span === null || bands.length === 0 || trend.length < 2) return null;
  return (
    <TrendFigure
      bands={bands}
      rounds={trend}
      span={span}
      at={-1}
      fixedWidth={TREND_WIDTH}
      label={words.sentence('chart.printedTrend')}
      onRead={nothing}
      onPart={nothing}
    />
  );
}

function nothing(): void {
  // Paper answers no pointer.
}

type RoundProps = {
  readonly round: ChartRound;
  /** The round in the trend, for what its pressures come to; null where it has no number that stands. */
  readonly average: TrendRound | null;
  readonly signs: readonly (typeof COLUMNS)[number][];
  readonly agents: readonly Agent[];
  /** When its pressure is to be taken again; none where it was since. */
  readonly due: readonly DueRecheck[];
};

function PrintedRound({ round, average, signs, agents, due }: RoundProps) {
  const { words } = useApp();
  const signing = signingOf(round) ?? round.signed?.original;
  const first = signing ?? round.values[0]?.original;
  if (first === undefined) return null;
  return (
    <tr>
      <th scope="row">
        {stampText(first.measuredAt, words)}
        <span className="print-line">
          {signing === undefined ? words.sentence('chart.unsigned') : whoText(signing, agents, words)}
        </span>
        {round.isPreliminary ? (
          <strong className="print-line">{words.sentence('chart.preliminary')}</strong>
        ) : null}
        {round.isInError ? (
          <strong className="print-line">{words.sentence('chart.enteredInError')}</strong>
        ) : null}
      </th>
      {signs.map((sign) => (
        <td key={sign}>
          {sign === 'pressure' && average !== null && averageText(average, words) !== null ? (
            <strong className="print-line">{averageText(average, words)}</strong>
          ) : null}
          {valuesOf(round.values, sign).map((value, at, all) => (
            <PrintedValue
              key={value.original.id}
              value={value}
              isInError={round.isInError}
              placeBefore={placeOf(all[at - 1]?.current.at(-1), words)}
            />
          ))}
        </td>
      ))}
      <td>
        <PrintedElse round={round} signs={signs} agents={agents} due={due} />
      </td>
    </tr>
  );
}

type ValueProps = {
  readonly value: AmendedEntry;
  readonly isInError: boolean;
  /** Where the reading before it was taken, which is not said twice. */
  readonly placeBefore?: string | null;
};

/** A value as it stands; struck through where it was entered in error. */
function PrintedValue({ value, isInError, placeBefore = null }: ValueProps) {
  const { words } = useApp();
  const { original, current, standing } = value;
  if (isInError || current.length === 0) {
    return (
      <span className="print-line">
        <del>{textOf(original, words)}</del>{' '}
        {isInError ? null : <span>{words.sentence('chart.enteredInError')}</span>}
      </span>
    );
  }
  return current.map((entry) => (
    <span key={entry.id} className="print-line">
      {textOf(entry, words)}
      {standing === 'amended' ? ` (${words.sentence('chart.printedAmended')})` : null}
      {standing === 'contested' ? ` (${words.sentence('trend.contested')})` : null}
      {isByHand(entry) ? ` (${words.sentence('people.byHand')})` : null}
      {placeOf(entry, words) === placeBefore ? null : (
        <span className="print-place">{placeOf(entry, words)}</span>
      )}
      {besideOf(entry, words) === '' ? null : <span className="print-place">{besideOf(entry, words)}</span>}
    </span>
  ));
}

type ElseProps = Pick<RoundProps, 'round' | 'signs' | 'agents' | 'due'>;

/** What the round comes to, what was to be acted on, and everything that has no column of its own. */
function PrintedElse({ round, signs, agents, due }: ElseProps) {
  const { words, clock } = useApp();
  const rulesOf = useRulesOf();
  const signing = signingOf(round) ?? round.signed?.original;
  const values = round.isInError ? [] : resultsStanding(round, rulesOf);
  const open = round.isInError ? [] : openIn(round, rulesOf);
  const others = round.values.filter(({ original }) => {
    const given = contentOfEntry(original);
    return given !== null && !signs.some((sign) => sign === signOfCharted(given));
  });
  const lines: ReactNode[] = [
    ...open.map((one) => <strong key={one.condition}>{openText(one, words)}</strong>),
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
    ...(values.length > 1 ? [<span key="disputed">{words.sentence('chart.disputed')}</span>] : []),
    ...[...printedResults(round, rulesOf, words), ...printedNotes(round, rulesOf, words)].map((text) => (
      <span key={text}>{text}</span>
    )),
    ...others.map((one) => <PrintedOther key={one.original.id} value={one} isInError={round.isInError} />),
    ...(signing?.kind === 'round'
      ? signing.content.signs.flatMap((one) =>
          'notDone' in one
            ? [
                <span key={one.sign}>
                  {words.sentence('chart.notDone', {
                    sign: signText(one.sign, words),
                    reason: notDoneText(one.notDone, words),
                  })}
                </span>,
              ]
            : [],
        )
      : []),
    ...(signing?.kind === 'round' && signing.content.note !== null
      ? [<span key="note">{signing.content.note}</span>]
      : []),
    ...round.countersigned.map((entry) => (
      <span key={entry.id}>
        {words.sentence(entry.content.agrees ? 'chart.countersigned' : 'chart.notAgreed')}{' '}
        {whoText(entry, agents, words)}
      </span>
    )),
  ];
  return lines.map((line, at) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: the lines of a printed cell never move
    <span key={at} className="print-line">
      {line}
    </span>
  ));
}

function PrintedOther({ value, isInError }: ValueProps) {
  const { words } = useApp();
  const given = contentOfEntry(value.original);
  if (given === null) return null;
  return (
    <span className="print-other">
      {signText(signOfCharted(given), words)}: <PrintedValue value={value} isInError={isInError} />
    </span>
  );
}

/** The values of a sign in a round, as it was first signed; what was broken off has no number and no line. */
function valuesOf(values: readonly AmendedEntry[], sign: RoundSign): readonly AmendedEntry[] {
  return values.filter(({ original }) => {
    const given = contentOfEntry(original);
    return given !== null && !isVoidCharted(given) && signOfCharted(given) === sign;
  });
}

/** Where a pressure was taken; null for any other value. */
function placeOf(entry: StoredEntry | undefined, words: Words): string | null {
  return entry?.kind === 'run' ? placeText(entry.content.evidence.place, words) : null;
}

/** That a pressure was read off a display, how long somebody had stood or lain at it, and how they felt; else empty. */
function besideOf(entry: StoredEntry, words: Words): string {
  if (entry.kind !== 'run') return '';
  const { run, circumstances } = entry.content.evidence;
  const method = run.method === 'device' ? [words.title('method', run.method)] : [];
  return [...method, ...postureTexts(circumstances, words)].join(' · ');
}

function textOf(entry: StoredEntry, words: Words): string {
  const given = contentOfEntry(entry);
  return given === null ? '' : chartedText(given, words);
}

function isByHand({ content }: StoredEntry): boolean {
  return 'override' in content && content.override !== null;
}
