import type { GaugeStanding } from '@evenfall/clinical';
import type { Words } from './words.js';

/**
 * How a gauge stands, in one line: in order and what comes next, what is due, or what failed; that it is here no more.
 *
 * @param dayText how a day (`YYYY-MM-DD`) is written where the line is read
 */
export function gaugeStandingText(
  { standing, endedOn }: { readonly standing: GaugeStanding; readonly endedOn: string | null },
  words: Words,
  dayText: (day: string) => string,
): string {
  if (endedOn !== null) return words.sentence('equipment.endedOn', { text: dayText(endedOn) });
  const { state, checks } = standing;
  const named = (of: string) => words.title('gaugeCheck', of).toLowerCase();
  if (state === 'good') {
    const [next] = [...checks].sort((a, b) => ((a.dueDay ?? '') < (b.dueDay ?? '') ? -1 : 1));
    const day = next?.dueDay == null ? '' : dayText(next.dueDay);
    return words.sentence('equipment.good', { due: named(next?.of ?? ''), day });
  }
  const isFailed = state === 'failed';
  const found = checks.filter((check) => (isFailed ? check.state === 'failed' : check.state !== 'good'));
  const text = words.say.allOf(found.map(({ of }) => named(of)));
  return words.sentence(isFailed ? 'equipment.failed' : 'equipment.due', { text });
}
