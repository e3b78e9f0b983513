import type { Say } from '../../say.js';
import { SECONDS } from './nouns.js';

/** A set that was taken and is typed at once, in the trade's shorthand. */
export const quick = {
  link: 'Type a set',
  title: 'Type a set',
  field: 'Pressure and pulse, such as 148/92 76',
  keypad: 'Numbers',
  byFeel: 'P by feel',
  space: 'pulse',
  stroke: 'slash',
  placeWas: (f: { place: string; at: string }) => `${f.place}, as on ${f.at}`,
  change: 'Change',
  arm: 'Arm',
  chooseArm: 'choose',
  armMissing: 'Say which arm it was.',
  posture: 'The person',
  cuff: 'Cuff',
  cuffLeft: (f: { text: string }) =>
    `The cuff used before (${f.text}) is none of the list in force here, so it is not carried over: choose the one that was used.`,
  cuffWrong: 'This cuff is none of the list in force here: choose the one that was used, or “not said”.',
  how: 'How it was read',
  auscultation: 'by ear',
  felt: 'by feel, no diastolic',
  device: 'off a display',
  pulseFor: 'Pulse over',
  seconds: (f: { seconds: number }, say: Say) => say.counted(f.seconds, SECONDS),
  pulseIs: (f: { n: number; seconds: number }, say: Say) =>
    `pulse, kept as ${say.short(f.n)} in ${say.short(f.seconds)} s: put right below`,
  notInWindow: (f: { perMinute: number; seconds: number; stepPerMinute: number }, say: Say) =>
    `A pulse of ${say.short(f.perMinute)} cannot come of a count over ${say.counted(f.seconds, SECONDS)}, which goes by steps of ${say.short(f.stepPerMinute)} a minute. Say how long it was counted, or look at the number again.`,
  noSlash: 'Put / between the two numbers of the pressure, and a blank before the pulse: 148/92 76.',
  meantSlash: (f: { text: string }) => `Is it ${f.text}?`,
  countedFor: 'The pulse was counted for',
  rhythmFelt: 'Its rhythm felt',
  'rhythm-regular': 'regular',
  'rhythm-irregular': 'irregular',
  wholeRound: 'This arm needs a decision: take a whole round, which asks for it.',
  toRound: 'Take a whole round instead',
  identity: 'By signing you say that they told you who they are.',
  sign: 'Sign',
  another: 'Keep it and type another',
  keptSoFar: (f: { readings: number }, say: Say) =>
    `${say.counted(f.readings, { one: 'reading', other: 'readings' })} kept, out of sight until the round is signed.`,
  readAgain: 'Look again before signing',
  readIs: (f: { text: string }) => `Yes, ${f.text} was read`,
  windowUnsaid: 'Say above how long the pulse was counted, then sign.',
  readNot: 'Say that it was read so, or put it right, then sign.',
  unasked: 'Answer what is asked above, then sign.',
  changedMeanwhile: 'Another page of this device changed this round: look again, then sign.',
  needsAgent: 'Choose who is measuring.',
} as const;
