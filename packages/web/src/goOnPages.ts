/** What every guided round comes to from its first count on: fetched after the pages with which it begins, and ahead of their use. */

export { PostureClock } from './pressure/LyingClock.js';
export { PressurePage } from './pressure/PressurePage.js';
export { begunAlarm } from './round/begunAlarm.js';
export { factsOf } from './round/facts.js';
export { ReviewPanel } from './round/ReviewPanel.js';
export { ShownPanel } from './round/ShownPanel.js';
export { SoFar } from './round/SoFar.js';
export { standingOf } from './round/standing.js';
export { entriesIn } from './round/useRound.js';
