import type { Say } from '../../say.js';

const DAYS = { one: 'day', other: 'days' };
const READINGS = { one: 'reading', other: 'readings' };

type Text = { text: string };

/** Series from home and over 24 hours on a person's page, and the diaries that go out and come back. */
export const diary = {
  section: 'Away from the clinic',
  none: 'No readings from home or over 24 hours yet.',
  begun: (f: { readings: number }, say: Say) =>
    f.readings === 0
      ? 'Begun on this device, not signed'
      : `Begun on this device, not signed: ${say.counted(f.readings, READINGS)}`,
  enter: 'Enter or bring in readings',
  home: 'At home',
  ambulatory: 'Over 24 hours',
  days: (f: { from: string; until: string }) => `${f.from} to ${f.until}`,
  mean: (f: { systolic: string; diastolic: string }) => `mean ${f.systolic}/${f.diastolic} mmHg`,
  noMean: 'no mean',
  onDays: (f: { days: number }, say: Say) => `on ${say.counted(f.days, DAYS)}`,
  used: (f: { used: number }, say: Say) => `${say.counted(f.used, READINGS)} used`,
  leftOut: (f: { readings: number }, say: Say) => `${say.short(f.readings)} left out`,
  refused: (f: { rows: number }, say: Say) =>
    `${say.counted(f.rows, { one: 'row', other: 'rows' })} could not be read`,
  pattern: (f: Text) => `consistent with ${f.text}`,
  tooFew: 'too few for the rules',
  byRules: (f: Text) => `by ${f.text}`,
  byHand: 'decided by hand in part',
  inError: 'Entered in error',
  open: (f: Text) => `Open: ${f.text}`,
  outTitle: 'Diaries that are out',
  out: (f: { days: number; from: string }, say: Say) => `${say.counted(f.days, DAYS)} from ${f.from} on`,
  dueOn: (f: Text) => `due back on ${f.text}`,
  dueToday: 'due back today',
  dueSince: (f: Text) => `due back since ${f.text}`,
  print: 'Show and print',
  readings: 'Enter its readings',
  notComing: 'It will not come back',
  reason: 'Why not?',
  reasonMissing: 'Say why in a few words.',
  endNow: 'Keep that it will not come back',
  handOut: 'Hand out a diary',
  handTitle: 'Hand out a diary',
  handLead: 'Days and readings are those that the place’s protocol asks for.',
  daysAsked: 'Days',
  readingsAsked: 'Readings each morning and each evening',
  numberWrong: (f: { least: number; most: number }, say: Say) =>
    `A whole number from ${say.short(f.least)} to ${say.short(f.most)}.`,
  language: 'Language of the diary',
  from: 'First day',
  dueBack: 'Due back on',
  dayMissing: 'Give a day.',
  dueWrong: 'It cannot be due back before it begins.',
  handNow: 'Keep it and show the page',
  pageTitle: 'Diary to print',
  printNow: 'Print the diary',
  noSuchDiary: 'There is no such diary.',
} as const;
