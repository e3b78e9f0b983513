import type { NothingToDo, Reported } from '@evenfall/practice';
import type { Words } from '@evenfall/words';

/** What is said where there is no one thing to do differently: who left out what a good observer reports is not told to do the same again. */
export function nothingText(
  nothing: NothingToDo,
  reported: readonly Reported[],
  { sentence }: Words,
): string {
  const says = sentence(`debrief.nothing-${nothing}`);
  if (nothing === 'excused' || nothing === 'unexplained') return says;
  const isAll = reported.every(({ is }) => is !== 'not-reported');
  return `${says} ${sentence(isAll ? 'debrief.sameAgain' : 'debrief.reportsMore')}`;
}
