import type { RoundNotes } from '@evenfall/clinical';
import type { RoundValueKept } from '@evenfall/record';
import type { Words } from '@evenfall/words';

type Test = NonNullable<RoundValueKept['standing']>;
type Fall = Test['falls'][number];

/**
 * What the two arms came to, in one sentence for each way a round stands; null where they were not held against each other.
 * A finding and no advice: it is read by somebody elsewhere.
 *
 * @param against why a difference may be one of the cuffs or of the methods
 */
export function armsFound(
  made: readonly RoundValueKept[],
  against: RoundNotes['arms'],
  words: Words,
): string | null {
  const said = made.flatMap(({ arms }) => {
    if (arms === null) return [];
    const { systolicMmHg, isRepeatNeeded } = arms;
    if (systolicMmHg === 0) return [words.sentence('handover.armsSame')];
    const side = words.sentence(systolicMmHg > 0 ? 'handover.right' : 'handover.left');
    const how =
      against.length > 0
        ? 'handover.armHigherUnlike'
        : isRepeatNeeded
          ? 'handover.armHigherOnce'
          : 'handover.armHigher';
    return [words.sentence(how, { side, mmHg: Math.abs(systolicMmHg) })];
  });
  return eachOnce(said);
}

/**
 * How far the pressure fell on the feet, and when; that nothing excludes a fall is said too, and what else was found on them: a late
 * fall or one that was over, a low systolic, who felt unwell, a rise of the pulse that is to be reported. Null for no such test.
 */
export function standingFound(made: readonly RoundValueKept[], words: Words): string | null {
  const said = made.flatMap(({ standing }) => {
    if (standing === null) return [];
    const falls = standing.falls.filter(({ isFall }) => isFall === true).map((one) => fellText(one, words));
    const others = onFeet(standing, words);
    if (falls.length > 0)
      return [words.sentence('handover.fell', { text: words.say.allOf(falls) }), ...others];
    const { systolicFall: systolic, diastolicFall: diastolic } = standing.limits;
    const how = standing.positive === false ? 'handover.noFall' : 'handover.fallNotExcluded';
    return [words.sentence(how, { systolic, diastolic }), ...others];
  });
  return eachOnce(said);
}

/** What a test found beside a fall, in the order of its flags. */
function onFeet({ flags }: Test, words: Words): readonly string[] {
  return flags.flatMap(({ code, figures }) => {
    const minutes = figures.minutes ?? null;
    switch (code) {
      case 'fall-delayed':
        return [words.sentence('handover.fellLate')];
      case 'fall-recovered':
        return [words.sentence('handover.fallOver', { minutes })];
      case 'standing-systolic-low':
        return [words.sentence('handover.lowOnFeet', { systolic: figures.systolic ?? null, minutes })];
      case 'symptoms-on-standing':
        return [words.sentence('handover.unwellOnFeet', { minutes })];
      case 'rise-without-fall':
        return [words.sentence('handover.pulseRose', { perMinute: figures.pulseRise ?? null })];
      default:
        return [];
    }
  });
}

function fellText(fall: Fall, words: Words): string {
  return words.sentence('handover.fellBy', {
    systolic: numberOr(fall, 'systolicFall'),
    diastolic: numberOr(fall, 'diastolicFall'),
    minutes: numberOr(fall, 'minutes'),
  });
}

function numberOr(fall: Fall, key: string): number | null {
  const value = fall[key];
  return typeof value === 'number' ? value : null;
}

function eachOnce(said: readonly string[]): string | null {
  return said.length === 0 ? null : [...new Set(said)].join(' ');
}
