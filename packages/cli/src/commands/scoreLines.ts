import type { DerivedValue, ScoreId } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { columns } from '../output/columns.js';
import type { Scored } from './scoreAnswer.js';

/** Decimals of a derived value: pressures whole, indices two, those in years or kg one. */
const DECIMALS: Readonly<Partial<Record<ScoreId, number>>> = {
  'shock-index': 2,
  'modified-shock-index': 2,
  'paediatric-shock-index': 2,
  'age-shock-index': 1,
  'body-mass-index': 1,
};

/** A score for people: its number and word, then its parts, what alarms, what to do and what is missing. */
export function scoreLines(id: ScoreId, scored: Scored, words: Words): string[] {
  const { missing, flags, why } = scored;
  const alerts = 'alerts' in scored ? scored.alerts : [];
  const note = words.sentence('commandLine.note');
  const named = missing.map((input) => words.title('scorePart', input));
  return columns([
    [headline(id, scored, words), words.title('score', id)],
    ...partRows(scored, words),
    ...(named.length === 0 ? [] : [[words.sentence('score.missing'), words.say.allOf(named)]]),
    ...alerts.map((flag) => [words.sentence('score.alert'), words.detail(flag)]),
    ...nextRows(scored, words),
    ...flags.map((flag) => [note, words.detail(flag)]),
    ...why.map((flag) => ['', words.detail(flag)]),
  ]);
}

function headline(id: ScoreId, scored: Scored, words: Words): string {
  if ('value' in scored) return valueText(scored, DECIMALS[id] ?? 0, words);
  const { total, band } = scored;
  if (total !== null && band !== null) {
    return words.sentence('score.total', { total, band: words.title('scoreBand', band) });
  }
  if ('atLeast' in scored) return words.sentence('score.atLeast', { atLeast: scored.atLeast });
  return words.sentence('score.noTotal');
}

function valueText({ value, unit, band }: DerivedValue<string>, decimals: number, words: Words): string {
  if (value === null) return words.sentence('score.noValue');
  const number = `${words.say.number(value, decimals)} ${unit}`;
  return band === null ? number : `${number}, ${words.title('scoreBand', band)}`;
}

/** The points of each known part, the trade's text of a Glasgow total, or a mean by other rules. */
function partRows(scored: Scored, words: Words): string[][] {
  if ('text' in scored) return [['', scored.text]];
  if ('parts' in scored) {
    const known = Object.entries(scored.parts).flatMap(([part, points]) =>
      points === null ? [] : [words.sentence('score.part', { part: words.title('scorePart', part), points })],
    );
    return known.length === 0 ? [] : [[words.sentence('score.parts'), words.say.allOf(known)]];
  }
  if (!('formFactorMmHg' in scored)) return [];
  const { formFactorMmHg, rateCorrectedMmHg } = scored;
  return [
    ...(formFactorMmHg === null ? [] : [['', words.sentence('score.formFactor', { mmHg: formFactorMmHg })]]),
    ...(rateCorrectedMmHg === null
      ? []
      : [['', words.sentence('score.rateCorrected', { mmHg: rateCorrectedMmHg })]]),
  ];
}

function nextRows(scored: Scored, words: Words): string[][] {
  if (!('response' in scored) || scored.response === null || scored.checks === null) return [];
  return [
    [words.sentence('commandLine.next'), words.detail(scored.response)],
    [words.sentence('score.checks'), words.detail(scored.checks)],
  ];
}
