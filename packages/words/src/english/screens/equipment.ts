import type { Say } from '../../say.js';

const READINGS = { one: 'reading', other: 'readings' };
const PEOPLE = { one: 'person', other: 'people' };
const DAYS = { one: 'day', other: 'days' };
const MONTHS = { one: 'month', other: 'months' };
const PRESSURES = { one: 'pressure', other: 'pressures' };

type Text = { text: string };

type Limit = { limit: number };

/** What the place measures with: gauges with their checks, cuffs by room, and what follows when a gauge fails. */
export const equipment = {
  title: 'Equipment',
  lead: 'The gauges and cuffs of this place. A gauge is chosen with one touch when the cuff is put on, and each reading keeps it.',
  gauges: 'Gauges',
  noGauges: 'No gauge is named yet. Name the first one as it stands on its label.',
  cuffs: 'Cuffs by room',
  noCuffs: 'No cuff is named yet.',
  noRoom: 'No room given',
  gone: 'Here no more',
  doubts: 'Readings in doubt',
  doubtOpen: (f: { check: string; failed: string }) => `${f.check} failed on ${f.failed}.`,
  doubtSince: (f: Text) => `It was last good on ${f.text}.`,
  doubtNever: 'It was never good before, so every reading taken with it is in doubt.',
  doubtUntil: (f: Text) => `It was repaired or good again on ${f.text}.`,
  doubtCount: (f: { readings: number; people: number }, say: Say) =>
    `${say.counted(f.readings, READINGS)} of ${say.counted(f.people, PEOPLE)} in between:`,
  inDoubt: (f: { readings: number }, say: Say) => `${say.counted(f.readings, READINGS)} in doubt`,
  doubtNone: 'No reading in between names this gauge.',
  doubtFollowsGauge: 'Leave the gauge out of use until it is repaired and compared.',
  doubtFollowsReadings:
    'Nothing in any chart was changed: open each reading, take the pressure again with another gauge where it mattered (near a limit, or where somebody acted on it), and where it was wrong amend it with the reason “equipment fault”.',
  doubtUnnamed: 'Readings that name no gauge are not among them.',
  persons: (f: { who: string; readings: number }, say: Say) =>
    `${f.who}: ${say.counted(f.readings, READINGS)}`,
  readingAt: (f: { written: string; at: string }) => `${f.written}, ${f.at}`,
  addGauge: 'Add a gauge',
  name: 'What stands on its label',
  nameHint: 'Such as “Gauge 3” or “trolley”.',
  nameMissing: 'Give the gauge the name that stands on it.',
  type: 'Kind',
  room: 'Room or place',
  serial: 'Serial number',
  note: 'Anything else',
  keepGauge: 'Keep this gauge',
  addCuff: 'Add cuffs of a room',
  size: 'Scheme and size',
  chooseSize: 'Choose a size',
  sizeMissing: 'Choose the size of the cuff.',
  pieces: 'How many',
  piecesWrong: 'Give a whole number from 1 to 999.',
  bladder: (f: { width: number; length: number }, say: Say) =>
    `bladder ${say.lengthNumber(f.width)} × ${say.length(f.length)}`,
  bladderMeasured: 'as measured',
  bladderWidth: (f: { unit: string }) => `Bladder width (${f.unit})`,
  bladderLength: (f: { unit: string }) => `Bladder length (${f.unit})`,
  bladderHint: 'Only where a tape says otherwise than the scheme; leave both blank else.',
  bladderWrong: (f: { width: number; length: number }, say: Say) =>
    `Give width and length, such as ${say.lengthNumber(f.width)} and ${say.length(f.length)}, or leave both blank.`,
  arms: (f: { largest: number }, say: Say) => `arms to ${say.length(f.largest)}`,
  armsBetween: (f: { smallest: number; largest: number }, say: Say) =>
    `arms ${say.lengthNumber(f.smallest)} to ${say.length(f.largest)}`,
  armsAbove: (f: { smallest: number; largest: number }, say: Say) =>
    `arms above ${say.lengthNumber(f.smallest)} to ${say.length(f.largest)}`,
  cuffIs: (f: { pieces: number; text: string }, say: Say) => `${say.short(f.pieces)} × ${f.text}`,
  keepCuff: 'Keep these cuffs',
  kept: 'Kept.',
  end: 'No longer here',
  endWhy: 'Why, if it matters',
  endNow: 'It is no longer here',
  right: 'Put its name or room right',
  rightWhy: 'Why',
  rightSlip: 'It was written wrongly',
  rightChanged: 'It was so until now',
  rightText: 'What happened, in a few words',
  rightTextMissing: 'Say in a few words what happened, such as “moved to room 4”.',
  rightSame: 'Nothing is changed yet.',
  rightKeep: 'Keep it so',
  earlier: 'What was said of it before',
  earlierUntil: (f: { who: string; at: string; why: string }) => `until ${f.at}, ${f.who}: ${f.why}`,
  gaugeTitle: 'Gauge',
  noSuchGauge: 'There is no such gauge here.',
  checks: 'How it stands',
  log: 'Add to its log',
  logOf: 'What was done',
  logHistory: 'Log, newest first',
  logNone: 'Nothing was noted of it yet.',
  logIncomplete: 'incomplete',
  rest: 'What it shows with no pressure in it, mmHg',
  restHint: 'Tube open, eye level with the needle. Below zero with a minus sign.',
  reference: 'Held against',
  referenceHint: 'Which gauge, and when that one was calibrated.',
  points: 'Both gauges on one tube, read together, mmHg',
  pointOther: 'Other gauge',
  pointThis: 'This gauge',
  pointOtherNo: (f: { number: number }, say: Say) => `Other gauge, point ${say.short(f.number)}`,
  pointThisNo: (f: { number: number }, say: Say) => `This gauge, point ${say.short(f.number)}`,
  leakHow: 'Cuff round something firm, pumped up, valve shut, and watched.',
  from: 'Shown at the start, mmHg',
  to: 'Shown at the end, mmHg',
  seconds: 'Watched for, s',
  droppedSays: 'Whatever was good before is due again.',
  repairedSays: 'Whatever was good or failed before is due again.',
  keepLog: 'Keep',
  errorLine: 'Entered in error',
  errorNow: 'Mark as entered in error',
  inError: 'entered in error',
  limits: 'How far out, how often',
  limitsLead: 'What this page goes by:',
  limitIs: (f: { text: string; source: string }) => `${f.text}: ${f.source}`,
  mostRestMmHg: (f: Limit, say: Say) =>
    `Out of use when it shows more than ${say.limit(f.limit)} mmHg at rest`,
  mostErrorMmHg: (f: Limit, say: Say) =>
    `Out of use when it is more than ${say.limit(f.limit)} mmHg out at any pressure`,
  fewestPoints: (f: Limit, say: Say) => `Compared at ${say.counted(f.limit, PRESSURES)} or more`,
  mostLeakMmHgPerMinute: (f: Limit, say: Say) =>
    `Leaks when it loses more than ${say.limit(f.limit)} mmHg a minute`,
  zeroDays: (f: Limit, say: Say) =>
    `Zero noted every ${say.counted(f.limit, DAYS)}, and looked at before each reading`,
  comparisonMonths: (f: Limit, say: Say) =>
    `Aneroid and electronic gauges compared every ${say.counted(f.limit, MONTHS)}, and after a fall or a repair`,
  mercuryComparisonMonths: (f: Limit, say: Say) =>
    `Mercury columns and automatic devices compared every ${say.counted(f.limit, MONTHS)}`,
  leakMonths: (f: Limit, say: Say) => `Leak test every ${say.counted(f.limit, MONTHS)}`,
  confirm: 'Your local protocol and the maker’s instructions come first.',
  atRound: (f: { name: string; text: string }) => `${f.name} (${f.text})`,
  standsNow: (f: Text) => `now: ${f.text}`,
  unknown: 'a gauge that is not listed here',
} as const;
