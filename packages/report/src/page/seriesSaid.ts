import {
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
import type { Words } from '@evenfall/words';
import { timeOfReading } from '../figure/times.js';
import type { RefusedRow, ReportHeader, RuleSet } from './reportPage.js';
import type { SeriesPageInput } from './seriesPage.js';
import { targetText } from './targetText.js';

/** A reading to act on whatever the mean: one of the series, or a row that could not be read. */
export type FirstRow = {
  readonly flag: Flag;
  readonly systolic: number | null;
  readonly diastolic: number | null;
  readonly reading: SeriesReading | null;
  readonly line: number | null;
};

/** What a page says of a series besides its numbers, from a file or from the record. */
export type SeriesSaid = {
  readonly header: ReportHeader;
  readonly ruleSet: RuleSet | null;
  /** What the protocol asks to be done at once, in sentences. */
  readonly alerts: readonly string[];
  readonly first: readonly FirstRow[];
  readonly refused: readonly RefusedRow[];
  /** What stands beside a reading, by its `index`. */
  readonly beside: ReadonlyMap<number, readonly string[]>;
  /** Readings whose time is only about right, by their `index`; absent where every time was said. */
  readonly about?: ReadonlySet<number>;
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
    actFirst: [...said.alerts, ...actFirstLines(said.first, about, words)],
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

/** Each kind of danger once, with its readings and when they were; a row that could not be read by its line. */
function actFirstLines(
  first: readonly FirstRow[],
  about: ReadonlySet<number> | undefined,
  words: Words,
): string[] {
  const codes = [...new Set(first.map(({ flag }) => flag.code))];
  return codes.map((code) => {
    const ofCode = first.filter(({ flag }) => flag.code === code) as [FirstRow];
    const pressures = ofCode.slice(0, MOST_NAMED).map(({ reading, line, systolic, diastolic }) => {
      const when =
        reading === null
          ? words.sentence('report.atLine', { line: line ?? 0 })
          : timeOfReading(reading, about, words, true);
      return `${systolic ?? '-'}/${diastolic ?? '-'} (${when})`;
    });
    const more = ofCode.length - pressures.length;
    const said = [
      ...pressures,
      ...(more > 0 ? [words.sentence('report.andMore', { readings: more })] : []),
    ].join(', ');
    return words.sentence('report.actOn', { pressures: said, detail: words.detail(ofCode[0].flag) });
  });
}

/** How many readings of one danger a page names; the list has them all. */
const MOST_NAMED = 5;
