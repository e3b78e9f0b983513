import {
  assumptionsOf,
  type Component,
  type Parsed,
  type Refusal,
  refusal,
  SEXES,
  USUAL_RULE,
  type UsualKnown,
  type UsualResult,
  usualOf,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { command, NO_OPERANDS } from '../command.js';
import type { Given, Option } from '../options/option.js';
import { columns } from '../output/columns.js';
import { computedBy } from '../output/computedBy.js';
import { meanOf, type TypedMean } from './series/typedMean.js';
import { type OfficeTaken, officeOf, officeTyped } from './series/typedOffice.js';
import { wholeFrom } from './series/typedSeries.js';

const OPTIONS: readonly Option[] = [
  { name: 'age', kind: 'value', means: 'options.age', hint: 'YEARS' },
  { name: 'sex', kind: 'value', means: 'options.priorSex', choices: SEXES },
  { name: 'office', kind: 'value', means: 'options.usualOffice', hint: 'S/DxN|DATE=S/D,...' },
  { name: 'home', kind: 'value', means: 'options.usualHome', hint: 'S/DxN' },
  { name: 'days', kind: 'value', means: 'options.usualDays', hint: 'DAYS' },
  { name: 'ambulatory', kind: 'value', means: 'options.usualAmbulatory', hint: 'S/D' },
  { name: 'threshold', kind: 'value', means: 'options.threshold', hint: 'S/D', required: true },
];

type Asked = {
  readonly known: UsualKnown;
  readonly threshold: Pick<TypedMean, 'systolic' | 'diastolic'>;
  readonly typed: {
    readonly office: OfficeTaken | null;
    readonly home: TypedMean | null;
    readonly days: number | null;
  };
};

/** The model of chances is of adults. Source: out-of-office handbook 17.3, 20. */
const ADULT = { minimum: 18, maximum: 130 };
const MOST_DAYS = 10_000;

/** `evenfall usual`: where the usual pressure lies, from means that were typed. */
export const usual = command<Asked>({
  name: 'usual',
  summary: 'commands.usual',
  options: OPTIONS,
  operands: NO_OPERANDS,
  parse: typedUsual,

  async run({ known, threshold, typed }, { words, version }) {
    const systolic = usualOf('systolic', known, threshold.systolic);
    const diastolic = usualOf('diastolic', known, threshold.diastolic);
    const json = {
      systolic: systolic === null ? null : usualJson(systolic),
      diastolic: diastolic === null ? null : usualJson(diastolic),
      assumptions: assumptionsOf(known, systolic).map(words.flagged),
      threshold,
      ageYears: known.ageYears,
      sex: known.sex,
      office: typed.office,
      home: typed.home,
      days: typed.days,
      ambulatory: known.ambulatory.systolic === null ? null : means(known),
      computedBy: computedBy(version, USUAL_RULE, null),
    };
    return { kind: 'one', json, lines: linesOf(known, { systolic, diastolic }, threshold, words) };
  },
});

function means({ ambulatory }: UsualKnown) {
  return { systolic: ambulatory.systolic?.mean ?? null, diastolic: ambulatory.diastolic?.mean ?? null };
}

function typedUsual(given: Given): Parsed<Asked> {
  const refusals: Refusal[] = [];
  const ageYears = wholeFrom(given, 'age', ADULT.minimum, ADULT.maximum, refusals);
  const sex = SEXES.find((one) => one === given.text('sex')) ?? null;
  if ((given.text('age') === null) !== (given.text('sex') === null)) {
    const name = given.text('age') === null ? 'age' : 'sex';
    refusals.push(refusal(`/${name}`, 'missing', 'age-and-sex', null));
  }
  const office = officeTyped(officeOf(given, refusals));
  const home = meanOf(given, 'home', refusals);
  const ambulatory = meanOf(given, 'ambulatory', refusals);
  const threshold = meanOf(given, 'threshold', refusals);
  const days = wholeFrom(given, 'days', 1, MOST_DAYS, refusals);
  if (home !== null && given.text('days') === null) {
    refusals.push(refusal('/days', 'missing', 'days-of-home', null));
  }
  if (home !== null && days !== null && days > home.count) {
    refusals.push(refusal('/days', 'contradicts', 'readings-on-days', days));
  }
  if (home === null && given.text('home') === null && days !== null) {
    refusals.push(refusal('/home', 'missing', 'mean-and-count', null));
  }
  if (['office', 'home', 'ambulatory'].every((name) => given.text(name) === null)) {
    refusals.push(refusal('/office', 'missing', 'some-pressure', null));
  }
  if (given.text('threshold') === null)
    refusals.push(refusal('/threshold', 'missing', 'both-pressures', null));
  if (refusals.length > 0 || threshold === null) return { ok: false, refusals };
  const pair = <T>(of: (component: Component) => T) => ({
    systolic: of('systolic'),
    diastolic: of('diastolic'),
  });
  const known: UsualKnown = {
    ageYears,
    sex,
    office: pair((part) => (office === null ? null : { mean: office[part], visits: office.count })),
    home: pair((part) =>
      home === null || days === null ? null : { mean: home[part], readings: home.count, days, own: null },
    ),
    ambulatory: pair((part) => (ambulatory === null ? null : { mean: ambulatory[part] })),
  };
  const { systolic, diastolic } = threshold;
  return { ok: true, value: { known, threshold: { systolic, diastolic }, typed: { office, home, days } } };
}

function usualJson(found: UsualResult) {
  return {
    mean: found.mean,
    sd: found.sd,
    interval: found.interval,
    probability: found.probability,
    probabilityFlatPrior: found.probabilityFlatPrior,
    oneMoreDay: found.oneMoreDay,
    scale: found.scale,
    prior: found.prior,
    components: found.components,
    isSettled: found.isSettled,
    settledAfterDays: found.settledAfterDays,
  };
}

function linesOf(
  known: UsualKnown,
  results: Readonly<Record<Component, UsualResult | null>>,
  threshold: Readonly<Record<Component, number>>,
  words: Words,
): string[] {
  const rows = (['systolic', 'diastolic'] as const).flatMap((component) => {
    const found = results[component];
    return found === null ? [] : usualRows(component, found, threshold[component], words);
  });
  const assumptions = assumptionsOf(known, results.systolic).map((one) => [
    words.sentence('series.assuming'),
    words.detail(one),
  ]);
  return columns([...rows, ...assumptions]);
}

function usualRows(component: Component, found: UsualResult, threshold: number, words: Words): string[][] {
  const [low, high] = found.interval;
  const next =
    found.oneMoreDay === null
      ? []
      : [['', words.sentence('series.oneMoreDay', { mmHg: found.oneMoreDay.narrowerMmHg })]];
  return [
    [
      words.sentence(`series.${component}`),
      words.sentence('series.usualOf', { mean: found.mean, low, high }),
    ],
    ['', words.sentence('series.usualChance', { threshold, chance: found.probability })],
    ...(found.probabilityFlatPrior === null || found.prior === null
      ? []
      : [['', words.sentence('series.usualFlat', { chance: found.probabilityFlatPrior })]]),
    ...next,
    ...(found.oneMoreDay === null && !found.isSettled ? [] : [['', settledText(found, words)]]),
  ];
}

function settledText({ isSettled, settledAfterDays }: UsualResult, words: Words): string {
  if (isSettled) return words.sentence('series.settled');
  if (settledAfterDays === null) return words.sentence('series.notSettled');
  return words.sentence('series.settledAfter', { days: settledAfterDays });
}
