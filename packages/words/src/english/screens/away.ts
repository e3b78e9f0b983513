import type { Say } from '../../say.js';

type Text = { text: string };
type Line = { line: number };
type Readings = { readings: number };

const READINGS = { one: 'reading', other: 'readings' };
const ROWS = { one: 'row', other: 'rows' };
/** The second reading of a sitting, and so on. */
const PLACES = ['second', 'third', 'fourth'];
const DAYS = { one: 'day', other: 'days' };

/** A change of a systolic mean and between what it lies, as texts with their signs; `holdsNone`: no change lies between them too. */
type Change = { change: string; low: string; high: string; holdsNone: boolean };

function changeOf(f: Change, when: string): string {
  const verdict = f.holdsNone ? 'No change at all lies within that.' : 'No change at all lies outside that.';
  return `If both means scatter like that, the systolic change${when} of ${f.change} mmHg lies between ${f.low} and ${f.high} with 95 of 100. ${verdict}`;
}

/** Readings that were taken away from the clinic: brought in, and the page of what they come to. */
export const away = {
  newTitle: 'Readings from away',
  what: 'What came back?',
  home: 'Readings at home',
  ambulatory: 'A recording over 24 hours',
  how: 'How does it come in?',
  typed: 'Typed from paper',
  pasted: 'Pasted',
  file: 'A file',
  diary: 'The diary that came back',
  noDiary: 'None of those handed out',
  diaryFrom: (f: Text & { days: number }, say: Say) => `from ${f.text}, ${say.counted(f.days, DAYS)}`,
  readings: 'The readings',
  gridHint:
    'Type the digits alone: they go on to the next number by themselves, and stop at one that cannot be. Enter and the arrows move, Backspace in an empty place goes back. A whole reading such as 142/88 74 can be typed or pasted anywhere, also several lines of them. What stays blank is not kept.',
  dangerAt: (f: Text) => `${f.text}:`,
  dangerBelow: 'Act first: what to do stands below',
  otherWayRound: 'The second number is over the first. The other way round?',
  itIs: (f: Text) => `It is ${f.text}`,
  digitMissing: (f: { typed: number; usual: number }, say: Say) =>
    `${say.short(f.typed)} stands far from the others, which are about ${say.number(f.usual)}. Was a digit left out or typed twice?`,
  typeAgain: 'Type it again',
  firstDay: 'First day',
  firstDayMissing: 'Give the first day of the page: the other days follow from it.',
  days: 'Days',
  morningAbout: 'Mornings at about',
  eveningAbout: 'Evenings at about',
  byClockOf: (f: Text) => `By the clock of ${f.text}.`,
  day: (f: Text & { day: number }, say: Say) =>
    f.text === '' ? `Day ${say.short(f.day)}` : `Day ${say.short(f.day)}, ${f.text}`,
  morning: 'Morning',
  evening: 'Evening',
  other: 'Other times',
  about: 'about',
  at: 'at',
  timeOf: (f: { day: string; part: string }) => `Time, ${f.day}, ${f.part}`,
  systolic: 'Systolic',
  diastolic: 'Diastolic',
  pulse: 'Pulse',
  cell: (f: { day: string; part: string; reading: number; cell: string }, say: Say) =>
    `${f.cell}, ${f.day}, ${f.part}, reading ${say.short(f.reading)}`,
  paste: 'Lines from a spreadsheet or a message',
  pasteHint:
    'With or without headings: a time and 142/88 74 on each line, or a column for each number. Nothing is kept before you sign.',
  pasteUntimed: 'Lines without a time go into “Typed from paper”: paste them into its first place.',
  chooseFile: 'File',
  otherFile: 'Another file',
  fileHint:
    'A table of text (CSV), with commas, semicolons or tabs, or a FHIR bundle. It stays on this device until it is signed.',
  tooLarge: (f: { megabytes: number }, say: Say) =>
    `This file is larger than ${say.short(f.megabytes)} MB, far more than one person’s readings. Nothing of it was taken.`,
  ofRecording: 'What the recorder does not say',
  asleepFrom: 'Asleep from',
  asleepTo: 'Awake again at',
  napFrom: 'Slept by day from',
  napTo: 'Slept by day until',
  napAlone: 'A sleep by day is told beside the hours of the night: say those too.',
  napWithin: 'The sleep by day lies within the hours of the night: look at the times.',
  asleepUnknown: 'The sleep times are not known',
  asleepHint: (f: { from: string; to: string }) =>
    `By the person’s own diary. Where they are not known, day and night are told by marks in the table, or else by the hour: the night is then ${f.from} to ${f.to} by the clock, whenever the person slept. They can be put right after it is signed.`,
  putSleepRight: 'Put the sleep times right',
  sleepSame: 'These are the times that stand already.',
  'sleepNot-waits':
    'Its sleep times are put right by whoever signed it, or once a supervisor has countersigned it: whoever changes it can no longer countersign.',
  'sleepNot-others':
    'Its sleep times are put right by a clinician: a learner changes only what they signed themselves.',
  sleepWasPutRight: (f: { who: string; at: string; before: string; after: string; why: string }) =>
    `Sleep times put right by ${f.who}, ${f.at}: ${f.after}; before that, ${f.before}. Reason: “${f.why}”.`,
  sleepSaid: (f: { night: string; nap: string | null }) =>
    `asleep ${f.night}${f.nap === null ? '' : `, a nap ${f.nap}`}`,
  sleepNotKnown: 'not known',
  nightByClockYet:
    'Until it is said when the person slept, night is a few hours of the clock: whether there is enough, and what the night comes to, can change with it.',
  sayAsleep: 'Say when the person slept, or that it is not known.',
  scheduled: 'Readings it was set to take',
  scheduledWrong: 'The number of readings that were planned is a whole number, or blank.',
  questions: 'To be said first',
  questionsSay:
    'The table alone does not say how all of it is to be read. Nothing is guessed: nothing is used before you say it.',
  askDates: (f: Text & Line, say: Say) =>
    `Row ${say.short(f.line)} says “${f.text}”. In which order do the dates stand?`,
  dmy: 'day, month, year',
  mdy: 'month, day, year',
  ymd: 'year, month, day',
  askUnit: (f: Text & Line, say: Say) =>
    `Row ${say.short(f.line)} says “${f.text}”. In which unit are the pressures?`,
  askZone: (f: Text & Line, say: Say) =>
    `Row ${say.short(f.line)} says “${f.text}”. In which time zone was its clock?`,
  zoneHint:
    'The zone by its name, such as Europe/Lisbon. This device’s own is filled in; change it if the person was elsewhere.',
  zoneWrong: 'There is no zone of that name. Write it as Europe/Lisbon.',
  zoneIs: 'Use this zone',
  askSwapped: (f: Text & Line, say: Say) =>
    `In most rows the systolic is under the diastolic, first in row ${say.short(f.line)}: the two columns look swapped.`,
  swap: 'Swap them',
  asTheyStand: 'They are right as they stand',
  columns: 'What each column is',
  columnsMissing: (f: { parts: readonly string[] }, say: Say) =>
    `No column was found for ${say.allOf(f.parts)}: say which it is.`,
  columnsRemembered: 'As somebody set it on this device for a table with the same headings.',
  column: (f: Text & { column: number }, say: Say) =>
    f.text === '' ? `Column ${say.short(f.column)}` : `Column ${say.short(f.column)}: ${f.text}`,
  notRead: 'not read',
  asRead: (f: { shown: number; readings: number }, say: Say) =>
    f.shown < f.readings
      ? `The first ${say.short(f.shown)} of ${say.counted(f.readings, READINGS)}, as read`
      : `${say.counted(f.readings, READINGS)}, as read`,
  columnTaken: (f: Text & { role: string }) => `${f.text} (${f.role})`,
  alsoTaken: (f: Text) => `Taken beside them: ${f.text}.`,
  columnsNotRead: (f: Text) => `Not read: ${f.text}.`,
  'column-time': 'date and time',
  'column-date': 'date',
  'column-clock': 'time of day',
  'column-systolic': 'systolic',
  'column-diastolic': 'diastolic',
  'column-pulse': 'pulse',
  'column-pressure': 'both pressures in one',
  'column-note': 'note',
  'column-asleep': 'asleep or not',
  'column-arm': 'which arm',
  'column-device': 'device',
  'column-site': 'where the cuff was',
  'column-irregular': 'irregular pulse or not',
  'column-started': 'started by hand or by the clock',
  'column-part': 'morning or evening',
  afterQuestions: 'What it comes to stands here once the questions above are answered.',
  refused: 'Rows that cannot be used as they stand',
  refusedCount: (f: { rows: number }, say: Say) =>
    f.rows === 0
      ? 'Every row can be used'
      : `${say.counted(f.rows, ROWS)} that cannot be used as ${say.form(f.rows, { one: 'it stands', other: 'they stand' })}`,
  refusedHint:
    'Put it right here by the paper, or leave it: what is left is kept in the list as it stood, and never in a mean.',
  refusedInGrid:
    'What is wrong stands beside the cell. What is left so is kept as it stood, and never in a mean.',
  line: (f: Line, say: Say) => `Row ${say.short(f.line)}`,
  gridRow: (f: { day: number; part: string; reading: number }, say: Say) =>
    `Day ${say.short(f.day)}, ${f.part}, reading ${say.short(f.reading)}`,
  inColumn: (f: Text & { column: number }, say: Say) =>
    f.column === 0 ? `${f.text}` : `${f.text} (column ${say.short(f.column)})`,
  expectedCame: (f: { expected: string; came: string }) => `expected ${f.expected}; came ${f.came}`,
  mend: (f: Line, say: Say) => `Row ${say.short(f.line)} as it should be`,
  readAgain: (f: Line, say: Say) => `Read row ${say.short(f.line)} again`,
  mended: (f: Line, say: Say) => `Row ${say.short(f.line)} was put right and is used. It said:`,
  unmend: (f: Line, say: Say) => `Row ${say.short(f.line)} as it came`,
  comesTo: 'What it comes to',
  already: (f: Readings, say: Say) =>
    `${say.counted(f.readings, READINGS)} ${say.form(f.readings, { one: 'is', other: 'are' })} in the record already and ${say.form(f.readings, { one: 'is', other: 'are' })} not kept again.`,
  continues: (f: Readings & { from: string; until: string }, say: Say) =>
    `${say.form(f.readings, { one: 'This reading goes', other: 'These readings go' })} on with the series of ${f.from} to ${f.until}, which is in the record.`,
  joinsNothing: (f: Readings & { from: string; until: string }, say: Say) =>
    `The series of ${f.from} to ${f.until}, with which ${say.form(f.readings, { one: 'this reading goes', other: 'these readings go' })} on, is a learner’s and waits to be countersigned: nothing is added to it by somebody else until then. Countersign it first, or keep ${say.form(f.readings, { one: 'this one', other: 'these' })} apart, as a series of ${say.form(f.readings, { one: 'its', other: 'their' })} own.`,
  keptApart: (f: Readings & { from: string; until: string; why: string }, say: Say) =>
    `${say.form(f.readings, { one: 'This reading is', other: 'These readings are' })} kept apart from the series of ${f.from} to ${f.until}, with which ${say.form(f.readings, { one: 'it', other: 'they' })} would go on: ${f.why}.`,
  keptApartPutRight: 'If that is not so, put right what was said here.',
  'apart-treated': 'whether medicine is taken was said otherwise there',
  'apart-diary': 'another diary was given there',
  'apart-device': 'another device was named there',
  'apart-site': 'the cuff was on another site there (wrist or upper arm)',
  'apart-too-many': 'both together would be too many readings for one series',
  'joins-add': 'Add to that series: it is worked out anew over all of it',
  'joins-apart': 'Keep apart, as a series of its own',
  sayJoins: 'Say whether it is added to the series that it goes on with, or kept apart.',
  moreDays: 'More days of the same readings.',
  addedTo: (f: Readings & { who: string; at: string }, say: Say) =>
    `${say.counted(f.readings, { one: 'more reading', other: 'more readings' })} added by ${f.who}, ${f.at}.`,
  nothingNew: 'Every reading of it is in the record already: it adds nothing.',
  noReading: 'There is no reading in it that can be used.',
  stillToCome: (f: Text) =>
    `A reading on ${f.text} is still to come: see that the first day, the diary and the dates are right.`,
  tooMany: (f: { most: number }, say: Say) =>
    `At most ${say.counted(f.most, READINGS)} can be in one series.`,
  before: 'Before you sign',
  whichArm: 'On which arm?',
  whichDevice: 'With which monitor and cuff?',
  whichHint: 'Said once for all of it: a reading that names its own arm or device keeps that.',
  treated: 'Did the person take medicine for the pressure then?',
  'treated-yes': 'Yes',
  'treated-no': 'No',
  'treated-unknown': 'Not known',
  features: 'Does the person have any of the danger signs now?',
  'features-notAsked': 'Not asked: the person cannot be reached',
  'features-none': 'Asked: none of them',
  'features-some': 'Asked: yes, these',
  note: 'Note',
  noteTooLong: 'The note is too long beside the one that the series has already.',
  noteOver: (f: { over: number; most: number }, say: Say) =>
    `The series that these days go on with has a note already, and both are kept as one of ${say.short(f.most)} characters at most: ${say.counted(f.over, { one: 'character', other: 'characters' })} too many. Shorten this one, or keep these days as a series of their own.`,
  armsUnread: (f: { lines: string; count: number }) =>
    `${f.count === 1 ? 'Line' : 'Lines'} ${f.lines}: what stands there of the arm names neither the left nor the right, so ${f.count === 1 ? 'this reading is' : 'these readings are'} kept with no arm, whatever is said below for all.`,
  notesCut: (f: { lines: string; count: number; most: number }, say: Say) =>
    `${f.count === 1 ? 'Line' : 'Lines'} ${f.lines}: of a note the first ${say.short(f.most)} characters are kept. Keep the file for the rest.`,
  notFinished: (f: { text: string }) => `“${f.text}” is not finished: type the rest of it, or clear it.`,
  notFinishedRow: (f: { text: string }) =>
    `“${f.text}” is not finished: type the other number, or clear the row. Left by a touch elsewhere it is kept as it stands, and seen: one number of a pressure as a reading without the other, a pulse alone as a refused row.`,
  sign: 'Sign',
  signHint: 'What is signed goes into the record as it came, refused rows and all.',
  startAgain: 'Discard it and start again …',
  startAgainSure: 'Discard every reading that stands on this page?',
  actFirst: 'Act first',
  actFirstClosed: 'To act on first: closed',
  whereFrom: 'Where this limit comes from',
  whatWasToDo: 'What was to be done',
  tellAndClose: 'Tell somebody, and close it',
  nothingLeftOut: 'Nothing was left out.',
  leftOut: (f: Readings, say: Say) => `Left out: ${say.short(f.readings)}`,
  whatLeftOut: 'What was left out',
  readingsAt: (f: Readings & { parts: readonly string[] }, say: Say) =>
    `${say.counted(f.readings, READINGS)}: ${f.parts.join('; ')}${f.readings > f.parts.length ? ' …' : ''}`,
  refusedRows: (f: { rows: number }, say: Say) =>
    `${say.counted(f.rows, ROWS)} could not be read, and ${say.form(f.rows, { one: 'is', other: 'are' })} kept as ${say.form(f.rows, { one: 'it stood', other: 'they stood' })}.`,
  refusedSaid: 'The rows that could not be read, kept as they stood.',
  meanOf: (f: { used: number; readings: number }, say: Say) =>
    `mmHg, the mean of ${say.short(f.used)} of ${say.counted(f.readings, READINGS)}`,
  wholeMeanOf: (f: { used: number; readings: number }, say: Say) =>
    `mmHg, the mean of ${say.short(f.used)} of ${say.counted(f.readings, READINGS)} over 24 hours`,
  dayNote: 'Medicines, symptoms',
  dayNoteOf: (f: Text) => `Medicines, symptoms, ${f.text}`,
  dayNoteAlone:
    'No reading of this day yet: the note is kept with its first one, or with the whole diary where there is none.',
  pulseIs: (f: { pulse: number }, say: Say) => `pulse ${say.number(f.pulse)}`,
  categoryIs: (f: Text) => `Category: ${f.text}.`,
  patternIs: (f: Text) => `Pattern: ${f.text}.`,
  high: 'It is at or over the limit of this rule set.',
  notHigh: 'It is under the limit of this rule set.',
  dayNight: (f: { day: string; night: string }) => `By day ${f.day}, by night ${f.night}.`,
  byRules: (f: Text) => `By ${f.text}.`,
  noRules: 'No protocol was chosen here: means alone, and no limit.',
  seriesTitle: 'Readings from away',
  homeTitle: (f: { from: string; until: string }) =>
    f.from === f.until ? `At home, ${f.from}` : `At home, ${f.from} to ${f.until}`,
  recordingTitle: (f: { from: string; until: string }) => `Over 24 hours, from ${f.from}`,
  withoutChart:
    'The chart of this person could not be fetched. Readings can be typed and signed; they wait on this device. What only the chart says (a pregnancy, treatment, a diary that is out, an earlier series) is not counted in: read it first where it matters.',
  nobodyKnown:
    'Who this is, is not known on this device while the server is away. What is typed stays here; sign it once the name stands above.',
  withoutRules:
    'The rules of this place are not known on this device yet. What is typed stays here; sign it once the server was reached.',
  noSuchSeries: 'There is no such series in this record.',
  preliminary:
    'Preliminary: brought in by somebody who is learning, and no supervisor has signed for it yet.',
  inError: 'This series was entered in error: it counts for nothing.',
  broughtIn: (f: { who: string; at: string }) => `Brought in by ${f.who}, ${f.at}.`,
  figureScrolls: 'This is wider than the screen: swipe it to the side for the rest →',
  timeAbout: (f: Text) => `about ${f.text}`,
  laterReading: (f: Text & { place: number }, say: Say) =>
    `${f.text}, ${PLACES[f.place - 2] ?? `${say.short(f.place)}th`} reading`,
  morningMinusEvening: 'Morning minus evening',
  sd: 'SD of readings',
  howSure: 'How sure is it?',
  chanceLead:
    'The chance that the usual level is at or above a limit, under the stated assumptions. It is a chance of where the level lies, never of a disease, and the category above stands whatever it says.',
  withOffice: (f: { visits: number }, say: Say) =>
    `with ${say.counted(f.visits, { one: 'office visit', other: 'office visits' })} too`,
  atOrAbove: 'Usual level at or above',
  componentAt: (f: { component: string; mmHg: number }, say: Say) => `${f.component} ${say.limit(f.mmHg)}`,
  chance: (f: { share: number }, say: Say) =>
    f.share < 0.01 ? 'under 1 %' : f.share > 0.99 ? 'over 99 %' : say.percent(f.share),
  usualIs: (f: { component: string; mean: number; low: number; high: number }, say: Say) =>
    `${f.component}: usual level about ${say.number(f.mean)}, 95 % interval ${say.number(f.low)} to ${say.number(f.high)}.`,
  settled: (f: { mmHg: number }, say: Say) =>
    `Against ${say.limit(f.mmHg)}, this stands clear already: four to one or clearer.`,
  notSettled: (f: { mmHg: number }, say: Say) =>
    `Against ${say.limit(f.mmHg)}, more readings of the same kind will not settle it.`,
  settledAfter: (f: { days: number; mmHg: number }, say: Say) =>
    `Against ${say.limit(f.mmHg)}, ${say.counted(f.days, { one: 'more day', other: 'more days' })} like these would settle it.`,
  assumptions: 'What this assumes',
  officeTitle: 'Beside the office',
  officeWas: (f: { pressure: string; visits: number; each: string }, say: Say) =>
    f.visits === 1
      ? `Office ${f.each}`
      : `Office ${f.pressure}, the mean of ${say.counted(f.visits, { one: 'visit', other: 'visits' })}: ${f.each}`,
  officeVisit: (f: { pressure: string; at: string; rounds: number }, say: Say) =>
    `${f.pressure} on ${f.at}${f.rounds === 1 ? '' : ` (${say.counted(f.rounds, { one: 'round', other: 'rounds' })})`}`,
  officeWithin: (f: { days: number }, say: Say) =>
    `Taken are the signed office rounds within ${say.counted(f.days, DAYS)} of these readings that come to a mean of two readings or more, which is a choice of this program; rounds of one day are one visit.`,
  officeLeft: (f: Text) => `Not taken, though as near: ${f.text}.`,
  officeNone: (f: Text & { days: number }, say: Say) =>
    `No office pressure stands beside these readings. Not taken, though within ${say.counted(f.days, DAYS)} of them: ${f.text}.`,
  'officeLeft-no-mean': (f: { rounds: number }, say: Say) =>
    `${say.counted(f.rounds, { one: 'round', other: 'rounds' })} of a single reading, or with too few for ${f.rounds === 1 ? 'its' : 'their'} protocol`,
  'officeLeft-disputed': (f: { rounds: number }, say: Say) =>
    `${say.counted(f.rounds, { one: 'round', other: 'rounds' })} with amendments that disagree`,
  'officeLeft-not-countersigned': (f: { rounds: number }, say: Say) =>
    `${say.counted(f.rounds, { one: 'round', other: 'rounds' })} of a learner that nobody countersigned`,
  together: (f: Text) => `Together ${f.text}.`,
  dayByDay: 'Day by day',
  dayColumn: 'Day',
  dayMean: 'Mean of the day',
  dayLeftOut: 'left out',
  dayToDay: (f: { days: number; systolic: number; diastolic: number }, say: Say) =>
    `Day to day: SD of ${say.counted(f.days, { one: 'daily mean', other: 'daily means' })} ${say.number(f.systolic, 1)}/${say.number(f.diastolic, 1)}.`,
  extremes: (f: { highest: string; lowest: string }) =>
    `Highest ${f.highest}, lowest ${f.lowest}: shown, and not what the category goes by.`,
  over24: 'mmHg over 24 hours',
  valid: 'Enough to go by.',
  notValid: 'Not enough to go by.',
  quality: (
    f: {
      scheduled: number;
      isPlanSaid: boolean;
      kept: number;
      edited: number;
      failed: number;
      refused: number;
      percent: number | null;
      day: number;
      night: number;
      gap: number | null;
      byHand: number;
      byHandUsed: number;
    },
    say: Say,
  ) => {
    const came = `readings that came${f.byHand === 0 ? '' : ' by the schedule'} (how many were planned was not said)`;
    const planned = `${say.short(f.kept)} of ${say.short(f.scheduled)} ${f.isPlanSaid ? 'planned readings' : came} are used${f.percent === null ? '' : ` (${say.number(f.percent)} %)`}; ${say.short(f.edited)} edited out, ${say.short(f.failed)} failed`;
    const byHand = `${say.short(f.byHand)} started by hand, ${say.short(f.byHandUsed)} used`;
    const parts =
      f.scheduled === 0 && f.byHand > 0
        ? [`${byHand}, none by a schedule`]
        : [planned, ...(f.byHand === 0 ? [] : [`besides, ${byHand}`])];
    return `${parts.join('; ')}${f.refused === 0 ? '' : `, ${say.counted(f.refused, ROWS)} could not be read`}; ${say.short(f.day)} by day, ${say.short(f.night)} by night${f.gap === null ? '' : `; longest gap ${say.short(f.gap)} h`}.`;
  },
  meanColumn: 'Mean',
  limitColumn: 'High from',
  sdColumn: 'SD',
  leastColumn: 'Lowest',
  mostColumn: 'Highest',
  loadColumn: 'Load, %',
  meanArterial: 'Mean arterial',
  pulsePressure: 'Pulse pressure',
  askStiffness: 'Work out the stiffness index too',
  count: (f: Readings, say: Say) => say.counted(f.readings, READINGS),
  area: (f: { systolic: number; diastolic: number }, say: Say) =>
    `area over it ${say.number(f.systolic, 1)}/${say.number(f.diastolic, 1)} mmHg h`,
  variation: 'How it varies',
  weightedSd: 'SD, day and night by their hours (mmHg)',
  cvPercent: 'SD as percent of the mean',
  arv: 'From reading to reading (mmHg)',
  arvTimeWeighted: 'From reading to reading, by time (mmHg)',
  arvWithoutGaps: (f: { hours: number }, say: Say) =>
    `From reading to reading, none over more than ${say.short(f.hours)} h (mmHg)`,
  arvDay: 'From reading to reading, by day (mmHg)',
  arvNight: 'From reading to reading, by night (mmHg)',
  rmssd: 'From reading to reading, root mean square (RMSSD)',
  sdAboutTrend: 'SD about a straight line in time',
  populationSd: 'SD with divisor n, not n − 1',
  range: 'Highest minus lowest',
  overMean: 'Highest minus mean',
  underMean: 'Mean minus lowest',
  rises: 'Every morning rise',
  otherRises: 'By the other definitions',
  riseColumn: 'Rise',
  curve: 'A curve fitted to it',
  curveSays:
    'A smooth wave of 24 hours, alone and with one of 12 hours: it describes the recording and judges nothing. ± is the standard error.',
  mesor: 'Level',
  amplitude: 'Up and down by',
  peak: 'Highest at',
  'curve-one': 'one wave',
  'curve-two': 'two waves',
  asItStood: 'As it stood',
  besideTitle: 'Beside another series',
  besideWhich: 'Before and after: which other one?',
  besideNone: 'none',
  besideUnlike: 'The two are not alike, or one of them has too few readings: compare them with care.',
  besideReadings: 'Readings in the mean',
  besideDropped: (f: Readings, say: Say) => `${say.counted(f.readings, READINGS)} left out`,
  besideOpen: (f: Text) => `${f.text}: something there is still to be acted on; see its own page first.`,
  besidePreliminary: (f: Text) => `${f.text}: by a learner, and nobody qualified has countersigned it.`,
  besidePdf: 'Save both as PDF',
  besideHere: 'Before and after: two series side by side',
  besideCount: (f: Readings & { days: number }, say: Say) =>
    `${say.counted(f.readings, READINGS)} on ${say.counted(f.days, DAYS)}`,
  changeHome: (f: Change & { sd: number }, say: Say) =>
    `How sure is the change? In a published study, two systolic means at home of one person, a year apart, differed by an SD of ${say.number(f.sd, 1)} mmHg. ${changeOf(f, '')} Of the diastolic no such figure was found. What else changed besides the medicines is not known here.`,
  changeAwake: (f: Change & { least: string; most: string }, _say: Say) =>
    `How sure is the change? By published studies, the awake systolic mean of one person, recorded again within a month, lay between ${f.least} and ${f.most} mmHg of the first in 95 of 100. ${changeOf(f, ' by day')} For the means of 24 hours and of the night, and for the diastolic, no such figure was found. What else changed besides the medicines is not known here.`,
  laterMinusEarlier: 'Later minus earlier',
  allReadings: 'All readings',
  byHand: 'By hand',
  allTyped: 'Every reading was typed from paper.',
  takenOut: (f: Text) => `Taken out by hand: ${f.text}`,
  putBack: (f: Text) => `Put back by hand: ${f.text}`,
  putRight: (f: Text) => `put right before signing; it said: ${f.text}`,
  wasTyped: 'typed from paper',
  atWrist: 'at the wrist',
  wasAsleep: 'asleep',
  takeOut: 'Take out',
  putItBack: 'Put back',
  'forGood-duplicate': 'It cannot be put back: it would count twice.',
  'forGood-failed': 'It cannot be put back: it has no numbers.',
  'forGood-wrist': 'It cannot be put back: wrist and arm are never in one mean.',
  'forGood-after-24-hours': 'It cannot be put back: a recording is judged over its first 24 hours.',
  takeOutOf: (f: Text) => `Take out ${f.text}`,
  putBackOf: (f: Text) => `Put back ${f.text}`,
  byHandHint:
    'Take a reading out or put one back and see the mean move. Nothing is kept before you give a reason.',
  moves: (f: { before: string; after: string; used: number }, say: Say) =>
    `The mean goes from ${f.before} to ${f.after}, of ${say.counted(f.used, READINGS)}.`,
  reason: 'Why?',
  reasonMissing: 'Say why in a few words.',
  keepDecision: (f: Readings, say: Say) => `Keep this for ${say.counted(f.readings, READINGS)}`,
  undo: 'Leave it as it was',
  leavingTitle: (f: Readings, say: Say) =>
    `What you tried of ${say.counted(f.readings, READINGS)} is not kept yet`,
  leavingSays:
    'If you leave this page now, it is as if nothing was tried: the mean stands as it was. To keep it, say why and touch Keep.',
  leavingStay: 'Stay on this page',
  leavingGo: 'Leave without keeping it',
  asTable: 'The same as a table',
  howTaken: 'How it was taken',
  readOut: 'Along the drawing',
  readOutHint: 'Move over the drawing or along the line: what stands there is written out.',
  savePdf: 'Save as PDF',
  print: 'Print',
} as const;
