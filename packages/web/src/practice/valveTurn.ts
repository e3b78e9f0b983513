/** The screw from shut to wide open, degrees of the model. Source: physiology handbook 6.2. */
export const WIDE_DEGREES = 120;
/**
 * So far the screw is loose: what it lets out there no hand would notice (under 0.3 mmHg/s at 140 mmHg). A hand that turns
 * feels where it takes hold, a finger on a screen does not: it begins there.
 */
export const SLACK_DEGREES = 20;
/** What a hand turns from shut to wide open. */
export const WIDEST_TURN = WIDE_DEGREES - SLACK_DEGREES;
/** One press of an arrow key, of a button or one notch of a wheel, and of an arrow with Shift. A turn under three degrees does not move the screw. */
export const STEP_DEGREES = 3;
export const SHIFT_DEGREES = 12;

/** Degrees of the screw -> how far a hand has turned it from where it takes hold; 0 is shut. */
export function handOf(degrees: number): number {
  return Math.max(0, Math.min(WIDE_DEGREES, degrees) - SLACK_DEGREES);
}

/** The screw after a hand turned it by so much, to the right to open it: it answers from the first degree on, and shuts wholly. */
export function turned(degrees: number, by: number): number {
  const hand = Math.min(WIDEST_TURN, handOf(degrees) + by);
  return hand <= 0 ? 0 : SLACK_DEGREES + hand;
}

/** The screw after one press of a key or a button: of one that stands wide open, as after all air was let out, one press shuts it. */
export function pressed(degrees: number, by: number): number {
  return by < 0 && degrees >= WIDE_DEGREES ? 0 : turned(degrees, by);
}

/** The shorter way round from one direction of the hand to another, degrees. */
export function between(from: number, to: number): number {
  return ((to - from + 540) % 360) - 180;
}

/** An arc about the middle of the screw's picture, from its top on, as far as a hand has turned. */
export function arcTo(hand: number, radius: number): string {
  const turn = (Math.min(hand, 359) * Math.PI) / 180;
  const [x, y] = [60 + radius * Math.sin(turn), 60 - radius * Math.cos(turn)];
  return `M60 ${60 - radius} A${radius} ${radius} 0 ${hand > 180 ? 1 : 0} 1 ${x.toFixed(2)} ${y.toFixed(2)}`;
}
