import type { Say } from '../say.js';

const READINGS = { one: 'reading', other: 'readings' };
const DAYS = { one: 'day', other: 'days' };
const ROWS = { one: 'row', other: 'rows' };

/** A chance as it is shown: whole percent, and never 0 or 100. Source: docs/conventions.md section 4. */
function chance(share: number, say: Say): string {
  if (share < 0.01) return 'under 1 %';
  return share > 0.99 ? 'over 99 %' : say.percent(share);
}

function lineOf(f: { lines: string; count: number }, say: Say): string {
  return `${say.form(f.count, { one: 'line', other: 'lines' })} ${f.lines}`;
}

/** On which side of a limit a reading counts; `mixed` stands beside limits that carry their signs. */
function sideOf({ side }: { side: 'least' | 'over' | 'mixed' }): string {
  if (side === 'over') return 'over';
  return side === 'mixed' ? 'past' : 'at or above';
}

/** What is said of a series of readings at home or over 24 hours, and of the usual pressure. */
export const seriesLines = {
  actFirst: 'Act first',
  by: 'By',
  readings: 'Readings',
  leftOut: 'Left out',
  mean: 'Mean',
  morning: 'Morning',
  evening: 'Evening',
  dayToDay: 'Day to day',
  category: 'Category',
  result: 'Result',
  chance: 'Chance',
  day: 'Day',
  night: 'Night',
  whole: '24 hours',
  fall: 'Fall by night',
  rise: 'Morning rise',
  load: 'Load',
  curve: 'Curve',
  pattern: 'Pattern',
  office: 'With the office',
  usual: 'Usual level',
  systolic: 'Systolic',
  diastolic: 'Diastolic',
  assuming: 'Assuming',
  ruleSet: (f: { title: string; id: string; version: string }, _say: Say) =>
    `${f.title} (${f.id}, version ${f.version})`,
  linePressure: (f: { lines: string; count: number; pressure: string; detail: string }, say: Say) =>
    `${lineOf(f, say)}, ${f.pressure}: ${f.detail}`,
  lines: (f: { lines: string; count: number; detail: string }, say: Say) => `${lineOf(f, say)}: ${f.detail}`,
  moreLines: (f: { rows: number }, say: Say) => `${say.counted(f.rows, ROWS)} more`,
  used: (f: { used: number; rows: number; days: number }, say: Say) =>
    `${say.short(f.used)} of ${say.counted(f.rows, READINGS)} used, on ${say.counted(f.days, DAYS)}`,
  lone: (f: { readings: number; parts: readonly string[]; with: string; without: string }, say: Say) =>
    `${say.form(f.readings, { one: 'One reading stands', other: `${say.short(f.readings)} readings stand` })} far from ${say.form(f.readings, { one: 'its', other: 'their' })} neighbours: ${f.parts.join('; ')}. Look whether the arm moved. With ${say.form(f.readings, { one: 'it', other: 'them' })} the mean is ${f.with}, without ${f.without}; nothing was left out for it; of what is kept, a hand can take it out.`,
  loneMany: (f: { readings: number }, say: Say) =>
    `${say.form(f.readings, { one: 'One reading stands', other: `${say.short(f.readings)} readings stand` })} far from their neighbours: too many for one movement of the arm. Look at the recording, and how it was taken; nothing was left out for it.`,
  loneOne: (f: { pressure: string; day: string; at: string; before: string; after: string }, _say: Say) =>
    `${f.pressure} on ${f.day} at ${f.at}, between ${f.before} and ${f.after}`,
  ofAsked: (f: { came: number; asked: number }, say: Say) =>
    `${say.short(f.came)} of the ${say.counted(f.asked, READINGS)} that were asked for`,
  gapsBlank: (f: { gaps: string; count: number }, say: Say) =>
    `${f.gaps} ${say.form(f.count, { one: 'is', other: 'are' })} blank`,
  gapShort: (f: { text: string; came: number; asked: number }, say: Say) =>
    `${f.text} has ${say.short(f.came)} of ${say.short(f.asked)}`,
  'gap-morning': (f: { text: string }, _say: Say) => `the morning of ${f.text}`,
  'gap-evening': (f: { text: string }, _say: Say) => `the evening of ${f.text}`,
  'gap-day': (f: { text: string }, _say: Say) => `all of ${f.text}`,
  'gap-days': (f: { from: string; until: string }, _say: Say) => `every day from ${f.from} to ${f.until}`,
  kept: (
    f: { kept: number; scheduled: number; isPlanSaid: boolean; byHand: number; day: number; night: number },
    say: Say,
  ) => {
    const came = f.byHand === 0 ? 'that came' : 'that came by the schedule';
    const planned = `${say.short(f.kept)} of ${say.short(f.scheduled)} ${f.isPlanSaid ? 'scheduled' : came}`;
    const byHand = `${say.short(f.byHand)} started by hand`;
    const parts = [
      ...(f.scheduled === 0 && f.byHand > 0 ? [] : [planned]),
      ...(f.byHand === 0 ? [] : [byHand]),
    ];
    return `${parts.join(' and ')} are kept: ${say.short(f.day)} by day, ${say.short(f.night)} by night`;
  },
  byDiary: 'day and night by the diary',
  byClock: 'day and night by the clock alone',
  pressure: (f: { pressure: string; pulse: number | null }, say: Say) =>
    f.pulse === null ? f.pressure : `${f.pressure}, pulse ${say.short(f.pulse, 0)}`,
  partMean: (f: { systolic: number; diastolic: number }, say: Say) =>
    `${say.short(f.systolic)}/${say.short(f.diastolic)}`,
  notKnown: 'not known',
  minusEvening: (f: { systolic: number; diastolic: number }, say: Say) =>
    `morning minus evening ${say.short(f.systolic)}/${say.short(f.diastolic)}`,
  partsSd: (f: { morning: string; evening: string }, _say: Say) =>
    `SD of the mornings ${f.morning}, of the evenings ${f.evening}`,
  dailyMeans: (f: { means: string; sd: string }, _say: Say) => `${f.means} (SD ${f.sd})`,
  categoryOf: (f: { category: string }, _say: Say) =>
    `${f.category}, by this rule set: a name for these readings, not for the person`,
  noCategory: 'none by this rule set',
  isHigh: 'high, by this rule set: said of these readings, and of the person nothing more',
  isNotHigh: 'not high, by this rule set: said of these readings, and of the person nothing more',
  chanceOf: (
    f: { threshold: string; systolic: number | null; diastolic: number | null; prior: string },
    say: Say,
  ) =>
    `that the usual level is at or above ${f.threshold}, under the stated assumptions: systolic ${f.systolic === null ? 'not known' : chance(f.systolic, say)}, diastolic ${f.diastolic === null ? 'not known' : chance(f.diastolic, say)} (${f.prior})`,
  chancesDiffer: (f: { hasAge: boolean; hasOffice: boolean }, _say: Say) =>
    `All are about the same usual level. The first also counts ${[...(f.hasOffice ? ['the office visits'] : []), ...(f.hasAge ? ['what is known of people of this age and sex'] : [])].join(' and ')}: go by that one if it is true of this person. The last goes by the readings alone. None of them changes what the rule set says above.`,
  flatPrior: 'from these readings alone',
  agePrior: 'with what is known of this age and sex',
  officePrior: 'with the office visits too',
  fallOf: (f: { systolic: number; diastolic: number }, say: Say) =>
    `systolic ${say.short(f.systolic, 1)} %, diastolic ${say.short(f.diastolic, 1)} %`,
  fallWithClass: (f: { fall: string; class: string; diastolic: string | null }, _say: Say) =>
    `${f.fall}: ${f.class}${f.diastolic === null ? '' : `; of the diastolic alone ${f.diastolic}`}`,
  periodCategory: (f: { period: string; category: string }, _say: Say) => `${f.period} ${f.category}`,
  periodCategories: (f: { categories: string }, _say: Say) =>
    `${f.categories}, by this rule set: names for these readings, not for the person`,
  riseOf: (f: { name: string; amount: string; definition: string }, _say: Say) =>
    `${f.name}: ${f.amount} (${f.definition})`,
  riseAmount: (f: { mmHg: number }, say: Say) => `${say.short(f.mmHg, 1)} mmHg`,
  riseRate: (f: { mmHg: number }, say: Say) => `${say.short(f.mmHg, 1)} mmHg/h`,
  riseNotKnown: 'not enough readings',
  riseAtEdge: 'The lowest reading is the first or last asleep: two make its mean, not three.',
  officeTooFar: (f: { pressures: number; days: number }, say: Say) =>
    `${say.counted(f.pressures, { one: 'pressure', other: 'pressures' })} not taken, more than ${say.counted(f.days, DAYS)} from these readings (a choice of this program)`,
  target: 'Treatment target',
  targetUnder: (
    f: { systolic: number; diastolic: number; fromYears: number | null; untilYears: number | null },
    say: Say,
  ) =>
    `under ${say.limit(f.systolic)}/${say.limit(f.diastolic)} mmHg ${f.fromYears === null ? `at an age under ${say.short(f.untilYears ?? 0)}` : `from the age of ${say.short(f.fromYears)} on`}`,
  targetSays: (f: { guideline: string; text: string; isMet: boolean | null }, _say: Say) =>
    `${f.guideline} aims at a mean ${f.text} in whoever is treated${f.isMet === null ? '' : f.isMet ? '; this mean is under it' : '; this mean is not under it'}. From memory, not checked against the guideline; your local protocol and the person's own target win. It says what is aimed at, not what the person has`,
  stiffness: 'Stiffness index',
  stiffnessOf: (f: { index: number; symmetric: number; slope: number; r: number }, say: Say) =>
    `${say.number(f.index, 2)}, symmetric ${say.number(f.symmetric, 2)} (1 minus the slope of diastolic on systolic, ${say.number(f.slope, 2)}; r ${say.number(f.r, 2)}). It moves with how far the readings scatter and with the fall by night, a modelling study found that it does not measure stiffness accurately, and it has no limit here`,
  stiffnessNone: (f: { readings: number; r2: number }, say: Say) =>
    `Not given: it takes ${say.counted(f.readings, READINGS)} with both pressures and an r² of ${say.limit(f.r2)} or more between them`,
  riseCaution: (f: { sd: number; apart: number }, say: Say) =>
    `These rises have no limit here: from one recording of a person to the next each varies by an SD of about ${say.short(f.sd)} mmHg, and the definitions differ by more than ${say.short(f.apart)}.`,
  loadOf: (
    f: {
      period: string;
      systolic: number;
      diastolic: number;
      limit: string;
      side: 'least' | 'over' | 'mixed';
    },
    say: Say,
  ) =>
    `${f.period}: systolic ${say.short(f.systolic, 0)} %, diastolic ${say.short(f.diastolic, 0)} % of readings ${sideOf(f)} ${f.limit}`,
  loadOfBoth: (
    f: {
      systolic: number | null;
      diastolic: number | null;
      day: string;
      night: string;
      side: 'least' | 'over' | 'mixed';
    },
    say: Say,
  ) => {
    const of = (name: string, percent: number | null) =>
      percent === null ? [] : [`${name} ${say.short(percent, 0)} %`];
    return `24 hours: ${[...of('systolic', f.systolic), ...of('diastolic', f.diastolic)].join(', ')} of readings by day and by night, each ${sideOf(f)} the limit of its own period (${f.day} by day, ${f.night} by night), not that of 24 hours; readings of neither period are left out`;
  },
  derivedOf: (
    f: { period: string; mean: number; sd: number | null; least: number; most: number },
    say: Say,
  ) =>
    `${f.period} ${say.short(f.mean, 0)} (${f.sd === null ? '' : `SD ${say.number(f.sd, 1)}, `}${say.short(f.least, 0)} to ${say.short(f.most, 0)})`,
  groupHome: (f: { people: number }, say: Say) =>
    `${say.counted(f.people, { one: 'person', other: 'persons' })}, each by the means of their days at home`,
  groupRecordings: (f: { people: number }, say: Say) =>
    `${say.counted(f.people, { one: 'person', other: 'persons' })}, each by the readings of 24 hours`,
  groupOf: (f: { x: number; mean: number; correlation: number }, say: Say) =>
    `SD grows as the mean to the power of ${say.number(f.x, 2)}, about ${say.number(f.mean, 1)}; what is independent of the mean goes with it by ${say.number(f.correlation, 2)}`,
  noGroup: 'none: three people with different means, whose readings vary, are needed',
  vimOf: (f: { component: string; mean: string; sd: string; vim: string }, _say: Say) =>
    `${f.component} mean ${f.mean}, SD ${f.sd}, independent of the mean (VIM) ${f.vim}`,
  groupNote:
    'A VIM says something beside those of the same group alone, and nothing of one person: keep power, size and mean of the group with it.',
  curveOf: (f: { mesor: number; amplitude: number; peak: string }, say: Say) =>
    `systolic about ${say.short(f.mesor)}, up and down by ${say.short(f.amplitude)}, highest at ${f.peak}`,
  consistentWith: (f: { names: string }, _say: Say) =>
    `consistent with ${f.names}: what these readings show, not what the person has`,
  officeMinus: (f: { systolic: string; diastolic: string }, _say: Say) =>
    `office minus out-of-office ${f.systolic}/${f.diastolic} mmHg`,
  usualOf: (f: { mean: number; low: number; high: number }, say: Say) =>
    `${say.short(f.mean)}, 95 % interval ${say.short(f.low, 0)} to ${say.short(f.high, 0)}`,
  usualChance: (f: { threshold: number; chance: number }, say: Say) =>
    `${chance(f.chance, say)} that the usual level is at or above ${say.limit(f.threshold)}, under the stated assumptions`,
  usualFlat: (f: { chance: number }, say: Say) =>
    `${chance(f.chance, say)} without what is known of an age and sex`,
  oneMoreDay: (f: { mmHg: number }, say: Say) =>
    `one more day like these would make the interval ${say.short(f.mmHg, 1)} mmHg narrower`,
  settled: 'settled: four to one or clearer',
  settledAfter: (f: { days: number }, say: Say) =>
    `${say.counted(f.days, { one: 'more day', other: 'more days' })} like these would settle it`,
  notSettled: 'more readings of the same kind within four weeks will not settle it',

  'time-not-there': (f: { lines: string; count: number }, say: Say) =>
    `The clock skipped this time (${lineOf(f, say)}): moved forward by what it skipped.`,
  'time-twice': (f: { lines: string; count: number }, say: Say) =>
    `The clock showed this time twice (${lineOf(f, say)}): taken as the first.`,
  'times-in-utc': () =>
    'Times are in UTC and no zone was given: morning, evening, day and night are those of UTC.',
  'from-kilopascal': () => 'Pressures were in kPa and are shown in mmHg.',
  'irregular-pulse': (f: { lines: string; count: number }, say: Say) =>
    `The device marked an irregular pulse (${lineOf(f, say)}): what it reads varies more then, and three readings at a time are advised.`,
  'irregular-not-understood': (f: { lines: string; count: number }, say: Say) =>
    `What stands in the column of an irregular pulse is not understood (${lineOf(f, say)}): it is taken as marked, and kept as written in the note of its reading.`,
  'marked-by-hand': (f: { lines: string; count: number }, say: Say) =>
    `Started by hand, outside the schedule (${lineOf(f, say)}).`,
  'start-not-understood': (f: { lines: string; count: number }, say: Say) =>
    `What stands in the column of how a reading was started is not understood (${lineOf(f, say)}): it is taken as of the schedule, and kept as written in the note of its reading.`,
  startedByHandMark: 'started by hand, outside the schedule',
  irregularReadings: (f: { readings: number }, say: Say) =>
    `The device marked an irregular pulse at ${say.counted(f.readings, READINGS)}: what it reads varies more then, and three readings at a time are advised.`,
  irregularMark: 'irregular pulse, marked by the device',
  clockSkipped: 'the clock skipped this time: moved forward',
  clockTwice: 'the clock showed this time twice: taken as the first',
  marksNotUsed: (f: { marked: number; differ: number }, say: Say) =>
    `Day and night go by the times asleep that were typed, not by the marks in the table${f.differ === 0 ? ', which say the same.' : `: ${say.short(f.differ)} of ${say.short(f.marked)} marks say otherwise.`}`,
  'lines-before-heading': (f: { lines: string; count: number }, say: Say) =>
    `Before the headings, not read: ${lineOf(f, say)}.`,
} as const;

/** What each option of `evenfall home`, `ambulatory` and `usual` means: one line, shown by `--help`. */
export const seriesOptions = {
  homeRules: 'the guideline’s rule set (ish-2020 if absent)',
  zone: 'the zone of times without an offset: Europe/Lisbon',
  priorSex: 'with --age: what is known of this age and sex beforehand',
  seriesPregnant: 'pregnant, or in the six weeks after: no category is given',
  dates: 'the order of day, month and year in dates that could be read in two ways',
  pressureUnit: 'the unit of pressures that could be kPa',
  columns: 'what each column is, with commas: time,systolic,diastolic,pulse; - for one that is not read',
  officeMean:
    'an office pressure to compare with and to take into the chances: 148/92, 148/92x2 for the mean of two visits, or each with its day (one day is one visit): 2026-11-01=148/92,2026-11-08=150/90',
  treated: 'whether the person is treated for high pressure',
  asleep: 'when the person slept, by their diary: 23:00-07:00',
  nap: 'with --asleep: when they slept by day, counted as neither day nor night: 13:00-14:30',
  dayWindow: 'the hours of day by the clock: 09:00-21:00',
  nightWindow: 'the hours of night by the clock: 01:00-06:00',
  scheduled: 'how many readings the recorder was set to take',
  asksStiffness: 'work out the stiffness index too (it depends on scatter and on the fall by night)',
  allHours: 'use readings later than 24 hours after the first too',
  usualOffice:
    'the mean of office visits and how many: 148/92x2; or each with its day (one day is one visit): 2026-11-01=148/92,2026-11-08=150/90',
  usualHome: 'the mean of readings at home and how many: 138/86x24',
  usualDays: 'on how many days the readings at home were taken',
  usualAmbulatory: 'the mean by day of a recording over 24 hours',
  threshold: 'the pressure asked about: 135/85',
} as const;
