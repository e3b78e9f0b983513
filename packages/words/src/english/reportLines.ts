import type { Say } from '../say.js';

const READINGS = { one: 'reading', other: 'readings' };
const DAYS = { one: 'day', other: 'days' };

/** A chance as it is shown: whole percent, and never 0 or 100. Source: docs/conventions.md section 4. */
function chance(share: number, say: Say): string {
  if (share < 0.01) return 'under 1 %';
  return share > 0.99 ? 'over 99 %' : say.percent(share);
}

/** What stands in the figures and on the page of a series at home or over 24 hours. */
export const reportLines = {
  mmHgAxis: 'Pressure, mmHg',
  pulseAxis: 'Pulse, /min',
  noReadings: 'No reading to draw',
  dayNumber: (f: { day: number }, say: Say) => `Day ${say.short(f.day)}`,
  limit: (f: { limit: number }, say: Say) => `limit ${say.limit(f.limit)}`,
  mean: (f: { mean: string }, _say: Say) => `mean ${f.mean}`,
  extended: (f: { low: number; high: number }, say: Say) =>
    `The scale is extended to ${say.short(f.low)}-${say.short(f.high)} to hold the data.`,
  readingAt: (f: { when: string; pressure: string; pulse: number | null }, say: Say) =>
    f.pulse === null
      ? `${f.when}: ${f.pressure} mmHg.`
      : `${f.when}: ${f.pressure} mmHg, pulse ${say.short(f.pulse)}.`,
  notUsed: (f: { why: string }, _say: Say) => `Left out. ${f.why}`,
  ofPeriod: (f: { period: string }, _say: Say) => `Counted to the ${f.period}.`,

  homeFigure: 'Readings at home, day by day',
  homeKey:
    'Point down: systolic. Point up: diastolic. Readings of one sitting are joined; open and grey: left out.',
  homeSays: (f: { used: number; all: number; days: number; left: number }, say: Say) =>
    `${say.short(f.used)} of ${say.counted(f.all, READINGS)} used, on ${say.counted(f.days, DAYS)}; ${say.short(f.left)} left out.`,
  meanSays: (f: { mean: string }, _say: Say) => `The mean is ${f.mean} mmHg.`,
  limitSays: (f: { limit: string | null }, _say: Say) =>
    f.limit === null ? 'The rule set gives no limit.' : `The limit of the rule set is ${f.limit} mmHg.`,
  homeTable: 'By day, mmHg; in brackets: left out',
  day: 'Day',
  morning: 'Morning',
  evening: 'Evening',
  other: 'Other times',
  dayMean: 'Day mean',

  recordingFigure: 'Pressure and pulse over 24 hours',
  recordingKey:
    'Point down: systolic. Point up: diastolic. Thick lines: means of the hour. Dashes: limits. Open and grey: edited.',
  recordingCross: 'Crosses: measurements that failed.',
  recordingSays: (f: { kept: number; all: number; day: number; night: number; edited: number }, say: Say) =>
    `${say.short(f.kept)} of ${say.counted(f.all, READINGS)} kept: ${say.short(f.day)} by day, ${say.short(f.night)} by night; ${say.short(f.edited)} edited.`,
  recordingMeans: (f: { whole: string | null; day: string | null; night: string | null }, _say: Say) =>
    `Means in mmHg: 24 hours ${f.whole ?? 'not known'}, day ${f.day ?? 'not known'}, night ${f.night ?? 'not known'}.`,
  recordingLimits: (f: { day: string | null; night: string | null }, _say: Say) =>
    `Limits in mmHg: day ${f.day ?? 'none'}, night ${f.night ?? 'none'}.`,
  asleep: 'asleep',
  nap: 'nap',
  nightByClock: 'night by the clock',
  clockChange: 'clock changed',
  clockChangedBefore: (f: { parts: readonly string[] }, say: Say) =>
    `The clock was changed before the readings of ${say.allOf(f.parts)}.`,
  nOfHour: 'n',
  hourTable: 'Means of each hour of the clock',
  hour: 'Hour from',
  n: 'n',
  systolic: 'Systolic',
  diastolic: 'Diastolic',
  pulse: 'Pulse',

  chanceFigure: (f: { component: string }, _say: Say) => `Where the usual level lies: ${f.component}`,
  chanceSays: (
    f: {
      component: string;
      scale: string;
      mean: number;
      low: number;
      high: number;
      threshold: number;
      chance: number;
      prior: number | null;
    },
    say: Say,
  ) =>
    `${f.component}, ${f.scale}: most likely ${say.short(f.mean)} mmHg, 95 % interval ${say.short(f.low, 0)} to ${say.short(f.high, 0)}; the hatched part, at or above ${say.limit(f.threshold)}, is ${chance(f.chance, say)}, under the stated assumptions.${f.prior === null ? '' : ` Dashed: what is known of this age and sex beforehand, about ${say.short(f.prior)}.`}`,
  scaleHome: 'as measured at home',
  scaleOffice: 'as measured in the office',
  usualMean: (f: { mean: number; low: number; high: number }, say: Say) =>
    `Most likely ${say.short(f.mean)} mmHg, 95 % interval ${say.short(f.low, 0)} to ${say.short(f.high, 0)}.`,
  overThreshold: (f: { threshold: number; chance: number }, say: Say) =>
    `${chance(f.chance, say)} at or above ${say.limit(f.threshold)} mmHg, under the stated assumptions.`,
  priorMean: (f: { mean: number; sd: number }, say: Say) =>
    `Beforehand, by age and sex: ${say.short(f.mean)} mmHg, SD ${say.short(f.sd)}.`,
  thresholdChance: (f: { threshold: number; chance: number }, say: Say) =>
    `${chance(f.chance, say)} at or above ${say.limit(f.threshold)}`,
  usualAxis: (f: { component: string }, _say: Say) => `${f.component}: usual level, mmHg`,
  priorKey: 'Dashed: known of this age and sex beforehand',
  curve: 'Curve',
  meanMmHg: 'Mean, mmHg',
  sdMmHg: 'SD, mmHg',
  afterwards: 'with these readings',
  beforehand: 'beforehand, by age and sex',

  besidePage: 'Blood pressure before and after',
  homePage: 'Blood pressure at home',
  recordingPage: 'Blood pressure over 24 hours',
  invented: 'INVENTED: no person stands behind these numbers',
  name: 'Name',
  born: 'Born',
  personNumber: 'Number',
  signed: 'Signed',
  device: 'Device and cuff',
  arm: 'Arm',
  medicineTaken: 'Taken for the pressure then',
  medicineNone: 'None for the pressure then',
  reasonWas: (f: { text: string }, _say: Say) => `Reason: ${f.text}`,
  medicines: 'Medicines and times',
  measuredOn: 'Measured',
  fromTo: (f: { from: string; to: string }, _say: Say) =>
    f.from === f.to ? `${f.from}` : `${f.from} to ${f.to}`,
  zoneOf: (f: { dates: string; zone: string }, _say: Say) => `${f.dates} (${f.zone})`,
  madeAt: (f: { at: string; program: string }, _say: Say) => `Made ${f.at} by ${f.program}`,
  page: (f: { page: number; of: number }, say: Say) => `Page ${say.short(f.page)} of ${say.short(f.of)}`,
  quality: 'Quality',
  ruleSet: 'Rule set',
  result: 'Result',
  cautions: 'Read this with it',
  qualityHome: (f: { used: number; all: number; days: number; left: number; refused: number }, say: Say) =>
    `${say.short(f.used)} of ${say.counted(f.all, READINGS)} used, on ${say.counted(f.days, DAYS)}; ${say.short(f.left)} left out, ${say.short(f.refused)} could not be read.`,
  enough: 'Enough for this rule set.',
  notEnough: 'Not enough for this rule set.',
  qualityRecording: (
    f: {
      scheduled: number;
      isPlanSaid: boolean;
      kept: number;
      edited: number;
      failed: number;
      percent: number | null;
      byHand: number;
      byHandUsed: number;
    },
    say: Say,
  ) => {
    const byHand = `${say.short(f.byHand)} started by hand, ${say.short(f.byHandUsed)} used`;
    if (f.scheduled === 0 && f.byHand > 0) return `${byHand}, none by a schedule.`;
    const came = `came${f.byHand === 0 ? '' : ' by the schedule'} (how many were scheduled was not said)`;
    return `${say.short(f.scheduled)} ${f.isPlanSaid ? 'scheduled' : came}, ${say.short(f.kept)} valid${f.percent === null ? '' : ` (${say.short(f.percent)} %)`}, ${say.short(f.edited)} edited, ${say.short(f.failed)} failed${f.byHand === 0 ? '' : `; besides, ${byHand}`}.`;
  },
  awakeAsleep: (f: { day: number; night: number; gap: number | null }, say: Say) =>
    `${say.short(f.day)} by day, ${say.short(f.night)} by night${f.gap === null ? '' : `; longest gap ${say.short(f.gap)} h`}.`,
  meansTable: 'Means, mmHg and per minute',
  periodTable: 'Each period, mmHg and per minute',
  mean1: 'Mean',
  sd: 'SD',
  least: 'Lowest',
  most: 'Highest',
  all: 'All that is used',
  minus: 'Morning minus evening',
  limitColumn: 'Limit',
  period: 'Period',
  load: 'Load, %',
  loadBeside: 'Load: percent of readings on the side of the limit of the period that its sign says.',
  pulsePressure: 'Pulse pressure',
  meanArterial: 'Mean arterial',
  extremes: (f: { high: string; low: string }, _say: Say) =>
    `Highest reading ${f.high}, lowest ${f.low}; neither decides the name.`,
  wristSeen: (f: { perCm: number }, say: Say) =>
    `Some readings were taken at the wrist; they are marked in the list. A wrist below the heart reads too high, above it too low: by about ${say.short(f.perCm, 1)} mmHg for each cm.`,
  list: 'All readings',
  number: 'No.',
  when: 'When',
  status: 'Status',
  row: 'Line',
  refusedList: 'Rows that could not be read',
  why: 'Why',
  wrist: 'wrist',
  nameOnly: 'This is a name for these readings by one rule set, not for the person.',
  nothing: 'nothing was read',
  leftOutOf: (f: { numbers: string; detail: string }, _say: Say) => `Left out, no. ${f.numbers}: ${f.detail}`,
  refusedRows: (f: { rows: number }, say: Say) =>
    `${say.counted(f.rows, { one: 'row', other: 'rows' })} could not be read: see the last list.`,
  noCategory: 'By this rule set no name is given to these readings.',
  category: (f: { category: string }, _say: Say) => `By this rule set: ${f.category}.`,
  highBy: 'By this rule set: high.',
  notHighBy: 'By this rule set: not high.',
  unrounded: 'With decimals',
  sdOfDays: 'SD of daily means',
  sdOfMornings: 'SD of the mornings',
  sdOfEvenings: 'SD of the evenings',
  betweenPeriods: 'between day and night',
  neitherByDiary: 'neither day nor night',
  windows: (f: { by: string; day: string | null; night: string; nap: string | null }, _say: Say) =>
    f.day !== null
      ? `${f.by}: day ${f.day}, night ${f.night}`
      : `${f.by}: asleep ${f.night}${f.nap === null ? '' : `; a nap ${f.nap}, in neither mean`}`,
  limitOf: (f: { limit: number; period: string }, say: Say) => `${say.limit(f.limit)} ${f.period}`,
  wholeBy: (f: { by: string; plain: string }, _say: Say) =>
    `The mean of 24 hours is ${f.by}; the plain mean of the readings is ${f.plain}. Everything else is of the readings.`,
  chanceTable: 'Chance of where the usual level lies, under the stated assumptions',
  atOrAbove: 'At or above, mmHg',
  chanceColumn: (f: { component: string; from: string }, _say: Say) => `${f.component}, ${f.from}`,
  chanceShort: (f: { chance: number | null }, say: Say) => (f.chance === null ? '-' : chance(f.chance, say)),
  actOn: (f: { pressures: string; detail: string }, _say: Say) => `${f.pressures}: ${f.detail}`,
  andMore: (f: { readings: number }, say: Say) => `${say.short(f.readings)} more`,
  atLine: (f: { line: number }, say: Say) => `line ${say.short(f.line)}`,
  line: (f: { label: string; text: string }, _say: Say) => `${f.label}: ${f.text}.`,
} as const;

/** What the options for files to be drawn mean: one line each, shown by `--help`. */
export const reportOptions = {
  pdf: 'write the page as a PDF too, with the list of all readings',
  svg: 'write the figure as SVG too',
  paper: 'the sheet of the PDF (a4 if absent)',
  replaceFile: 'replace a file that is there already',
  invented: 'the numbers are invented: every page says so',
} as const;
