import type { Figure, Sureness } from '../contract/figure.js';
import type { AmbulatoryRules } from '../outOfOffice/ambulatoryRules.js';
import { OUT_OF_OFFICE_FIGURES as F } from '../outOfOffice/figures.js';
import type { HomeRules } from '../outOfOffice/homeRules.js';
import type { FieldValue, Replaced } from './field.js';
import type { Preset } from './presets.js';

/** Each rule of a guideline with where it comes from. */
type Changed<Rules> = {
  readonly [Key in keyof Rules]?: Rules[Key] extends FieldValue ? Replaced<Rules[Key]> : never;
};

type Origin = { readonly source: string; readonly sure: Sureness };
const originOf = ({ source, sure }: Figure): Origin => ({ source, sure });

function number(figure: Figure): Replaced<number> {
  return { value: figure.value, ...originOf(figure) };
}

/** A figure as a limit of `>=`; a guideline without it has none. */
function least(figure: Figure): Replaced<HomeRules['leastDays']> {
  return { value: { comparison: '>=', limit: figure.value }, ...originOf(figure) };
}

/** A figure as a limit of `>`. */
function over(figure: Figure): Replaced<HomeRules['leastDays']> {
  return { value: { comparison: '>', limit: figure.value }, ...originOf(figure) };
}

/** What a row of limits alone leaves open, and this project settles. */
const UNNAMED: Origin = {
  source: 'not stated with these limits (out-of-office handbook 8)',
  sure: 'decision',
};

const none = (origin: Origin): Replaced<HomeRules['leastDays']> => ({ value: null, ...origin });
const word = <Word extends string>(value: Word, origin: Origin): Replaced<Word> => ({ value, ...origin });

/** The 12 readings of another guideline stand in where one states no least number. */
const UNSTATED = least(F.homeUnstatedReadings);

function home(id: string, of: Figure, changes: Changed<HomeRules>): Preset {
  const { source, sure } = of;
  return { section: 'home', id, source, status: sure, changes };
}

function high(
  systolic: Figure,
  diastolic: Figure,
  scheme: HomeRules['scheme'] = 'high-or-not',
): Changed<HomeRules> {
  return {
    highSystolic: least(systolic),
    highDiastolic: least(diastolic),
    scheme: word(scheme, originOf(systolic)),
  };
}

/** Rules for readings at home, in the order of the handbook. Source: out-of-office handbook 2, 8. */
const HOME: readonly Preset[] = [
  {
    section: 'home',
    id: 'means-alone-at-home',
    source: 'docs/conventions.md section 7',
    status: 'decision',
    changes: {},
  },
  home('nice-ng136', F.niceHighSystolic, {
    leastDays: least(F.niceLeastDays),
    leastReadings: least(F.niceLeastReadings),
    ...high(F.niceHighSystolic, F.niceHighDiastolic, 'nice-ng136'),
  }),
  home('hypertension-canada', F.canadaHighSystolic, {
    droppedDays: number(F.canadaDroppedDays),
    leastDays: none(originOf(F.canadaHighSystolic)),
    leastReadings: UNSTATED,
    ...high(F.canadaHighSystolic, F.canadaHighDiastolic),
  }),
  home('aha-ama-2020', F.ahaAmaLeastReadings, {
    droppedDays: number(F.ahaAmaDroppedDays),
    leastDays: least(F.ahaAmaLeastDays),
    leastReadings: least(F.ahaAmaLeastReadings),
    ...high(F.accHighSystolic, F.accHighDiastolic),
  }),
  ...(['acc-aha-2017', 'acc-aha-2025'] as const).map((id) =>
    home(id, F.accHighSystolic, {
      droppedDays: number(F.accDroppedDays),
      leastDays: none(originOf(F.accDroppedDays)),
      leastReadings: UNSTATED,
      ...high(F.accHighSystolic, F.accHighDiastolic, 'acc-aha-2017'),
    }),
  ),
  home('esc-2024', F.escHighSystolic, {
    droppedDays: number(F.homeNoDroppedDays),
    leastDays: least(F.escLeastDays),
    leastReadings: least(F.escLeastReadings),
    ...high(F.escHighSystolic, F.escHighDiastolic, 'esc-2024'),
  }),
  home('esh-2023', F.eshHighSystolic, {
    droppedDays: number(F.eshDroppedDays),
    leastDays: least(F.eshLeastDays),
    leastReadings: least(F.eshLeastReadings),
    ...high(F.eshHighSystolic, F.eshHighDiastolic),
  }),
  home('ish-2020', F.homeHighSystolic, {
    droppedDays: number(F.homeDroppedDays),
    leastDays: least(F.homeLeastDays),
    leastReadings: least(F.homeLeastReadings),
    ...high(F.homeHighSystolic, F.homeHighDiastolic),
  }),
  home('jsh-2019', F.jshHighSystolic, {
    readingsInSitting: number(F.jshReadingsInSitting),
    droppedDays: number(F.jshDroppedDays),
    leastDays: least(F.jshLeastDays),
    leastReadings: none(originOf(F.jshLeastDays)),
    judged: word('each-part', originOf(F.jshHighSystolic)),
    ...high(F.jshHighSystolic, F.jshHighDiastolic, 'jsh-2019'),
  }),
  home('korea-2018', F.koreaLeastDays, {
    droppedDays: number(F.koreaDroppedDays),
    leastDays: least(F.koreaLeastDays),
    leastReadings: none(originOf(F.koreaLeastDays)),
  }),
  home('australia-2016', F.australiaHighSystolic, {
    droppedDays: number(F.australiaDroppedDays),
    leastDays: least(F.australiaLeastDays),
    leastReadings: UNSTATED,
    ...high(F.australiaHighSystolic, F.australiaHighDiastolic),
  }),
  home('family-practice-table', F.familyLeastDays, {
    readingsInSitting: number(F.familyReadingsInSitting),
    droppedDays: number(F.familyDroppedDays),
    sittingUse: word('without-first', originOf(F.familyLeastDays)),
    leastDays: least(F.familyLeastDays),
    leastReadings: least(F.familyLeastReadings),
  }),
  home('france-rule-of-three', F.franceHighSystolic, {
    readingsInSitting: number(F.franceReadingsInSitting),
    droppedDays: number(F.franceDroppedDays),
    leastDays: least(F.franceLeastDays),
    leastReadings: least(F.franceLeastReadings),
    ...high(F.franceHighSystolic, F.franceHighDiastolic),
  }),
  home('taiwan-2022', F.taiwanHighSystolic, {
    droppedDays: number(F.taiwanDroppedDays),
    leastDays: none(originOf(F.taiwanHighSystolic)),
    leastReadings: UNSTATED,
    ...high(F.taiwanHighSystolic, F.taiwanHighDiastolic),
  }),
  home('early-proposals-at-home', F.earlyHomeHighSystolic, {
    droppedDays: { value: 0, ...UNNAMED },
    leastDays: none(UNNAMED),
    leastReadings: UNSTATED,
    highSystolic: over(F.earlyHomeHighSystolic),
    highDiastolic: over(F.earlyHomeHighDiastolic),
    scheme: word('high-or-not', originOf(F.earlyHomeHighSystolic)),
  }),
];

type PairOf = readonly [systolic: Figure, diastolic: Figure];
const WHOLE: PairOf = [F.wholeHighSystolic, F.wholeHighDiastolic];
const DAY: PairOf = [F.dayHighSystolic, F.dayHighDiastolic];
const NIGHT: PairOf = [F.nightHighSystolic, F.nightHighDiastolic];
const ACC_WHOLE: PairOf = [F.accWholeHighSystolic, F.accWholeHighDiastolic];
const ACC_DAY: PairOf = [F.accDayHighSystolic, F.accDayHighDiastolic];
const ACC_NIGHT: PairOf = [F.accNightHighSystolic, F.accNightHighDiastolic];

type From = { readonly source: string; readonly sure: Sureness };
const from = (who: string, sure: Sureness): From => ({
  source: `${who} (out-of-office handbook 5, 8)`,
  sure,
});

/** A guideline's limits: of the periods it has some for; the value is that of the figure, the origin the guideline's own. */
function ambulatory(
  id: string,
  origin: From,
  judged: AmbulatoryRules['judged'],
  [whole, day, night]: readonly [PairOf | null, PairOf | null, PairOf | null],
  more: Changed<AmbulatoryRules> = {},
): Preset {
  const of = (pair: PairOf | null, at: 0 | 1): Replaced<AmbulatoryRules['wholeSystolic']> =>
    pair === null
      ? { value: null, ...origin }
      : { value: { comparison: '>=', limit: pair[at].value }, ...origin };
  return {
    section: 'ambulatory',
    id,
    source: origin.source,
    status: origin.sure,
    changes: {
      judged: { value: judged, ...origin },
      wholeSystolic: of(whole, 0),
      wholeDiastolic: of(whole, 1),
      daySystolic: of(day, 0),
      dayDiastolic: of(day, 1),
      nightSystolic: of(night, 0),
      nightDiastolic: of(night, 1),
      ...more,
    },
  };
}

const ALL = ['whole', 'day', 'night'] as const;
/** Limits of the three periods from a source that says no more: that any of them decides is this project's. */
function ofLimits(
  id: string,
  limit: (figure: Figure) => Replaced<AmbulatoryRules['wholeSystolic']>,
  [whole, day, night]: readonly [PairOf, PairOf, PairOf],
): Preset {
  const { source, sure } = whole[0];
  return {
    section: 'ambulatory',
    id,
    source,
    status: sure,
    changes: {
      judged: { value: ALL, ...UNNAMED },
      wholeSystolic: limit(whole[0]),
      wholeDiastolic: limit(whole[1]),
      daySystolic: limit(day[0]),
      dayDiastolic: limit(day[1]),
      nightSystolic: limit(night[0]),
      nightDiastolic: limit(night[1]),
    },
  };
}

const NICE = from('NICE NG136', 'second-hand');
const CANADA = from('Hypertension Canada (CHEP 2017)', 'found');

/** Wide windows of the clock: the whole night between two days. */
const WIDE: Changed<AmbulatoryRules> = {
  dayFrom: number(F.wideDayFrom),
  dayTo: number(F.wideDayTo),
  nightFrom: number(F.wideDayTo),
  nightTo: number(F.wideDayFrom),
};

/** Narrow windows of the research consortium in Europe and South America. */
const RESEARCH: Changed<AmbulatoryRules> = {
  dayFrom: number(F.researchDayFrom),
  dayTo: number(F.researchDayTo),
  nightFrom: number(F.researchNightFrom),
  nightTo: number(F.researchNightTo),
};

/** Rules for recordings over 24 hours, in the order of the handbook. Source: out-of-office handbook 5, 7, 8. */
const AMBULATORY: readonly Preset[] = [
  {
    section: 'ambulatory',
    id: 'means-alone-over-24-hours',
    source: 'docs/conventions.md section 7',
    status: 'decision',
    changes: {},
  },
  ambulatory('nice-ng136', NICE, ['day'], [null, DAY, null], {
    leastPercent: { value: null, ...NICE },
    leastDay: least(F.niceLeastDayReadings),
    leastNight: { value: null, ...NICE },
    scheme: word('nice-ng136', originOf(F.niceDayStage2Systolic)),
    ...WIDE,
  }),
  ambulatory('hypertension-canada', CANADA, ['whole', 'day'], [WHOLE, DAY, null], {
    leastHours: least(F.canadaLeastHours),
    ...WIDE,
  }),
  ...(['acc-aha-2017', 'acc-aha-2025'] as const).map((id) =>
    ambulatory(
      id,
      from('ACC/AHA 2025 pocket guideline, tables 7 and 9', 'found'),
      ['whole', 'day'],
      [ACC_WHOLE, ACC_DAY, ACC_NIGHT],
      { scheme: word('acc-aha-2017', originOf(F.accDayElevatedSystolic)) },
    ),
  ),
  ambulatory('esc-2024', from('ESC 2024', 'memory'), ALL, [WHOLE, DAY, NIGHT], {
    scheme: word('esc-2024', originOf(F.escDayElevatedSystolic)),
  }),
  ambulatory('esh-2023', from('ESH 2013 to 2023', 'memory'), ALL, [WHOLE, DAY, NIGHT]),
  ambulatory('ish-2020', from('ISH 2020', 'second-hand'), ['whole'], [WHOLE, DAY, NIGHT]),
  ambulatory('jsh-2019', from('JSH 2019', 'memory'), ALL, [WHOLE, DAY, NIGHT]),
  ambulatory('australia-2016', from('Australian guideline 2016', 'memory'), ALL, [WHOLE, DAY, NIGHT]),
  ofLimits('australia-clinic-equivalents', least, [
    [F.headWholeHighSystolic, F.headWholeHighDiastolic],
    [F.headDayHighSystolic, F.headDayHighDiastolic],
    [F.headNightHighSystolic, F.headNightHighDiastolic],
  ]),
  ofLimits('taiwan-2022', least, [
    [F.taiwanWholeHighSystolic, F.taiwanWholeHighDiastolic],
    [F.taiwanDayHighSystolic, F.taiwanDayHighDiastolic],
    [F.taiwanNightHighSystolic, F.taiwanNightHighDiastolic],
  ]),
  ofLimits('early-proposals-over-24-hours', over, [
    [F.earlyWholeHighSystolic, F.earlyWholeHighDiastolic],
    [F.earlyDayHighSystolic, F.earlyDayHighDiastolic],
    [F.earlyNightHighSystolic, F.earlyNightHighDiastolic],
  ]),
  ambulatory(
    'research-levels',
    { source: F.researchDayReadings.source, sure: F.researchDayReadings.sure },
    ALL,
    [WHOLE, DAY, NIGHT],
    {
      leastPercent: { value: null, ...originOf(F.researchDayReadings) },
      leastDay: least(F.researchDayReadings),
      leastNight: least(F.researchNightReadings),
      ...RESEARCH,
    },
  ),
  ambulatory('research-levels-older', originOf(F.olderResearchDayReadings), ALL, [WHOLE, DAY, NIGHT], {
    leastPercent: none(originOf(F.olderResearchDayReadings)),
    leastDay: least(F.olderResearchDayReadings),
    leastNight: least(F.olderResearchNightReadings),
    longestEmptyHours: least(F.olderResearchEmptyHours),
    ...RESEARCH,
  }),
];

/** The presets of what happens away from the clinic; the first of each section gives no limit. */
export const OUT_OF_OFFICE_PRESETS: readonly Preset[] = [...HOME, ...AMBULATORY];
