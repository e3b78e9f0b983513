export { AudioClock } from './audioClock.js';
export { LOOK_AHEAD_SECONDS, LOUDNESS, type PlayerOptions, SoundPlayer, warmUp } from './player.js';
export { type Every, Replay } from './replay.js';
export type { SoundCard } from './soundCard.js';
