import type { Say } from '../say.js';

const BEATS = { one: 'beat', other: 'beats' };
const BREATHS = { one: 'breath', other: 'breaths' };
const TAPS = { one: 'tap', other: 'taps' };
const SECONDS = { one: 'second', other: 'seconds' };

/**
 * The words of the screens: a section for each screen, a key for each text. A text without figures is a string;
 * a text with figures is a function of them and of {@link Say}, which alone writes numbers and plurals.
 * To add one, add it here: every other language then fails to compile until it has it too.
 */
export const screens = {
  app: {
    name: 'Evenfall',
    pulse: 'Pulse',
    breaths: 'Breaths',
    perMinute: '/min',
    notKnown: 'not known',
    back: 'Back',
    cancel: 'Cancel',
    save: 'Save',
  },
  people: {
    title: 'People',
    add: 'Add a person',
    none: 'Nobody here yet. Add a person to begin.',
    name: 'Name',
    firstIdentifier: 'First identifier',
    secondIdentifier: 'Second identifier',
    twoIdentifiers: 'Two identifiers, so that the numbers land in the right chart.',
  },
  count: {
    title: 'Count',
    start: 'Start',
    stop: 'Stop',
    windowIs: (figures: { seconds: number }, say: Say) =>
      `Count for ${say.counted(figures.seconds, SECONDS)}`,
    secondsLeft: (figures: { seconds: number }, say: Say) =>
      `${say.counted(figures.seconds, SECONDS)} left`,
    howManyBeats: 'How many beats did you feel?',
    howManyBreaths: 'How many breaths did you see?',
    interrupted: 'The count was interrupted, so it is void. Start again; do not guess the rest.',
    beatsInSeconds: (figures: { n: number; seconds: number }, say: Say) =>
      `${say.counted(figures.n, BEATS)} in ${say.short(figures.seconds)} s`,
    breathsInSeconds: (figures: { n: number; seconds: number }, say: Say) =>
      `${say.counted(figures.n, BREATHS)} in ${say.short(figures.seconds)} s`,
  },
  taps: {
    title: 'Tap',
    tapEachBeat: 'Tap each time you feel a beat.',
    tapEachBreath: 'Tap at the start of each breath in.',
    soFar: (figures: { taps: number }, say: Say) => `${say.counted(figures.taps, TAPS)} so far`,
    more: (figures: { taps: number }, say: Say) =>
      figures.taps === 0 ? 'Enough taps.' : `${say.counted(figures.taps, TAPS)} more for a narrower range`,
    undo: 'Take back the last tap',
  },
  review: {
    title: 'Review',
    sign: 'Sign',
    discard: 'Discard',
    signedBy: 'Signed by',
    countAgain: 'Count again',
  },
  chart: {
    title: 'Chart',
    none: 'Nothing charted yet.',
    amend: 'Amend',
    amended: 'Amended',
    amendReason: 'Why is it amended?',
    before: 'Before',
    enteredInError: 'Entered in error',
    evidence: 'How this number came about',
  },
} as const;
