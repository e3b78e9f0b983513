import { exp } from '../exact/exponential.js';
import { CUFF_FIGURES as F } from './figures.js';

/** The wall of an artery: how its filling follows the pressure across it. Source: physiology handbook 6.4. */
export type Wall = { readonly below: number; readonly above: number; readonly swing: number };

export function wallOf(isStiff: boolean, isLoose: boolean): Wall {
  const loose = isLoose ? F.looseSwing.value : 1;
  return isStiff
    ? {
        below: F.stiffBelowPerMmHg.value,
        above: F.stiffAbovePerMmHg.value,
        swing: F.swingShare.value * F.stiffSwing.value * loose,
      }
    : { below: F.wallBelowPerMmHg.value, above: F.wallAbovePerMmHg.value, swing: F.swingShare.value * loose };
}

/** Filling of the artery at a pressure across its wall, mmHg. */
export function fillingOf(wall: Wall, across: number): number {
  if (across < 0) return exp(wall.below * across) / wall.below;
  return 1 / wall.below + (1 - exp(-wall.above * across)) / wall.above;
}

/** How far a pulse lifts the pressure in the cuff at an arterial pressure over that of the foot of the beat, mmHg. */
export function liftOf(wall: Wall, arterial: number, foot: number, outside: number): number {
  return wall.swing * (fillingOf(wall, arterial - outside) - fillingOf(wall, foot - outside));
}

/**
 * How far a pulse moves the needle from the middle of its swing, mmHg: the pressure in the cuff is that middle, which an eye
 * that does not read by the swing takes. Levels are those of the beat in the artery.
 */
export function swingOf(
  wall: Wall,
  arterial: number,
  { systolic, diastolic }: { readonly systolic: number; readonly diastolic: number },
  outside: number,
): number {
  const middle = (fillingOf(wall, systolic - outside) + fillingOf(wall, diastolic - outside)) / 2;
  return wall.swing * (fillingOf(wall, arterial - outside) - middle);
}
