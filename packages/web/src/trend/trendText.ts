import { inUnit } from '@evenfall/clinical';
import type { TrendElsewhere, TrendPoint, TrendRound, TrendValue } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { stampText } from '../app/times.js';
import { type BandId, drawnAverage, isUpOrLying } from './bands.js';

/** A value as the trade writes it, without its unit. */
export function trendText(value: TrendValue, words: Words): string {
  const { say } = words;
  switch (value.of) {
    case 'pressure':
      return value.written;
    case 'pulse':
    case 'breaths':
      return say.rate(value.perMinute);
    case 'temperature':
      return say.number(inUnit(value.celsius, say.manner.temperature), 1);
    case 'oxygen-saturation':
      return say.number(value.percent);
    case 'pain':
      return say.short(value.score, 1);
    case 'consciousness':
      return words.title('consciousness', value.level);
  }
}

/** What a round comes to where it is the mean of several readings, and in what posture where not sitting; null where it is none. */
export function averageText({ average }: TrendRound, words: Words): string | null {
  if (average === null) return null;
  const { say } = words;
  const { systolic, diastolic, shown } = average;
  const text = `${shown.systolic ?? say.number(systolic)}/${shown.diastolic ?? say.number(diastolic)}`;
  const drawn = drawnAverage(average);
  const posture = isUpOrLying(drawn) ? words.sentence(`pressure.${drawn.posture}Posture`) : null;
  return words.sentence('trend.average', { readings: average.readings, posture, text });
}

/** What must be known of a value beside its number, in a word each: in what posture where not sitting, how it stands, and that its gauge failed. */
export function marksOf(
  { value, isByHand, isAmended, isContested, failedGauge, unclear = null }: TrendPoint,
  words: Words,
): readonly string[] {
  return [
    ...(isUpOrLying(value) ? [words.sentence(`pressure.${value.posture}Posture`)] : []),
    ...(isAmended ? [words.sentence('chart.printedAmended')] : []),
    ...(isByHand ? [words.sentence('people.byHand')] : []),
    ...(isContested ? [words.sentence('trend.contested')] : []),
    ...(value.of === 'pressure' && !value.isAveraged ? [words.sentence('trend.elsewhere')] : []),
    ...(failedGauge === null ? [] : [words.sentence('trend.gaugeFailed', { name: failedGauge })]),
    ...(unclear === null ? [] : [words.sentence(`trend.${unclear}`)]),
  ];
}

/** Every value of a sign in a round in one line: what it comes to first, where that is a mean. */
export function readText(round: TrendRound, sign: TrendValue['of'], words: Words): string {
  const held = round.points.filter(({ value }) => value.of === sign);
  const each = held
    .map((point) => {
      const marks = marksOf(point, words);
      const text = trendText(point.value, words);
      return marks.length === 0 ? text : `${text} (${marks.join(', ')})`;
    })
    .join(', ');
  const average = sign === 'pressure' ? averageText(round, words) : null;
  return average === null ? each : `${average} (${each})`;
}

/** Where values come from that nobody here took: who said them, and how they say they were taken. */
export function elsewhereText({ by, how, until }: TrendElsewhere, words: Words): string {
  const said =
    by === null ? words.sentence('handover.saidByNobody') : words.sentence('handover.saidBy', { text: by });
  const mean =
    until === null ? [] : [words.sentence('handover.meanUntil', { text: stampText({ at: until }, words) })];
  return `${words.sentence('handover.elsewhere')}: ${[said, ...how, ...mean].join(', ')}`;
}

/** Where a round stands in the chart; what is from elsewhere stands apart there. */
export function inChart(person: string, { round, elsewhere }: TrendRound): string {
  return `/people/${person}#${elsewhere === null ? `round-${round}` : 'elsewhere'}`;
}

/** What a scale or a column is called, with its unit. */
export function titleText(of: BandId | TrendValue['of'], words: Words): string {
  return of === 'temperature'
    ? words.sentence('trend.temperature', {
        unit: words.sentence(`settings.${words.say.manner.temperature}`),
      })
    : words.sentence(`trend.${of}`);
}
