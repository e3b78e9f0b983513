import type { ChanceOver, ChancePrior } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { type ChanceDrawn, chanceFigure } from '../figure/chanceFigure.js';
import type { DataTable } from '../figure/figure.js';
import { pressureText } from '../figure/times.js';
import type { Block, FigureAt } from './reportPage.js';

/** Chances of where the usual pressure lies and what they rest on; shown after the category. */
export type PageChances = {
  readonly drawn: readonly ChanceDrawn[];
  readonly rows: readonly ChanceOver[];
  readonly assumptions: readonly string[];
};

/** The chances as a table and as curves; nothing where none is given. */
export function chanceBlocks(chances: PageChances | null, words: Words): Block[] {
  if (chances === null) return [];
  const figures = chances.drawn.map(
    (one): FigureAt =>
      (how) =>
        chanceFigure(one, words, { id: `chance-${one.component}`, ...how }),
  );
  return [
    ...(chances.rows.length === 0
      ? []
      : [{ kind: 'tables' as const, tables: [chanceTable(chances.rows, words)] }]),
    ...(figures.length === 0 ? [] : [{ kind: 'figures' as const, figures }]),
  ];
}

/** The chances and what they rest on as tables, where the sheet has no room for more. */
export function chanceLists(chances: PageChances | null, words: Words): DataTable[] {
  if (chances === null || chances.rows.length === 0) return [];
  return [
    chanceTable(chances.rows, words),
    {
      caption: words.sentence('away.assumptions'),
      columns: [''],
      rows: chances.assumptions.map((one) => [one]),
    },
  ];
}

const PRIORS: readonly ChancePrior[] = ['flat', 'age-sex', 'office'];

/** A row for each threshold: from the readings alone, and with what is known of an age and sex where that was asked. */
function chanceTable(rows: readonly ChanceOver[], words: Words): DataTable {
  const say = words.sentence;
  const priors = PRIORS.filter((prior) => rows.some((one) => one.prior === prior));
  const names = {
    flat: say('series.flatPrior'),
    'age-sex': say('series.agePrior'),
    office: say('series.officePrior'),
  };
  const keyOf = ({ threshold }: ChanceOver) => pressureText(threshold.systolic, threshold.diastolic, words);
  const measures = ['systolic', 'diastolic'] as const;
  return {
    caption: say('report.chanceTable'),
    columns: [
      say('report.atOrAbove'),
      ...priors.flatMap((prior) =>
        measures.map((measure) =>
          say('report.chanceColumn', { component: say(`report.${measure}`), from: names[prior] }),
        ),
      ),
    ],
    rows: [...new Set(rows.map(keyOf))].map((key) => [
      key,
      ...priors.flatMap((prior) => {
        const found = rows.find((one) => keyOf(one) === key && one.prior === prior);
        return measures.map((measure) => say('report.chanceShort', { chance: found?.[measure] ?? null }));
      }),
    ]),
  };
}
