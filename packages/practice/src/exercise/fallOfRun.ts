import type { Exercise } from './exercise.js';
import { type FallOf, fallAbout, nextFall } from './fall.js';
import type { Replay } from './replay.js';
import { LEAST_SOUNDS, soundsHeard } from './unheard.js';

/**
 * The letting down that a run is of: about its first mark in time, else about where it begins; where nothing was to be heard there and the
 * cuff was pumped up anew before it was quite empty, the one after it. Null: the cuff was empty there.
 */
export function fallOfRun(
  exercise: Exercise,
  played: Replay,
  { startSeconds, run }: NonNullable<Exercise['evidence']['run']>,
): FallOf | null {
  const marked = run.moments.find(({ atSeconds }) => atSeconds !== null)?.atSeconds ?? null;
  const about = marked === null ? null : fallAbout(played, startSeconds + marked);
  if (about !== null) return about;
  const begun = fallAbout(played, startSeconds);
  if (run.method !== 'auscultation') return begun;
  let fall = begun;
  while (fall !== null && soundsHeard(exercise, played, fall) < LEAST_SOUNDS) fall = nextFall(played, fall);
  return fall ?? begun;
}
