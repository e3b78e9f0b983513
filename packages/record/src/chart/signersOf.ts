import type { Entry } from '../entry/entry.js';
import type { ChartedSeries } from './chartSeries.js';

/**
 * Everybody who signed in the story of a round or series, amendments among it: none of them countersigns it.
 *
 * @param entries the story, as `AmendedEntry` has it; what is no signing in it is passed over
 */
export function signersOf(entries: readonly Pick<Entry, 'kind' | 'agent'>[]): ReadonlySet<string> {
  return new Set(
    entries.flatMap(({ kind, agent }) => (kind === 'round' || kind === 'series' ? [agent] : [])),
  );
}

/**
 * Whether somebody may add days to a series. What is contested goes on with nothing: nobody could say with which of the
 * two. A learner adds to what they signed last themselves (`others`). Whoever adds to a series that waits for its
 * countersigning would have signed it and could not look at it any more (`waits`).
 *
 * @param isLearner whether what they add would be preliminary
 * @param agent null while nobody has said who signs
 */
export function mayAddTo(
  { amended, isPreliminary }: Pick<ChartedSeries, 'amended' | 'isPreliminary'>,
  agent: string | null,
  isLearner: boolean,
): 'yes' | 'contested' | 'others' | 'waits' {
  if (amended.current.length !== 1) return 'contested';
  if (isLearner) return amended.current[0]?.agent === agent ? 'yes' : 'others';
  const isAllOwn = [...signersOf(amended.story)].every((one) => one === agent);
  return isPreliminary && agent !== null && !isAllOwn ? 'waits' : 'yes';
}
