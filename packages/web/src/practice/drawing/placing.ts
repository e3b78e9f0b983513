import { type ChestPiece, keyOf, uniformOf } from '@evenfall/physiology';

/** What of the arm's picture is shown, px. */
export const VIEW = { x: 26, y: 10, width: 560, height: 224 } as const;

/** The picture of the arm: where the cuff ends and over which part the artery can be heard; px. */
export const ARM = {
  cuffEndsX: 214,
  elbowX: 246,
  wrist: { x: 420, y: 134 },
  /** Where chest piece or fingers can be laid. */
  field: { left: 196, right: 300, top: 88, bottom: 172 },
} as const;

/** One px of the picture is so much of the arm, mm. */
const MM_PER_PX = 0.7;
/** Half of the chest piece, px: over the cuff's edge by more than a third of it, and it is under the cuff. */
export const PIECE_RADIUS = 18;
const UNDER_PX = 6;
/** Within this of the artery, mm, it lies well enough: nobody does better by hand. */
const WELL_MM = 3;
/** The artery of each person lies a little elsewhere, px. */
const LOWEST_Y = 112;
const HIGHEST_Y = 142;
const DRAW = 1100;

/** Where the artery crosses the crook of this person's arm. */
export function arteryY(seed: number): number {
  return LOWEST_Y + (HIGHEST_Y - LOWEST_Y) * uniformOf(keyOf(seed, 'patient'), DRAW);
}

export type Laid = { readonly x: number; readonly y: number; readonly isPressed: boolean };

/** The left arm is the right one in a mirror: where it lies in the picture, and back again. */
export function mirrored(x: number, isLeft: boolean): number {
  return isLeft ? 2 * VIEW.x + VIEW.width - x : x;
}

/** A place of the page -> the place of the arm under it, px of the picture of a right arm. */
export function armPlaceOf(
  { clientX, clientY }: { readonly clientX: number; readonly clientY: number },
  box: { readonly left: number; readonly top: number; readonly width: number; readonly height: number },
  isLeft: boolean,
): { x: number; y: number } {
  return within({
    x: mirrored(VIEW.x + ((clientX - box.left) / box.width) * VIEW.width, isLeft),
    y: VIEW.y + ((clientY - box.top) / box.height) * VIEW.height,
  });
}

/** Where it was laid and how it is held, as the rig takes it. */
export function heldAt({ x, y, isPressed }: Laid, artery: number): { offMm: number; held: ChestPiece } {
  const away = Math.abs(y - artery) * MM_PER_PX;
  const past = Math.max(0, x - (ARM.elbowX + 20)) * MM_PER_PX;
  const off = Math.hypot(away, past);
  const isUnder = x - PIECE_RADIUS < ARM.cuffEndsX - UNDER_PX;
  return {
    offMm: off <= WELL_MM ? 0 : Math.round(off * 10) / 10,
    held: isUnder ? 'under-cuff' : isPressed ? 'pressed-hard' : 'light',
  };
}

/** How clearly a finger there feels the artery, 0 to 1. */
export function feltAt({ x, y }: { readonly x: number; readonly y: number }, artery: number): number {
  const past = Math.max(0, x - (ARM.elbowX + 20));
  const far = Math.hypot(y - artery, past) * MM_PER_PX;
  return Math.exp(-((far / 9) ** 2));
}

export function within(place: { readonly x: number; readonly y: number }): { x: number; y: number } {
  const { left, right, top, bottom } = ARM.field;
  return {
    x: Math.max(left, Math.min(right, place.x)),
    y: Math.max(top, Math.min(bottom, place.y)),
  };
}
