import type { Say } from '../../say.js';
import { stopwatch } from '../../stopwatch.js';

type Minutes = { minutes: number };
type Seconds = { seconds: number };

/** Lying down and standing up within a round: what is waited for, and what was missed. */
export const postures = {
  wantStandingSays: (f: { lying: number; first: number; third: number }, say: Say) =>
    `Asks for a reading lying, after ${say.limit(f.lying)} min of it, then one at ${say.limit(f.first)} and one at ${say.limit(f.third)} min on the feet. Count the pulse at each.`,
  lyingBegin: 'They lie down now',
  lyingBeginHint: (f: Minutes, say: Say) =>
    `From this touch on the minutes count: the reading comes after ${say.limit(f.minutes)}. Who lay longer before: type the minutes with the reading.`,
  lyingFor: (f: Seconds, say: Say) => `Lying ${stopwatch(f.seconds, say)}`,
  lyingDueIn: (f: Minutes & Seconds, say: Say) =>
    `Reading after ${say.limit(f.minutes)} min lying: pump up in ${stopwatch(f.seconds, say)}.`,
  lyingDueNow: (f: Minutes, say: Say) => `Lying for ${say.limit(f.minutes)} min or more: pump up now.`,
  lyingPutBack: (f: Seconds, say: Say) => `They lay all along: ${stopwatch(f.seconds, say)}`,
  lyingLost: 'Since when they lie is not known: type the minutes.',
  lyingHint: 'Leave it blank if nobody knows.',
  lyingWrong: (f: Minutes, say: Say) => `Type minutes from 0 to ${say.limit(f.minutes)}, or leave it blank.`,
  lyingAt: (f: Minutes, say: Say) => `${say.short(f.minutes)} min lying before`,
  pulseAt: (f: { perMinute: number }, say: Say) => `pulse ${say.rate(f.perMinute)}`,
  pulseAmended: (f: { perMinute: number; was: number }, say: Say) =>
    `pulse ${say.rate(f.perMinute)} (amended, was ${say.rate(f.was)})`,
  pulseInError: (f: { was: number }, say: Say) =>
    `pulse ${say.rate(f.was)}, since marked as entered in error`,
  feltUnwell: 'dizzy, faint or unwell on their feet',
  feltWell: 'well on their feet',
  noRangePulse: 'No range: it needs the pulse.',
  noRangeTimes: 'No range: it needs the times of the run.',
  noRangeAtAll: 'No range can be told of this run.',
  missed: (f: Minutes, say: Say) => `The reading at ${say.limit(f.minutes)} min was missed.`,
  missedNow: (f: Minutes, say: Say) =>
    `The reading at ${say.limit(f.minutes)} min was missed: take one now, if the person can stand. It keeps its own minutes.`,
  notUpUnwell: 'Unwell: nothing on their feet is asked for. Leave the standing readings and report it.',
  feelsFaint: 'They feel faint or dizzy: they lie down',
  toLieDown: 'They are to lie down: nothing on their feet is asked for any more.',
} as const;
