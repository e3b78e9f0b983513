import {
  type ActFirstGroup,
  assumptionsOf,
  type ChanceOver,
  chancesOver,
  chancesWithVisits,
  type Flag,
  type OfficeBeside,
  type SeriesReading,
  type TargetBeside,
  type UsualKnown,
  usualOf,
  type VisitsMean,
  withOfficeVisits,
} from '@evenfall/clinical';
import { publishedSource, type Words } from '@evenfall/words';
import { pressureText, type TimesSaid, timeOfReading } from '../figure/times.js';
import type { RefusedRow, ReportHeader, RuleSet } from './reportPage.js';
import type { SeriesPageInput } from './seriesPage.js';
import { targetText } from './targetText.js';

/** A reading to act on whatever the mean: one of the series, or a row that could not be read. */
export type FirstRow = {
  readonly systolic: number | null;
  readonly diastolic: number | null;
  readonly pulse: number | null;
  readonly reading: SeriesReading | null;
  readonly line: number | null;
};

/** What the protocol asks to be done at once, with where its limit comes from. */
export type AlertSaid = Flag & { readonly source: string; readonly confirmLocally: boolean };

/** What a page says of a series besides its numbers, from a file or from the record. */
export type SeriesSaid = {
  readonly header: ReportHeader;
  readonly ruleSet: RuleSet | null;
  /** What is said of all of it before anything else, in sentences. */
  readonly before: readonly string[];
  /** What is to be acted on, each reading once with all that is said of it; then the answer about danger signs, where one was given. */
  readonly first: readonly ActFirstGroup<FirstRow, AlertSaid>[];
  readonly asked: string | null;
  /** Whom somebody told of it; absent where nobody told anybody. */
  readonly closed?: SeriesPageInput['closed'];
  /** Who brought it in and who signed for it; absent for a file. */
  readonly signed?: readonly string[];
  readonly refused: readonly RefusedRow[];
  /** What stands beside a reading, by its `index`. */
  readonly beside: ReadonlyMap<number, readonly string[]>;
  /** What was said of times, by the `index` of a reading; absent where every time was read. */
  readonly about?: TimesSaid;
  readonly settled: readonly string[];
  /** What the guideline of the rule set aims at under treatment; null where it names nothing. */
  readonly target: TargetBeside | null;
  readonly office: {
    /** What the office pressure was, when, and which rounds are taken, or why none is; nothing where that stands nowhere. */
    readonly was: readonly string[];
    /** Null where there is no office pressure. */
    readonly beside: OfficeBeside | null;
  } | null;
  /** What is asked of the usual pressure; `office` is a mean of the office that is taken with it in a column of its own. */
  readonly usual: {
    readonly known: UsualKnown;
    readonly thresholds: readonly ChanceOver['threshold'][];
    readonly office: VisitsMean | null;
  } | null;
};

/** The same as sentences and tables for the page of either kind. */
export function saidOnPage(said: SeriesSaid, words: Words): Omit<SeriesPageInput, 'readings'> {
  const { header, ruleSet, refused, beside, about, settled, office } = said;
  const target = targetText(said.target, words);
  const officeLines =
    office === null || office.beside === null
      ? []
      : officeRows(office.beside, words).map(([label = '', text = '']) =>
          words.sentence('report.line', { label, text }),
        );
  return {
    header,
    ruleSet,
    refused,
    beside,
    ...(about === undefined ? {} : { about }),
    settled,
    target:
      target === null
        ? []
        : [words.sentence('report.line', { label: words.sentence('series.target'), text: target })],
    before: said.before,
    ...(said.closed === undefined ? {} : { closed: said.closed }),
    signed: said.signed ?? [],
    actFirst: [
      ...said.first.map((group) => actFirstLine(group, about, words)),
      ...(said.asked === null ? [] : [said.asked]),
    ],
    office: [...(office?.was ?? []), ...officeLines],
    chances: chancesOn(said, words),
  };
}

/** What an office pressure beside a series says: a label and a sentence each. */
export function officeRows({ phenotype, whiteCoat }: OfficeBeside, words: Words): string[][] {
  const signed = (mmHg: number | null) =>
    mmHg === null ? '-' : `${mmHg > 0 ? '+' : ''}${words.say.number(mmHg, 1)}`;
  const names = phenotype?.names.map((name) => words.title('phenotype', name)) ?? [];
  const label = words.sentence('series.office');
  return [
    ...(names.length === 0
      ? []
      : [[label, words.sentence('series.consistentWith', { names: words.say.anyOf(names) })]]), // biome-ignore format: one thought
    [label, words.sentence('series.officeMinus', { systolic: signed(whiteCoat.systolic), diastolic: signed(whiteCoat.diastolic) })], // biome-ignore format: one thought
  ];
}

/** Both numbers about the limit of high, and every chance; null where none is given. */
function chancesOn({ usual }: SeriesSaid, words: Words): SeriesPageInput['chances'] {
  const [high] = usual?.thresholds ?? [];
  if (usual === null || high === undefined) return null;
  const { known, thresholds, office } = usual;
  const drawn = (['systolic', 'diastolic'] as const).flatMap((component) => {
    const threshold = high[component];
    const result = usualOf(component, known, threshold);
    return result === null ? [] : [{ component, result, threshold }];
  });
  const all = office === null ? known : withOfficeVisits(known, office);
  return {
    drawn,
    rows: [
      ...chancesOver(thresholds, known),
      ...(office === null ? [] : chancesWithVisits(thresholds, known, office)),
    ],
    assumptions: assumptionsOf(all, usualOf('systolic', known, 0)).map((one) => words.detail(one)),
  };
}

/** Readings to act on and when they were, a row that could not be read by its line, and all that is said of them. */
function actFirstLine(
  { rows, flags }: ActFirstGroup<FirstRow, AlertSaid>,
  about: TimesSaid | undefined,
  words: Words,
): string {
  const isOfPulse = flags.some(({ figures }) => figures.pulsePerMinute !== undefined);
  const named = rows.slice(0, MOST_NAMED).map(({ reading, line, systolic, diastolic, pulse }) => {
    const when =
      reading === null
        ? words.sentence('report.atLine', { line: line ?? 0 })
        : timeOfReading(reading, about, words, true);
    const beside = isOfPulse && pulse !== null ? `, ${words.sentence('away.pulseIs', { pulse })}` : '';
    return `${pressureText(systolic, diastolic, words)}${beside} (${when})`;
  });
  const more = rows.length - named.length;
  const pressures = [
    ...named,
    ...(more > 0 ? [words.sentence('report.andMore', { readings: more })] : []),
  ].join(', ');
  const detail = flags.map((flag) => saidWithSource(flag, words)).join(' ');
  return rows.length === 0 ? detail : words.sentence('report.actOn', { pressures, detail });
}

/** What is said of an alert, where its limit comes from and that a place may have another, as the screen says it. */
function saidWithSource(flag: AlertSaid | Flag, words: Words): string {
  if (!('source' in flag)) return words.detail(flag);
  const parts = [
    publishedSource(flag.source),
    flag.confirmLocally ? words.sentence('cautions.confirmLocally') : null,
  ];
  return [
    words.detail(flag),
    ...parts.flatMap((one) => (one === null ? [] : [one.replace(/\.?$/, '.')])),
  ].join(' ');
}

/** How many readings of one danger a page names; the list has them all. */
const MOST_NAMED = 5;
