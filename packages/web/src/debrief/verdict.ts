import type { Debrief } from '@evenfall/practice';
import type { Words } from '@evenfall/words';

/** Whether a reading is accepted, in a sentence. */
export function verdictText({ accepted }: Pick<Debrief, 'accepted'>, words: Words): string {
  const { withinMmHg, systolic, diastolic } = accepted;
  const name = (of: 'systolic' | 'diastolic') => words.sentence(`debrief.${of}`);
  if (systolic === null && diastolic === null) return words.sentence('debrief.noReading');
  if (systolic === true && diastolic === true) return words.sentence('debrief.bothAccepted', { withinMmHg });
  if (systolic !== true && diastolic !== true) return words.sentence('debrief.noneAccepted', { withinMmHg });
  const [part, other] = systolic === true ? (['systolic', 'diastolic'] as const) : (['diastolic', 'systolic'] as const); // biome-ignore format: one thought
  const isAlone = (part === 'systolic' ? diastolic : systolic) === null;
  return words.sentence(isAlone ? 'debrief.oneAlone' : 'debrief.oneAccepted', {
    withinMmHg,
    part: name(part),
    other: name(other),
  });
}

/** What was said of a sign that cannot wait; null where there was none and none was said. */
export function flagText(
  { redFlag }: Pick<Debrief, 'redFlag'>,
  saysActNow: boolean | null,
  words: Words,
): { readonly text: string; readonly isMissed: boolean } | null {
  if (redFlag === null)
    return saysActNow === true ? { text: words.sentence('debrief.flagNoneSaid'), isMissed: false } : null;
  const part = words.sentence(`debrief.${redFlag.code}`);
  return redFlag.isSeen
    ? { text: words.sentence('debrief.flagSeen', { part }), isMissed: false }
    : { text: words.sentence('debrief.flagMissed', { part }), isMissed: true };
}
