import type { Say } from '../../say.js';
import { SECONDS } from './nouns.js';

const MINUTES = { one: 'minute', other: 'minutes' };
type Times = { seconds: number; neededSeconds: number };

/** The quiet rest before the pressure, by the clock. */
export const rest = {
  start: (f: { seconds: number }, say: Say) => `Sits down now: start ${long(f.seconds, say)} of rest`,
  restsNow: 'The rest has begun. Meanwhile: questions, the arm, pulse and breaths.',
  before: 'They had rested already',
  notBegun: 'No rest was begun.',
  notKnown: 'Whether they rested before is not known.',
  wasBefore: 'They had rested before, not by this clock.',
  left: (f: { minutes: number }, say: Say) => `Rests: about ${say.counted(f.minutes, MINUTES)} left`,
  lastMinute: 'Rests: under a minute left',
  says: 'The person rests quietly. The cuff goes up when the rest is over.',
  meanwhile: 'Meanwhile',
  back: 'Back to the pressure',
  again: 'Start it again',
  skip: 'Do not wait …',
  why: 'Why not wait?',
  skipNow: 'Do not wait, for this reason',
  urgent: 'it is urgent',
  'already-rested': 'they had rested before',
  declined: 'the person does not want to wait',
  'no-time': 'there is no time',
  other: 'Another reason, in a few words',
  whole: (f: Times, say: Say) => `Rested for ${long(f.neededSeconds, say)}, by the clock.`,
  short: (f: Times, say: Say) => `Rested for ${long(f.seconds, say)} of ${long(f.neededSeconds, say)}.`,
  skipped: (f: Times & { text: string }, say: Say) =>
    `Rest not waited for after ${long(f.seconds, say)} of ${long(f.neededSeconds, say)}: ${f.text}.`,
} as const;

/** As it is said: whole minutes, seconds, or both. */
function long(seconds: number, say: Say): string {
  const minutes = Math.floor(seconds / 60);
  const rest = Math.floor(seconds) % 60;
  if (minutes === 0) return say.counted(rest, SECONDS);
  const whole = say.counted(minutes, MINUTES);
  return rest === 0 ? whole : `${whole} and ${say.counted(rest, SECONDS)}`;
}
