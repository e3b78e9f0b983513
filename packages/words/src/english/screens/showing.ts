import type { Say } from '../../say.js';
import { BREATHS } from './nouns.js';

/** A pressure that is told, or null where it is to be found out. */
type Told = { mmHg: number | null };
/** What was counted, or null where it is to be found out, and in how many seconds. */
type Counted = { n: number | null; seconds: number };
const SECONDS = { one: 'second', other: 'seconds' };
type Levels = { systolic: number; diastolic: number | null };

/** What was to be had, or true, mmHg; null: there is none. */
type Numbers = { systolic: number | null; diastolic: number | null };

type Pair = { systolic: number; diastolic: number };

function pair({ systolic, diastolic }: Pair, say: Say): string {
  return `${say.number(systolic)}/${say.number(diastolic)}`;
}

function told({ systolic, diastolic }: Numbers, say: Say): string {
  const one = (mmHg: number | null) => (mmHg === null ? '–' : say.number(Math.round(mmHg)));
  return diastolic === null ? one(systolic) : `${one(systolic)}/${one(diastolic)}`;
}

function signed(mmHg: number | null, say: Say): string {
  if (mmHg === null) return '–';
  const off = Math.round(mmHg);
  return off === 0 ? say.number(0) : `${off > 0 ? '+' : '−'}${say.number(Math.abs(off))}`;
}

/** What is shown to one learner or to a whole room, step by step; what the room says of its sound and keys. */
export const showing = {
  stoppedSound: 'Stopped: the sound was taken away, by a call perhaps.',
  goOnWithSound: 'Go on with sound',
  letterKeys: 'Keys that are single letters, in the room only',

  // Step by step. Where a class is to find the numbers they are left out.
  'other-gauge': (f: Told, say: Say) =>
    f.mmHg === null || f.mmHg === 0
      ? 'First the gauge that came with this person: it was not right, and was put away. This is another one.'
      : `First the gauge that came with this person: with no air in the cuff its needle stood at ${say.number(f.mmHg)}. It was put away. This is another one.`,
  quieter: 'It was too noisy to hear soft sounds: they went to a quieter place first.',
  loud: 'No room here is quiet enough to hear soft sounds: the systolic is taken by feel, and it is said so.',
  measured:
    'The tape goes round the middle of the upper arm: the cuff is the one in whose range that lies, not the one at hand.',
  pulse: 'Fingertips on the wrist: each beat is counted from one end of the window to the other.',
  'pulse-counted': (f: Counted, say: Say) =>
    f.n === null
      ? 'The window is over. Say how they felt, too.'
      : `${say.number(f.n)} in ${say.counted(f.seconds, SECONDS)}. Even or not, strong or weak: that is said beside the number.`,
  breaths: 'Fingers still on the wrist, eyes on the chest: each rise is counted, and nobody says so.',
  'breaths-counted': (f: Counted, say: Say) =>
    f.n === null
      ? 'The window is over. Say how they came, too.'
      : `${say.counted(f.n, BREATHS)} in ${say.counted(f.seconds, SECONDS)}. How they come is said beside the number.`,
  countAlong: 'Count along.',
  sayIt: 'How many were there?',
  looking: 'Five quiet minutes are over. The cuff is on, and empty. The needle stands at zero.',
  'at-apex':
    'One listens at the apex, where each pair of sounds is one beat; another feels the wrist, the same full minute.',
  bothCounted: (f: { heart: number; wrist: number } | { heart: null; wrist: null }, say: Say) =>
    f.heart === null
      ? 'The minute is over. Say what was heard and what was felt.'
      : `${say.number(f.heart)} heard at the apex, ${say.number(f.wrist)} felt at the wrist: ${say.number(f.heart - f.wrist)} a minute do not arrive. Report it.`,
  feeling: 'By feel first: fingertips on the wrist, and up until the pulse is gone.',
  lost: (f: Told, say: Say) =>
    f.mmHg === null
      ? 'The pulse is gone: all air out.'
      : `The pulse is gone at ${say.number(f.mmHg)}: all air out.`,
  waiting: 'The arm rests for a quarter of a minute, the cuff empty.',
  pumping: (f: Told, say: Say) =>
    f.mmHg === null
      ? 'Up again, at least 30 over where the pulse went.'
      : `Up again to ${say.number(f.mmHg)}, at least 30 over where the pulse went.`,
  falling: 'The chest piece lies on the artery. The valve a little open: down evenly.',
  fallingFelt: 'The valve a little open: down evenly. The fingertips wait for the pulse.',
  slowly: 'Now very slowly, breath by breath.',
  first: (f: Told, say: Say) =>
    f.mmHg === null ? 'Listen.' : `The first sound, and another: ${say.number(f.mmHg)}.`,
  muffled: (f: Told, say: Say) =>
    f.mmHg === null ? 'Listen.' : `They are muffled from ${say.number(f.mmHg)} on.`,
  last: (f: Told, say: Say) =>
    f.mmHg === null ? 'Listen.' : `The last sound: ${say.number(f.mmHg)}. Listen on, to be sure.`,
  gap: (f: Told, say: Say) =>
    f.mmHg === null
      ? 'Listen.'
      : `Silence below ${say.number(f.mmHg)}, and the pressure is not through yet: a silent gap. Listen on, down as before.`,
  'gap-over': (f: Told, say: Say) =>
    f.mmHg === null
      ? 'Listen.'
      : `They are back at ${say.number(f.mmHg)}: the gap is over. Whoever had pumped only into it would take this for the first sound.`,
  'every-beat': (f: Told, say: Say) =>
    f.mmHg === null
      ? 'On at the usual speed.'
      : `From ${say.number(f.mmHg)} on every beat is heard, breathing in as well. On at the usual speed.`,
  back: (f: Told, say: Say) => (f.mmHg === null ? 'Feel.' : `The pulse is back: ${say.number(f.mmHg)}.`),
  emptying: 'All air out.',
  over: 'That was all of it.',

  // One learner is shown.
  withSoundFirst: 'There is something to hear. Put headphones on and begin low.',
  showWithSound: 'Begin with sound',
  showSilent: 'Begin without, sounds shown',
  nextStep: 'Next step',
  comesHeard: 'A few seconds before it comes: listen.',
  comesFelt: 'A few seconds before it comes: feel for it.',
  onceMore: 'Once more',
  writtenDown: 'Written down',
  byFeel: (f: { systolic: number }, say: Say) => `${say.number(f.systolic)}, by feel`,
  byEar: (f: Levels & { muffled: number | null }, say: Say) =>
    [f.systolic, f.muffled, f.diastolic]
      .filter((one) => one !== null)
      .map((one) => say.number(one))
      .join('/'),
  apart: (f: { first: number; every: number }, say: Say) =>
    `${say.number(f.first)} while breathing out only, ${say.number(f.every)} with every beat: ${say.number(f.first - f.every)} mmHg apart. Over 10 cannot wait.`,
  gapWas: (f: { from: number; to: number }, say: Say) =>
    `A silent gap, from ${say.number(f.from)} to ${say.number(f.to)}: the numbers are those outside it. Write it beside them, and next time pump above it.`,
  rightOnly: 'This was the right arm. At a first visit the left one is measured too: that is your turn.',
  sittingOnly:
    'This was sitting. One and three minutes after standing up it is measured again: that is your turn.',
  hereOnly: 'This was here. What it is at home only readings from home can show.',
  numbersSoFar: 'Numbers so far',
  lostAt: 'pulse gone',
  firstAt: 'first sound',
  everyAt: 'every beat',
  gapAt: 'silent below',
  gapOverAt: 'heard again',
  muffledAt: 'muffled',
  lastAt: 'last sound',
  backAt: 'pulse back',

  // A whole room is shown.
  roomPlaying: 'The person is being measured',
  wristIsFelt: 'The wrist is felt. Watch the needle.',
  wait: 'Wait.',
  watch: 'Watch.',
  truthAsked: 'Not over yet. Show it all the same?',
  truthNow: 'Yes, show it',
  roomOver: 'It is over. What did you hear, and where?',
  beforeFirst: 'Before the first',
  fromStart: 'From the start',
  byChance: 'Somebody, by chance',
  classSaid: 'What the class said',
  classSays: 'The class said: first and last, such as 124/78',
  holdIt: 'Hold it',
  saidWrong: 'Write 124/78, or one number for the first alone.',
  saidOne: (f: { first: number; last: number | null }, say: Say) =>
    f.last === null ? say.number(f.first) : `${say.number(f.first)}/${say.number(f.last)}`,
  saidOff: (f: Numbers, say: Say) =>
    f.diastolic === null
      ? signed(f.systolic, say)
      : `${signed(f.systolic, say)} / ${signed(f.diastolic, say)}`,
  forget: 'Forget it',
  numbersNow: (f: Numbers, say: Say) => told(f, say),
  trueOnAverage: (f: Numbers, say: Say) => `True on average: ${told(f, say)}`,
  isMuffled:
    'The sounds went on far below: the diastolic is where they became muffled, and the second number is held against that.',
  figure: 'The letting down',
  figureKey:
    'Each stem is a sound, as high as it was loud: ● phase I, ○ II, ■ III, □ IV; a small dot is too faint for a normal ear. Triangles: what the class said last. Dashed: true on average.',

  // What one visit does not show of a person.
  atHome: (f: Pair, say: Say) => `At home, on average: ${pair(f, say)}. In this room nobody can see it.`,
  onTheLeft: (f: Pair, say: Say) => `At rest, on the left arm: ${pair(f, say)}.`,
  onTheFeet: (f: Pair & { thenSystolic: number; thenDiastolic: number }, say: Say) =>
    `On the feet: ${pair(f, say)} after one minute, ${pair({ systolic: f.thenSystolic, diastolic: f.thenDiastolic }, say)} after three.`,
  notAtTheWrist: (f: { heart: number; wrist: number }, say: Say) =>
    `The heart beat ${say.rate(f.heart)} times a minute, the wrist felt ${say.rate(f.wrist)}: the heart is counted at its apex, for a full minute.`,
  toLeft: 'To the left arm',
  toRight: 'To the right arm',
  left: 'It is the left arm.',
  right: 'It is the right arm.',
} as const;
