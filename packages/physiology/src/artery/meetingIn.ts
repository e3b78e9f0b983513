const HALVINGS = 50;

/**
 * The instant between two at which a climbing pulse and a falling cuff meet. `climb`: when the pulse has climbed to what
 * the cuff is at an instant, infinite where it never does; it falls over time, and at `late` has come by then.
 */
export function meetingIn(early: number, late: number, climb: (at: number) => number): number {
  let [low, high] = [early, late];
  for (let half = 0; half < HALVINGS; half++) {
    const middle = (low + high) / 2;
    if (climb(middle) <= middle) high = middle;
    else low = middle;
  }
  return high;
}
