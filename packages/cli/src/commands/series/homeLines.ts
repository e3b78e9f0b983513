import {
  type ChanceOver,
  type Flag,
  OUT_OF_OFFICE_FIGURES,
  protocolVersion,
  type SidedLimit,
  type TargetBeside,
} from '@evenfall/clinical';
import {
  decimalsOf,
  homeGapsText,
  meansText,
  officeRows,
  officeText,
  targetText,
  VERSION_SHOWN,
} from '@evenfall/report';
import type { Words } from '@evenfall/words';
import { columns } from '../../output/columns.js';
import { askedOf, assumptionsIn, type HomeAnswered, notUsedOf } from './homeAnswer.js';
import { actFirstRows, leftOutRows, readFlags } from './seriesOfText.js';

export function ruleRow(
  section: 'home' | 'ambulatory',
  id: string,
  protocol: Parameters<typeof protocolVersion>[0],
  words: Words,
): string[] {
  const version = protocolVersion(protocol).slice(0, VERSION_SHOWN);
  return [words.sentence('series.by'), words.sentence('series.ruleSet', { title: words.title(section, id), id, version })]; // biome-ignore format: one thought
}

/** The answer for people, what is dangerous first and the category before any chance. */
export function homeLines(answered: HomeAnswered, words: Words): string[] {
  const { result, read, rules, protocol } = answered;
  const say = (key: 'mean' | 'morning' | 'evening' | 'category') => words.sentence(`series.${key}`);
  const note = words.sentence('commandLine.note');
  const { morningMinusEvening: difference } = result;
  const gaps = homeGapsText(askedOf(answered), words);
  const limits = { systolic: answered.homeRules.highSystolic, diastolic: answered.homeRules.highDiastolic };
  return columns([
    ...actFirstRows(answered.first, words),
    ruleRow('home', rules, protocol, words),
    [
      words.sentence('series.readings'),
      words.sentence('series.used', { used: result.used, rows: read.lines.length, days: result.days }),
    ],
    ...(gaps === null ? [] : [[words.sentence('series.readings'), gaps]]),
    ...leftOutRows(notUsedOf(answered, words), words),
    ...result.why.map((flag) => [note, words.detail(flag)]),
    [say('mean'), meanText(result.shown, result.mean.pulse, words)],
    [say('morning'), meanOfPart(result.morning, limits, words)],
    [
      say('evening'),
      [
        meanOfPart(result.evening, limits, words),
        ...(difference.systolic === null || difference.diastolic === null
          ? []
          : [words.sentence('series.minusEvening', { systolic: difference.systolic, diastolic: difference.diastolic })]), // biome-ignore format: one thought
      ].join('; '),
    ],
    ...dayRows(answered, limits, words),
    ...partRows(answered, words),
    [
      say('category'),
      result.category === null
        ? words.sentence('series.noCategory')
        : words.sentence('series.categoryOf', { category: words.title('homeCategory', result.category) }),
    ],
    ...targetRows(answered.target, words),
    ...chanceRows(answered.probability, assumptionsIn(answered), words),
    ...officeLines(answered, words),
    ...[...result.flags, ...answered.parts.flags].map((flag) => [note, words.detail(flag)]),
    ...readFlags(read, words).map(({ detail }) => [note, detail]),
  ]);
}

/** The visits to the office with their days, what they and the readings say together, and how many are too far. */
export function officeLines(
  { office, visited, tooFar }: Pick<HomeAnswered, 'office' | 'visited' | 'tooFar'>,
  words: Words,
): string[][] {
  const label = words.sentence('series.office');
  const far = officeFar(tooFar, words);
  return [
    ...officeWas({ office, visited }, words).map((text) => [label, text]),
    ...(office === null ? [] : officeRows(office, words)),
    ...(far === null ? [] : [[label, far]]),
  ];
}

/** How many office pressures are too far from the readings to stand beside them; null for none. */
export function officeFar(tooFar: number, words: Words): string | null {
  const days = OUT_OF_OFFICE_FIGURES.officeWithinDays.value;
  return tooFar === 0 ? null : words.sentence('series.officeTooFar', { pressures: tooFar, days });
}

/** Each visit with its day, where days were typed. */
export function officeWas(
  { office, visited }: Pick<HomeAnswered, 'office' | 'visited'>,
  words: Words,
): string[] {
  if (office === null || visited === null || visited.visits === null) return [];
  const { systolic, diastolic, visits } = visited;
  return [officeText({ systolic, diastolic, visits, leftOut: [] }, office.limits, words).was];
}

/** What the guideline aims at under treatment. */
export function targetRows(target: TargetBeside | null, words: Words): string[][] {
  const text = targetText(target, words);
  return text === null ? [] : [[words.sentence('series.target'), text]];
}

const PRIORS = { flat: 'series.flatPrior', 'age-sex': 'series.agePrior', office: 'series.officePrior' } as const; // biome-ignore format: one list

const FULLEST_FIRST = ['office', 'age-sex', 'flat'] as const;

/** What most is known of stands first; of several it is said which is which. Then what they rest on. */
export function chanceRows(
  probability: readonly ChanceOver[],
  assumptions: readonly Flag[],
  words: Words,
): string[][] {
  const has = (prior: ChanceOver['prior']) => probability.some((one) => one.prior === prior);
  const [hasAge, hasOffice] = [has('age-sex'), has('office')];
  const chances = FULLEST_FIRST.flatMap((prior) => probability.filter((one) => one.prior === prior));
  return [
    ...chances.map(({ threshold, systolic, diastolic, prior }) => [
      words.sentence('series.chance'),
      words.sentence('series.chanceOf', {
        threshold: `${words.say.limit(threshold.systolic)}/${words.say.limit(threshold.diastolic)}`,
        systolic,
        diastolic,
        prior: words.sentence(PRIORS[prior]),
      }),
    ]),
    ...(hasAge || hasOffice
      ? [[words.sentence('series.chance'), words.sentence('series.chancesDiffer', { hasAge, hasOffice })]]
      : []),
    ...assumptions.map((one) => [words.sentence('series.assuming'), words.detail(one)]),
  ];
}

function meanText(
  shown: { systolic: string | null; diastolic: string | null },
  pulse: number | null,
  words: Words,
): string {
  if (shown.systolic === null && shown.diastolic === null) return words.sentence('series.notKnown');
  const written = (text: string | null) => (text === null ? '-' : decimalsOf(text, words));
  const pressure = `${written(shown.systolic)}/${written(shown.diastolic)}`;
  return words.sentence('series.pressure', { pressure, pulse });
}

type Limits = Parameters<typeof meanOfPart>[1];
type Pair = { readonly systolic: number | null; readonly diastolic: number | null };

/** A mean as it is shown: whole, with decimals only where the whole number would stand on the other side of its limit. */
export function meanOfPart(
  pair: Pair,
  limits: { readonly systolic: SidedLimit | null; readonly diastolic: SidedLimit | null },
  words: Words,
): string {
  const { systolic, diastolic } = limits;
  return meansText(pair, systolic, diastolic, words) ?? words.sentence('series.notKnown');
}

/** A difference or a scatter of pressures, to one decimal. */
function spreadText({ systolic, diastolic }: { systolic: number; diastolic: number }, words: Words): string {
  return words.sentence('series.partMean', { systolic, diastolic });
}

/** How mornings and evenings vary by themselves; nothing where either does not. */
function partRows({ parts: { morning, evening } }: HomeAnswered, words: Words): string[][] {
  const texts = [morning.sd, evening.sd].map(({ systolic, diastolic }) =>
    systolic === null || diastolic === null ? null : spreadText({ systolic, diastolic }, words),
  );
  const [ofMorning, ofEvening] = texts;
  return ofMorning == null || ofEvening == null
    ? []
    : [
        [
          words.sentence('series.dayToDay'),
          words.sentence('series.partsSd', { morning: ofMorning, evening: ofEvening }),
        ],
      ];
}

function dayRows({ result }: HomeAnswered, limits: Limits, words: Words): string[][] {
  const { sd } = result.dayToDay;
  if (sd.systolic === null || sd.diastolic === null) return [];
  const means = result.dayMeans.map((one) => meanOfPart(one, limits, words)).join('; ');
  return [
    [
      words.sentence('series.dayToDay'),
      words.sentence('series.dailyMeans', {
        means,
        sd: spreadText({ systolic: sd.systolic, diastolic: sd.diastolic }, words),
      }),
    ],
  ];
}
