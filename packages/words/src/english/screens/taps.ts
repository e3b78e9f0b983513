import type { Say } from '../../say.js';
import { TAPS } from './nouns.js';

/** The screen on which each beat or breath is tapped; what is said of them afterwards is in `./bedside/taps.ts`. */
export const taps = {
  title: 'Tap',
  tapEachBeat: 'Tap each time you feel a beat.',
  tapEach: 'Tap each one as it begins.',
  begin: 'Begin with the first tap. Thumb or space bar.',
  area: 'Tap here',
  soFar: (f: { taps: number }, say: Say) => `${say.counted(f.taps, TAPS)} so far`,
  more: (f: { taps: number }, say: Say) =>
    f.taps === 0 ? 'Enough taps.' : `about ${say.counted(f.taps, TAPS)} more for a narrower range`,
  until: (f: { taps: number; seconds: number }, say: Say) =>
    `Go on for ${say.short(f.seconds)} s from the first tap: about ${say.counted(f.taps, TAPS)} more.`,
  enough: 'Enough.',
  undo: 'Take back the last tap',
  stop: 'Stop',
  again: 'Tap again from the start',
  tooFew: 'Two taps at least make a rate. Go on tapping.',
  repairs: 'Missed taps put in and doubled taps taken out are drawn differently and listed below.',
  missed: (f: { index: number; added: number }, say: Say) =>
    `After tap ${say.short(f.index)}: ${say.counted(f.added, TAPS)} missed, put in.`,
  doubled: (f: { index: number }, say: Say) => `Tap ${say.short(f.index)}: doubled, taken out.`,
} as const;
