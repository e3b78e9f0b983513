import { ROUND_FIGURES } from './figures.js';

/**
 * What should be so before a pressure is taken, in the order of the work; an exception is one that was not so.
 * What each costs in mmHg is for the debrief of an exercise, never for the bedside.
 * Source: bedside handbook 3.1 (its checks 1 to 17 and 21, without the choice of cuff and arm).
 */
export const PREPARATION = [
  'rested',
  'back-supported',
  'feet-flat',
  'arm-supported',
  'arm-at-heart',
  'bladder-empty',
  'not-talking',
  'arm-bare',
  'no-caffeine',
  'no-tobacco',
  'no-exercise',
  'no-meal',
  'no-alcohol',
  'warm',
  'calm',
  'gauge-at-zero',
] as const;
export type Preparation = (typeof PREPARATION)[number];

/** How long before a pressure is taken somebody sits quietly, and is without caffeine, tobacco and exercise; minutes. Source: bedside handbook 3.1. */
export const PREPARATION_TIMES = {
  rest: ROUND_FIGURES.preparationRestMinutes,
  clear: ROUND_FIGURES.preparationClearMinutes,
} as const;

/** What cannot be looked at before there is a cuff: it is asked when the cuff is on. Source: as of {@link PREPARATION}; the order is ours. */
export const PREPARATION_OF_CUFF = [
  'arm-at-heart',
  'arm-bare',
  'gauge-at-zero',
] as const satisfies readonly Preparation[];

/** Whether one of {@link PREPARATION} is of the cuff. */
export function isOfCuff(one: Preparation): boolean {
  return (PREPARATION_OF_CUFF as readonly Preparation[]).includes(one);
}

/**
 * Whether it is known if the cuff was as it should be: it was asked, or what was not so is among the exceptions.
 * Where nobody looked at anything (null) that is said instead.
 *
 * @param isCuffAsked whether its points were asked; a reading that was typed was taken before, and nobody was by itself
 *
 * Source: none; that what was not asked yet is not known, and not fine, is our decision.
 */
export function areCuffPointsKnown(exceptions: readonly Preparation[] | null, isCuffAsked: boolean): boolean {
  return isCuffAsked || exceptions === null || exceptions.some(isOfCuff);
}
