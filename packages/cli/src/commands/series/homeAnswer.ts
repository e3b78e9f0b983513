import {
  assumptionsOf,
  type ChanceOver,
  chancesOver,
  chancesWithVisits,
  type Flag,
  HOME_RULE,
  type HomeAsked,
  type HomeParts,
  type HomeResult,
  type HomeRules,
  homeAsked,
  homeMeanKnown,
  homeParts,
  homeResult,
  homeRules,
  homeThresholds,
  isChild,
  NOTHING_BY_HAND,
  type OfficeBeside,
  officeBeside,
  type Protocol,
  type TargetBeside,
  targetBeside,
  type UsualKnown,
  usualOf,
  type VisitsMean,
  withOfficeVisits,
} from '@evenfall/clinical';
import type { ReadSeries } from '@evenfall/exchange';
import type { Words } from '@evenfall/words';
import type { Json } from '../../answer.js';
import type { Context } from '../../command.js';
import type { Maker } from '../../input/fileLines.js';
import { computedBy } from '../../output/computedBy.js';
import { askedJson } from './askedJson.js';
import {
  type ActFirst,
  actFirstJson,
  actFirstOf,
  dateText,
  leftOut,
  type NotUsed,
  readFlags,
  refusedRows,
  seriesOfText,
} from './seriesOfText.js';
import { type OfficeTaken, officeBesideReadings, visitsOf } from './typedOffice.js';
import { protocolOf, type TypedSeries } from './typedSeries.js';

/** A series at home, answered. */
export type HomeAnswered = {
  readonly typed: TypedSeries;
  readonly read: ReadSeries;
  readonly result: HomeResult;
  readonly rules: string;
  readonly protocol: Protocol;
  readonly homeRules: HomeRules;
  readonly first: readonly ActFirst[];
  readonly known: UsualKnown;
  /** The limits that the chances are about, mmHg. */
  readonly thresholds: readonly ChanceOver['threshold'][];
  readonly probability: readonly ChanceOver[];
  /** What the office came to, which the last of the chances take too. */
  readonly visits: VisitsMean | null;
  readonly office: OfficeBeside | null;
  /** How mornings and evenings vary by themselves. */
  readonly parts: HomeParts;
  /** The office that is taken, and how many pressures with a day are too far from the readings. */
  readonly visited: OfficeTaken | null;
  readonly tooFar: number;
  readonly target: TargetBeside | null;
};

/** What the command makes of a file of readings at home. */
export function homeMaker(
  typed: TypedSeries,
  { words, version }: Pick<Context, 'words' | 'version'>,
): Maker<HomeAnswered> {
  return {
    of: (bytes) => {
      const read = seriesOfText(bytes, typed.choices);
      return read.ok ? { ok: true, value: homeAnswered(read.value, typed) } : read;
    },
    json: (answered) => homeJson(answered, version, words),
  };
}

/** What readings at home come to, with the chances beside. */
export function homeAnswered(read: ReadSeries, typed: TypedSeries): HomeAnswered {
  const protocol = protocolOf('home', typed.rules);
  const rules = homeRules(protocol);
  const { ageYears, isPregnant } = typed;
  const result = homeResult(read.readings, { ...NOTHING_BY_HAND, ageYears, isPregnant }, rules);
  const isOfChild = isChild(ageYears);
  const known = knownOf(read, result, rules, typed);
  const { taken: visited, tooFar } = officeBesideReadings(typed.office, read.readings);
  const visits = visitsOf(visited);
  const asked = isOfChild || isPregnant || result.used === 0 ? [] : homeThresholds(rules);
  return {
    typed,
    read,
    result,
    rules: typed.rules,
    protocol,
    homeRules: rules,
    first: actFirstOf(read, isPregnant, isOfChild),
    known,
    thresholds: asked,
    visits,
    parts: homeParts(read.readings, result.dropped, rules),
    probability: [
      ...chancesOver(asked, known),
      ...(visits === null ? [] : chancesWithVisits(asked, known, visits)),
    ],
    target: targetBeside(typed.rules, result.mean, { ...typed, isValid: result.valid }),
    visited,
    tooFar,
    office:
      visited === null
        ? null
        : officeBeside(
            visited,
            result.mean,
            [{ ...result.mean, highSystolic: rules.highSystolic, highDiastolic: rules.highDiastolic }],
            { ...typed, isJudged: result.valid && !isOfChild && !isPregnant },
          ),
  };
}

/** What the rule set asks for, and what came of it. */
export function askedOf({
  read,
  homeRules: rules,
}: Pick<HomeAnswered, 'read' | 'homeRules'>): HomeAsked | null {
  const { readingsInSitting, daysAsked } = rules;
  return homeAsked(read.readings, { readingsInSitting, days: daysAsked, from: null }, rules);
}

/** What is known of the usual pressure from these readings alone. */
function knownOf(read: ReadSeries, result: HomeResult, rules: HomeRules, typed: TypedSeries): UsualKnown {
  const none = { systolic: null, diastolic: null };
  return {
    ageYears: typed.ageYears,
    sex: typed.sex,
    office: none,
    home: homeMeanKnown(read.readings, result, rules),
    ambulatory: none,
  };
}

/** Everything that the chances rest on, those with office visits among them; nothing where there are none. */
export function assumptionsIn({
  known,
  visits,
  probability,
}: Pick<HomeAnswered, 'known' | 'visits' | 'probability'>): Flag[] {
  if (probability.length === 0) return [];
  const all = visits === null ? known : withOfficeVisits(known, visits);
  return assumptionsOf(all, usualOf('systolic', known, 0));
}

/** Every row of the file that is not in the mean, in order of line. */
export function notUsedOf({ read, result }: HomeAnswered, words: Words): NotUsed[] {
  return [...refusedRows(read, words), ...result.dropped.map((one) => leftOut(one, read, words))].sort(
    (a, b) => a.row - b.row,
  );
}

/** The answer for programs: the keys of the command first, what else is known after them. */
export function homeJson(answered: HomeAnswered, version: string, words: Words): Json {
  const { result, read, rules, protocol, probability } = answered;
  const { flags, ...byPart } = answered.parts;
  return {
    rules,
    valid: result.valid,
    why: result.why.map(words.flagged),
    used: result.used,
    dropped: notUsedOf(answered, words),
    days: result.days,
    mean: result.mean,
    morning: result.morning,
    evening: result.evening,
    sd: result.sd,
    dayMeans: result.dayMeans.map(({ day, ...rest }) => ({ date: dateText(day), ...rest })),
    high: result.high,
    category: result.category,
    compared: 'unrounded',
    probability,
    asked: askedJson(answered.typed),
    counts: result.counts,
    morningMinusEvening: result.morningMinusEvening,
    dayToDay: result.dayToDay,
    dayToDayByPart: byPart,
    shown: result.shown,
    actFirst: actFirstJson(answered.first, words),
    flags: [...[...result.flags, ...flags].map(words.flagged), ...readFlags(read, words)],
    assumptions: assumptionsIn(answered).map(words.flagged),
    office: officeJson(answered),
    phenotype: answered.office?.phenotype ?? null,
    whiteCoat: answered.office?.whiteCoat ?? null,
    target: answered.target,
    columns: read.mapping.columns,
    zone: read.zone,
    dates: read.dates,
    computedBy: computedBy(version, HOME_RULE, protocol, 'home'),
  };
}

/** The office that was typed, as it is taken beside the readings; null where none is. */
export function officeJson({ visited, tooFar }: Pick<HomeAnswered, 'visited' | 'tooFar'>) {
  if (visited === null && tooFar === 0) return null;
  const { systolic = null, diastolic = null, count = 0, visits = [] } = visited ?? {};
  return { systolic, diastolic, count, visits, tooFar };
}
