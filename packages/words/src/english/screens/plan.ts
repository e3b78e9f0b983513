import type { Say } from '../../say.js';

const PEOPLE = { one: 'simulated person', other: 'simulated people' };

/** A number with its Monte Carlo error. */
function withError(value: number, error: number | null, unit: string, say: Say): string {
  const decimals = error !== null && error < 0.05 ? 2 : 1;
  const said = `${say.number(value, decimals)}${unit}`.replace('-', '−');
  return error === null ? said : `${said} (± ${say.number(error, 2)})`;
}

/** A difference and its Monte Carlo error. */
type Apart = { amount: number; error: number };
/** How large a difference is and to which side, with its error behind it. */
function apartBy({ amount, error }: Apart, lower: string, higher: string, say: Say): string {
  const size = say.number(Math.abs(amount), error < 0.05 ? 2 : 1);
  return `${size} ${amount < 0 ? lower : higher} (± ${say.number(error, 2)})`;
}

/** What a way of measuring gets wrong, tried on many simulated people. */
export const plan = {
  title: 'What a way of measuring gets wrong',
  lead: 'Two ways of measuring are tried on the same simulated people: usual levels as in a survey of adults in the United States (the mean of three readings at a visit, so that what a visit does by itself is in them), each with the ups and downs of real visits. What comes out is a model’s answer, with how far chance alone may have moved it.',
  first: 'First way',
  second: 'Second way',
  fieldOf: (f: { label: string; way: string }) => `${f.label}: ${f.way}`,
  groupBefore: 'Before the reading',
  groupCounting: 'Pulse and breaths',
  groupCuff: 'Cuff and pumping up',
  groupReading: 'Letting down and reading',
  groupVisit: 'Readings, visits, category',
  groupHome: 'At home',
  apartIn: (f: { fields: number }, say: Say) => `${say.number(f.fields)} not alike`,
  copyFirst: 'Make the second way like the first',
  apart: 'The first beside the second',
  what: 'What',
  people: 'People',
  seed: 'Seed',
  seedHint: 'The same seed gives the same people.',
  seedWrong: 'A whole number from 0 to 4294967295.',
  peopleHint: 'More people take longer, and leave less to chance.',
  differ: 'In what the two ways differ',
  differIn: (f: { field: string; first: string; second: string }) =>
    `${f.field}: first ${f.first}, second ${f.second}`,
  same: 'Both ways are the same now: whatever comes out apart is nothing.',
  wrong: 'Nothing was begun: something above is not as it can be, and says so at its field.',
  run: 'Try both',
  cancel: 'Stop',
  running: (f: { percent: number }, say: Say) => `${say.number(f.percent)} % done`,
  cancelled: 'Stopped. Nothing was worked out.',
  failed: 'It could not be worked out on this device.',
  asTextbook: 'as the textbook has it',
  asRule: 'as the rule asks',
  yes: 'yes',
  no: 'left out',
  homeNone: 'not measured at home',

  rule: 'Readings and their average by',
  readings: 'Readings at a visit',
  visits: 'Visits',
  restMinutes: 'Rest before (min)',
  measuredBy: 'Who measures',
  'by-known': 'somebody known',
  'by-nurse': 'a nurse',
  'by-doctor': 'a doctor',
  pulseWindowSeconds: 'Pulse counted for (s)',
  breathsWindowSeconds: 'Breaths counted for (s)',
  notCounted: 'not counted',
  countClock: 'The clock of a count starts',
  'clock-any': 'at any moment',
  'clock-beat': 'on a beat or a breath',
  countFirst: 'The first is called',
  'calls-1': 'one',
  'calls-0': 'zero',
  mostPerBeatMmHg: 'No faster than (mmHg a beat)',
  noSuchCare: 'no such care',
  thresholdDb: 'Hearing worse than usual by (dB)',
  gapSeconds: 'Between two readings (s)',
  faults: 'Done wrong before the cuff is pumped up',
  faultsSay:
    'Each as a share of the observers, 0 to 1; the wrong cuff is the adult one for every arm, the low arm a hand in the lap. Leave one out of the first way alone to see what teaching it would gain.',
  nobody: 'nobody',
  cuff: 'Cuff chosen by',
  'adult-for-all': 'the adult cuff for everybody',
  palpatesFirst: 'Pulse felt for first',
  marginMmHg: 'Pumped above where it went (mmHg)',
  peakMmHg: 'Pumped to, if not felt for (mmHg)',
  rateMmHgPerSecond: 'Let down (mmHg/s)',
  reactionSeconds: 'Needle read after (s)',
  tenShare: 'Readings rounded to ten (0 to 1)',
  guideline: 'Category by',
  'home/days': 'Days at home',
  'home/readingsPerDay': 'Readings a day at home',
  'home/droppedDays': 'Days left out at home',

  results: 'What came out',
  ofPeople: (f: { people: number }, say: Say) => `SIMULATED: ${say.counted(f.people, PEOPLE)}.`,
  errorsSay:
    'Behind each number stands its Monte Carlo error: one standard error of this study. With four times the people it halves.',
  pairedSay: (f: { apart: string; isSure: boolean; first: string; second: string }) =>
    `${f.apart}, ${f.isSure ? 'more than chance alone explains' : 'which chance alone may explain'}. First way ${f.first}, second way ${f.second}.`,
  /** How far the first of two ways came out from the second, as it is read out. */
  systolicApart: (f: Apart, say: Say) =>
    `Systolic: ${apartBy(f, 'mmHg lower with the first', 'mmHg higher with the first', say)}`,
  diastolicApart: (f: Apart, say: Say) =>
    `Diastolic: ${apartBy(f, 'mmHg lower with the first', 'mmHg higher with the first', say)}`,
  wrongApart: (f: Apart, say: Say) =>
    `People in a wrong category: ${apartBy(f, 'percentage points fewer with the first', 'percentage points more with the first', say)}`,
  minutesApart: (f: Apart, say: Say) =>
    `Time of a clinician a person: ${apartBy(f, 'minutes less with the first', 'minutes more with the first', say)}`,
  biasSystolic: 'Systolic too high (+) or low (−)',
  biasDiastolic: 'Diastolic too high (+) or low (−)',
  sdSystolic: 'Systolic: SD of the error',
  sdDiastolic: 'Diastolic: SD of the error',
  within5: 'Systolic within 5 mmHg',
  within10: 'Systolic within 10 mmHg',
  within15: 'Systolic within 15 mmHg',
  up: 'Category too high',
  down: 'Category too low',
  minutes: 'Minutes of a clinician a person',
  readingsEach: 'Readings a person',
  without: 'Without any number',
  minutesText: (f: { amount: number; error: number | null }, say: Say) =>
    withError(f.amount, f.error, ' min', say),
  mmHgText: (f: { amount: number; error: number | null }, say: Say) =>
    withError(f.amount, f.error, ' mmHg', say),
  shareText: (f: { amount: number; error: number | null }, say: Say) =>
    withError(f.amount, f.error, ' %', say),
  'counts-pulse': 'Counts of the pulse, per minute',
  'counts-breaths': 'Counts of breaths, per minute',
  'pulse-all': 'All who were counted: one in four',
  'pulse-regular': 'A regular pulse of 60 or more',
  'pulse-slow': 'A regular pulse under 60',
  'pulse-irregular': 'Irregular, by early beats too',
  'breaths-all': 'All who were counted: one in four',
  'breaths-regular': 'Regular breathing of 12 or more',
  'breaths-slow': 'Regular breathing under 12',
  'breaths-irregular': 'Breathing that comes and goes',
  countText: (f: { people: number; bias: number; error: number; sd: number; within4: number }, say: Say) =>
    `${f.bias < 0 ? '−' : '+'}${say.number(Math.abs(f.bias), 1)} (± ${say.number(f.error, 2)}), SD ${say.number(f.sd, 1)}; within 4: ${say.percent(f.within4)}; n = ${say.number(f.people)}`,
  countNobody: 'too few people',
  countPair: (f: { mean: number; error: number; isSure: boolean }, say: Say) =>
    `On the same people the first way is off by ${say.number(Math.abs(f.mean), 2)} a minute ${f.mean < 0 ? 'less' : 'more'} than the second (± ${say.number(f.error, 2)})${f.isSure ? '' : ', which chance alone may explain'}.`,
  number: (f: { amount: number }, say: Say) => say.number(f.amount, 1),
  estimateSays: (f: { way: string; label: string; text: string }) => `${f.way}, ${f.label}: ${f.text}.`,
  figure: 'What both ways get wrong',
  figureKey:
    'Full circle: first way. Open square: second way. The line through each: where the value of endless people lies, in 19 studies of 20.',
  table: 'These numbers as a table',
  isOld: 'Something was changed above since: these results are of what was asked before.',
  limits:
    'This is a model of people, not people: it knows no patient, and says which way is nearer to the usual level, not which is right for a place.',
} as const;
