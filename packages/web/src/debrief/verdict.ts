import { type Judged, limitOf, resultRows, WORTH_TELLING_MMHG, wasLookedUp } from '@evenfall/practice';
import type { Words } from '@evenfall/words';

/** Whether a reading is accepted, in a sentence. */
export function verdictText(judged: Judged, words: Words): string {
  const { withinMmHg, systolic, diastolic } = judged.accepted;
  const name = (of: 'systolic' | 'diastolic') => words.sentence(`debrief.${of}`);
  if (systolic === null && diastolic === null)
    return words.sentence(wasLookedUp(judged) ? 'debrief.nothingAtAll' : 'debrief.noReading');
  if (judged.fromNothing !== null) return words.sentence(`debrief.${judged.fromNothing}`);
  const rows = resultRows(judged);
  // A number far from what is true on average is not called right for having been read right: each is then judged by itself.
  if (rows.some(({ isFar }) => isFar))
    return rows
      .flatMap(({ of, isMuffled, written, truth, isAccepted, isFar }) => {
        if (isAccepted === null || written === null) return [];
        const part = words.sentence(isMuffled ? 'debrief.muffledPart' : `debrief.${of}`);
        if (isFar) return [words.sentence('debrief.eachFar', { part, mmHg: written - truth })];
        return [
          words.sentence(isAccepted ? 'debrief.eachAccepted' : 'debrief.eachNot', { withinMmHg, part }),
        ];
      })
      .join(' ');
  if (systolic === null || diastolic === null) {
    const [part, other] = systolic === null ? (['diastolic', 'systolic'] as const) : (['systolic', 'diastolic'] as const); // biome-ignore format: one thought
    const isIt = systolic ?? diastolic ?? false;
    return words.sentence(isIt ? 'debrief.oneAlone' : 'debrief.oneAloneNot', {
      withinMmHg,
      part: name(part),
      other: name(other),
    });
  }
  if (systolic === diastolic)
    return words.sentence(systolic ? 'debrief.bothAccepted' : 'debrief.noneAccepted', { withinMmHg });
  const [part, other] = systolic ? (['systolic', 'diastolic'] as const) : (['diastolic', 'systolic'] as const); // biome-ignore format: one thought
  return words.sentence('debrief.oneAccepted', { withinMmHg, part: name(part), other: name(other) });
}

/** Why the limit is another one than is usual; null: it is the usual one, or nothing is judged by it. */
export function limitText(
  { accepted, fromNothing }: Pick<Judged, 'accepted' | 'fromNothing'>,
  scenario: Parameters<typeof limitOf>[0],
  words: Words,
): string | null {
  const { why, ...limit } = limitOf(scenario);
  const isJudged = accepted.systolic !== null || accepted.diastolic !== null;
  return why === null || !isJudged || fromNothing !== null
    ? null
    : words.sentence(`debrief.within-${why}`, limit);
}

/** Which part of a difference is of hand, ear and eye and which of what was not prepared, a sentence for each number where there is something to say. */
export function partsTexts(judged: Judged, words: Words): string[] {
  const { withinMmHg } = judged.accepted;
  return resultRows(judged).flatMap(({ of, isMuffled, had, asTheyWere, parts, isAccepted }) => {
    if (parts === null || had === null || asTheyWere === null) return [];
    const part = words.sentence(isMuffled ? 'debrief.muffledPart' : `debrief.${of}`);
    const [ofReading, ofPreparing] = [Math.abs(parts.ofReading), Math.abs(parts.ofPreparing)];
    const isNear = ofReading <= withinMmHg;
    if (isAccepted === true)
      return isNear ? [] : [words.sentence('debrief.cancelledSays', { part, ...parts })];
    // Read right is said where preparing made the difference, not where hand and ear are as much of it.
    if (isNear && ofPreparing > ofReading)
      return [
        words.sentence('debrief.readRightSays', { part, asTheyWere, had, ofPreparing: parts.ofPreparing }),
      ];
    return ofPreparing < WORTH_TELLING_MMHG
      ? []
      : [words.sentence('debrief.bothPartsSays', { part, ...parts })];
  });
}

/** What of a difference was nobody's doing, or only looked right, a sentence for each number where there is something to say. */
export function chanceTexts(judged: Judged, words: Words): string[] {
  const { withinMmHg } = judged.accepted;
  return resultRows(judged).flatMap(({ of, isMuffled, written, had, truth, isAccepted, isFromNothing }) => {
    if (had === null || written === null || isFromNothing) return [];
    const part = words.sentence(isMuffled ? 'debrief.muffledPart' : `debrief.${of}`);
    const off = had - truth;
    if (isAccepted === false && Math.abs(written - truth) <= withinMmHg)
      return [words.sentence('debrief.luckSays', { part, mmHg: had })];
    if (of === 'diastolic' && judged.hasGoneOn && !isMuffled) return [words.sentence('debrief.goneOnSays')];
    if (Math.abs(off) <= withinMmHg) return [];
    if (of === 'systolic' && judged.redFlag?.code === 'paradox' && !judged.isByFeel)
      return [words.sentence('debrief.chanceBreathSays', { mmHg: off })];
    return [
      judged.isByFeel
        ? words.sentence('debrief.feelSays', { mmHg: off })
        : words.sentence('debrief.chanceSays', { part, mmHg: off }),
    ];
  });
}

/** What was said of a sign that cannot wait; null where nothing was asked and there was none. */
export function flagText(
  { redFlag }: Pick<Judged, 'redFlag'>,
  saysActNow: boolean | null,
  words: Words,
): { readonly text: string; readonly isMissed: boolean } | null {
  if (redFlag === null) {
    if (saysActNow === null) return null;
    return {
      text: words.sentence(saysActNow ? 'debrief.flagNoneSaid' : 'debrief.flagNoneNeeded'),
      isMissed: false,
    };
  }
  const part = words.sentence(`debrief.${redFlag.code}`);
  if (saysActNow === null) return { text: words.sentence('debrief.flagNotAsked', { part }), isMissed: false };
  if (!redFlag.isSeen && !redFlag.isKnowable)
    return { text: words.sentence('debrief.flagUnknowable', { part }), isMissed: false };
  return redFlag.isSeen
    ? { text: words.sentence('debrief.flagSeen', { part }), isMissed: false }
    : { text: words.sentence('debrief.flagMissed', { part }), isMissed: true };
}
