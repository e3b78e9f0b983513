import type { ChestPiece } from '@evenfall/physiology';
import type { ContactKind } from '@evenfall/physiology/audio';

/** What hands did that the ears in the stethoscope may hear. */
export type Touched = 'put-on' | 'taken-off' | 'moved' | 'bulb';

/** A touch of skin or tube is over by then, s: the longest of them is the friction of a moved chest piece. */
export const CONTACT_SECONDS = 0.5;

/**
 * The noise that comes of it; null: none. A chest piece in the hand gives none through the tube when the bulb moves, one
 * that is held under the cuff rubs on it. Source: physiology handbook 8.4 and 13.
 */
export function noiseOf(
  what: Touched,
  held: { readonly isOn: boolean; readonly how: ChestPiece },
): ContactKind | null {
  if (what === 'put-on' || what === 'taken-off') return what;
  if (!held.isOn) return null;
  return what === 'moved' || held.how === 'under-cuff' ? 'friction' : 'tube-knock';
}
