import { type ChartRound, type Countersigned, lastWord, signingsOf } from './projectChart.js';
import { signingOf } from './valueStanding.js';

/**
 * What the last supervisor wrote who looked at a round and did not rely on it, as it stands: of what was amended since no
 * supervisor has said anything. Null for any other round.
 */
export function notReliedOn(round: ChartRound): Countersigned | null {
  const standing = signingOf(round);
  const signing = signingsOf(round).find(({ story }) => story.some(({ id }) => id === standing?.id));
  if (round.isInError || signing === undefined) return null;
  if (lastWord(signing, round.values, round) !== 'not-relied-on') return null;
  const ids = signing.story.map(({ id }) => id);
  return round.countersigned.findLast(({ content }) => ids.includes(content.signing)) ?? null;
}
