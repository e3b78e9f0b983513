/** Whether a class sees the truth; `asked`: a hand reached for it while the cuff still came down, and it is to say so once more. */
export type Reveal = 'hidden' | 'asked' | 'shown';

/** What a touch of T, or of its button, makes of it. Nothing is asked where the letting down is over, nor to hide it again. */
export function revealNext(now: Reveal, isOver: boolean): Reveal {
  if (now === 'shown') return 'hidden';
  return now === 'asked' || isOver ? 'shown' : 'asked';
}

/** Whatever else is touched takes the question back. */
export function notAsked(now: Reveal): Reveal {
  return now === 'asked' ? 'hidden' : now;
}
