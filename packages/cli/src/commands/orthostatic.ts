import {
  type Fall,
  parseStandingTest,
  SCORE_FIGURES,
  SCORE_RULE,
  type StandingResult,
  type StandingTest,
  standingResult,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { command, type Item, NO_OPERANDS } from '../command.js';
import { columns } from '../output/columns.js';
import { computedBy } from '../output/computedBy.js';
import { STANDING_OPTIONS, typedTest } from './standingOptions.js';

/** `evenfall orthostatic`: whether the pressure fell from lying or sitting to standing. */
export const orthostatic = command<StandingTest>({
  name: 'orthostatic',
  summary: 'commands.orthostatic',
  options: STANDING_OPTIONS,
  operands: NO_OPERANDS,
  list: fromItems,

  parse(given) {
    const typed = typedTest(given);
    return typed.ok ? parseStandingTest(typed.value) : typed;
  },

  async run(test, { words, version }) {
    const result = standingResult(test);
    const json = {
      ...result,
      flags: result.flags.map(words.flagged),
      why: result.why.map(words.flagged),
      from: test.from,
      supineHypertension: test.supineHypertension,
      sinusRhythm: test.sinusRhythm,
      pacemaker: test.pacemaker,
      rateSlowingDrug: test.rateSlowingDrug,
      computedBy: computedBy(version, SCORE_RULE, null),
    };
    return { kind: 'one', json, lines: linesOf(test, result, words) };
  },
});

/** The two ways to begin, in the order of bedside handbook 3.14. */
function fromItems(words: Words): Item[] {
  const limits = { lying: SCORE_FIGURES.standingSystolicFall, sitting: SCORE_FIGURES.sittingSystolicFall };
  return (['lying', 'sitting'] as const).map((id) => ({
    id,
    title: words.title('standingFrom', id),
    source: limits[id].source,
    status: limits[id].sure,
    typed: `--${id} 148/84x68 --standing1 120/76x74 --standing3 112/70x76`,
  }));
}

function linesOf(test: StandingTest, result: StandingResult, words: Words): string[] {
  const note = words.sentence('commandLine.note');
  const named = result.missing.map((what) => words.title('scorePart', what));
  return columns([
    [words.sentence('score.fell'), `${words.title('standingFrom', test.from)}: ${wholeOf(result, words)}`],
    ...result.falls.map((fall) => [
      words.sentence('score.atMinutes', { minutes: fall.minutes }),
      changesOf(fall, words),
    ]),
    ...ratioRows(result, words),
    ...(named.length === 0 ? [] : [[words.sentence('score.missing'), words.say.allOf(named)]]),
    ...result.flags.map((flag) => [note, words.detail(flag)]),
    ...result.why.map((flag) => ['', words.detail(flag)]),
  ]);
}

function wholeOf({ positive, delayed }: StandingResult, words: Words): string {
  if (positive === true) return words.sentence('score.fellWithin');
  if (delayed === true) return words.sentence('score.fellLater');
  return words.sentence(positive === false ? 'score.fellNot' : 'score.fellUnknown');
}

function changesOf({ systolicFall, diastolicFall, pulseRise }: Fall, words: Words): string {
  return [
    ...(systolicFall === null ? [] : [words.sentence('score.systolicFell', { mmHg: systolicFall })]),
    ...(diastolicFall === null ? [] : [words.sentence('score.diastolicFell', { mmHg: diastolicFall })]),
    ...(pulseRise === null ? [] : [words.sentence('score.pulseRose', { perMinute: pulseRise })]),
  ].join(', ');
}

function ratioRows({ heartRateRatio: ratio }: StandingResult, words: Words): string[][] {
  if (ratio === null) return [];
  const limit = SCORE_FIGURES.heartRateRatio.value;
  return [[words.sentence('score.ratio'), words.sentence('score.ratioOf', { ratio, limit })]];
}
