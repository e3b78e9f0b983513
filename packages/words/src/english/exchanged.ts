import type { Say } from '../say.js';
import { BEATS, BREATHS } from './screens/nouns.js';

const READINGS = { one: 'reading', other: 'readings' };
const DAYS = { one: 'day', other: 'days' };

/** What a file for another program says in words beside its codes: how a value was got, and what its reader must know. */
export const exchanged = {
  countedPulse: (f: { n: number; seconds: number }, say: Say) =>
    `${say.counted(f.n, BEATS)} counted in ${say.short(f.seconds)} s`,
  countedBreaths: (f: { n: number; seconds: number }, say: Say) =>
    `${say.counted(f.n, BREATHS)} counted in ${say.short(f.seconds)} s`,
  typedRate: 'a rate was typed; how it was counted is not known',
  typedRateOver: (f: { seconds: number }, say: Say) =>
    `a rate was typed, counted over ${say.short(f.seconds)} s`,
  brokenOff: 'count broken off: no number',
  tappedPulse: (f: { beats: number }, say: Say) => `${say.counted(f.beats, BEATS)} tapped one by one`,
  tappedBreaths: (f: { beats: number }, say: Say) => `${say.counted(f.beats, BREATHS)} tapped one by one`,
  phaseFive: 'auscultation; diastolic at disappearance of sounds (phase 5)',
  toZero: (f: { muffled: number }, say: Say) =>
    `auscultation; sounds down to zero, phase 4 (muffling) = ${say.short(f.muffled)} mmHg`,
  homeSeries: 'Taken at home',
  ambulatorySeries: 'By a recorder, over 24 hours',
  startedByHand: 'Started by hand.',
  timeNotWritten: 'Nobody wrote down the time: the usual one of its sitting.',
  minuteNotWritten: (f: { place: number; at: string }, say: Say) =>
    `Reading ${say.short(f.place)} of the sitting of ${f.at}: its own minute was not written down.`,
  homeFromTo: (f: { from: string; until: string }) => `Readings at home, ${f.from} to ${f.until}.`,
  recordingFromTo: (f: { from: string; until: string }) =>
    `Recording over 24 hours, ${f.from} to ${f.until}.`,
  byRuleSet: (f: { title: string; preset: string; rule: string }) =>
    `Averaged by ${f.title} (${f.preset}), rule ${f.rule}.`,
  notByRuleSet: (f: { rule: string; preset: string }) =>
    `Averaged by the general rules, rule ${f.rule}: what it came in under (${f.preset}) is not kept here.`,
  noRuleSet: (f: { rule: string }) =>
    `No rule set was chosen; averaged by the general rules, rule ${f.rule}.`,
  meanOfSeries: (f: { mean: string; rule: string }) => `Mean ${f.mean} mmHg. ${f.rule}`,
  noMean: (f: { rule: string }) => `No mean. ${f.rule}`,
  homeMeanOf: (f: { used: number; days: number; left: number }, say: Say) =>
    `${say.counted(f.used, READINGS)} used on ${say.counted(f.days, DAYS)}, ${say.short(f.left)} left out.`,
  recordingOf: (f: { used: number; left: number }, say: Say) =>
    `${say.counted(f.used, READINGS)} used, ${say.short(f.left)} left out.`,
  dayLongMeanOf: (f: { used: number; left: number; weighting: string }, say: Say) =>
    `Mean of 24 hours (${f.weighting}): ${say.counted(f.used, READINGS)} used, ${say.short(f.left)} left out.`,
  dayMeanOf: (f: { used: number; by: string }, say: Say) =>
    `Mean by day of ${say.counted(f.used, READINGS)}; ${f.by}.`,
  nightMeanOf: (f: { used: number; by: string }, say: Say) =>
    `Mean by night of ${say.counted(f.used, READINGS)}; ${f.by}.`,
  dayAndNight: (
    f: { day: string; night: string; dayUsed: number; nightUsed: number; by: string },
    say: Say,
  ) =>
    `By day ${f.day} mmHg (${say.counted(f.dayUsed, READINGS)}), by night ${f.night} mmHg (${say.short(f.nightUsed)}); ${f.by}.`,
  leftOutFor: (f: { readings: number; reason: string }, say: Say) =>
    `Left out, ${say.counted(f.readings, READINGS)}: ${f.reason}`,
  decidedByHand: (f: { readings: number }, say: Say) =>
    `Decided by hand, in or out of the mean: ${say.counted(f.readings, READINGS)}.`,
  actNow: (f: { text: string }) => `Act now: ${f.text}`,
  palpation: 'palpation: the pulse felt to come back',
  device: 'numbers read off the display of a device',
  cuffIs: (f: { cuff: string; scheme: string }) => `Cuff: ${f.cuff}${f.scheme}`,
  armIs: (f: { cm: number }, say: Say) => `Arm: ${say.short(f.cm, 1)} cm`,
  setByHand: (f: { reason: string }) => `Set by hand: ${f.reason}`,
  contested: 'Two amendments disagree about this value; each is written.',
  unsigned: 'No signing names this value.',
  onAir: 'On air',
  onOxygen: 'On oxygen',
  category: (f: { category: string; guideline: string }) => `Category ${f.category} by ${f.guideline}`,
  underProtocol: (f: { version: string }) => `Local protocol version ${f.version}`,
  averageOf: (f: { readings: number; rule: string }, say: Say) =>
    `Mean of ${say.short(f.readings)} readings of one round, rule ${f.rule}`,
  madeBy: (f: { program: string; rule: string }) => `${f.program}, rule ${f.rule}`,
  created: 'recorded',
  amended: (f: { reason: string }) => `amended: ${f.reason}`,
  inError: (f: { reason: string }) => `entered in error: ${f.reason}`,
  roundBegan: (f: { text: string }) => `How the round began: ${f.text}`,
  takenOutByHand: (f: { reason: string }) => `Taken out of the mean by hand: ${f.reason}.`,
  takenOutAtSource: 'taken back where it came from',
  homeMean: 'Mean of blood pressure at home',
  wholeMean: 'Mean of blood pressure over 24 hours',
  dayMean: 'Mean of blood pressure by day',
  nightMean: 'Mean of blood pressure by night',
  changedAtSource: 'changed where it came from',
  saidAgainAtSource: 'said again where it came from',
} as const;
