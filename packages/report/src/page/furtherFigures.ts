import {
  type AmbulatoryResult,
  type ByMeasure,
  OUT_OF_OFFICE_FIGURES as F,
  MEASURES,
  SURGE_CAUTION,
  SURGES,
  type Surge,
  type SurgeDefinition,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import type { DataTable } from '../figure/figure.js';

/** A morning rise as it is said; `amount` is null where its readings are not there. */
export type RiseSaid = {
  readonly id: SurgeDefinition;
  readonly name: string;
  readonly amount: string | null;
  readonly definition: string;
};

/** Every rise about waking by its definition, and what is to be known of them. */
export function risesSaid(surge: Surge, words: Words): { rises: RiseSaid[]; notes: string[] } {
  const rises = SURGES.map((id) => {
    const mmHg = surge[id];
    const key = id === 'ratePerHour' ? 'series.riseRate' : 'series.riseAmount';
    return {
      id,
      name: words.title('surgeName', id),
      amount: mmHg === null ? null : words.sentence(key, { mmHg }),
      definition: words.title('surgeDefinition', id),
    };
  });
  return {
    rises,
    notes: [
      ...(surge.troughAtEdge ? [words.sentence('series.riseAtEdge')] : []),
      words.sentence('series.riseCaution', SURGE_CAUTION),
    ],
  };
}

/** One rise in a sentence; that there are not enough readings for it where there are not. */
export function riseText({ name, amount, definition }: RiseSaid, words: Words): string {
  return words.sentence('series.riseOf', {
    name,
    amount: amount ?? words.sentence('series.riseNotKnown'),
    definition,
  });
}

/** How far the readings of a recording lie apart, in every way that is worked out; pressures in mmHg, pulse per minute. */
export function variationRows(result: AmbulatoryResult, words: Words): { name: string; of: ByMeasure }[] {
  const { spread } = result;
  const row = (key: 'weightedSd' | 'cvPercent' | 'arv' | 'arvTimeWeighted' | 'arvDay' | 'arvNight') => ({
    name: words.sentence(`away.${key}`),
    of: result[key],
  });
  const further = (key: 'rmssd' | 'sdAboutTrend' | 'populationSd') => ({
    name: words.sentence(`away.${key}`),
    of: spread[key],
  });
  return [
    row('weightedSd'),
    row('cvPercent'),
    row('arv'),
    row('arvTimeWeighted'),
    {
      name: words.sentence('away.arvWithoutGaps', { hours: F.longestStepHours.value }),
      of: result.arvWithoutGaps,
    },
    row('arvDay'),
    row('arvNight'),
    further('rmssd'),
    further('sdAboutTrend'),
    further('populationSd'),
    { name: words.sentence('away.range'), of: spread.mostMinusLeast },
    { name: words.sentence('away.overMean'), of: spread.mostMinusMean },
    { name: words.sentence('away.underMean'), of: spread.meanMinusLeast },
  ];
}

/** The same as lists behind the sheet, where they have room. */
export function furtherLists(result: AmbulatoryResult, words: Words): DataTable[] {
  const say = words.sentence;
  const number = (value: number | null) => (value === null ? '-' : words.say.number(value, 2));
  const variation: DataTable = {
    caption: say('away.variation'),
    columns: ['', ...MEASURES.map((measure) => say(`report.${measure}`))],
    rows: variationRows(result, words).map(({ name, of }) => [name, ...MEASURES.map((m) => number(of[m]))]),
  };
  if (result.surge === null) return [variation];
  const { rises, notes } = risesSaid(result.surge, words);
  return [
    {
      caption: say('away.rises'),
      columns: [say('away.riseColumn'), '', ''],
      rows: [
        ...rises.map(({ name, amount, definition }) => [
          name,
          amount ?? say('series.riseNotKnown'),
          definition,
        ]),
        ...notes.map((note) => ['', '', note]),
      ],
    },
    variation,
  ];
}
