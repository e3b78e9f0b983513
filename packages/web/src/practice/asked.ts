import {
  type Arranged,
  backgroundThresholdDb,
  type Circumstances,
  noiseOf,
  type Preparation,
  type Scenario,
} from '@evenfall/physiology';

/** What is not seen at once, and can be asked, listened for, looked at or felt: of the person and the place, and of the arm. */
export const ASKED = ['intake', 'warmth', 'noise', 'sleeve', 'fingers'] as const;
export type Asked = (typeof ASKED)[number];
export const ASKED_OF = { person: ['intake', 'warmth', 'noise'], arm: ['sleeve', 'fingers'] } as const;

const ABOUT: Readonly<Record<Exclude<Asked, 'noise'>, readonly (keyof Preparation)[]>> = {
  intake: ['hadCaffeine', 'hadNicotine'],
  warmth: ['isCold'],
  sleeve: ['hasTightSleeve', 'isOverSleeve'],
  fingers: ['isCuffLoose'],
};

/** What comes of it: everything that is not as it should be, and how it is put right; null: nothing to put right. */
export type Answer = {
  readonly found: readonly (keyof Preparation | 'isLoud' | 'isStillLoud')[];
  readonly mend: Arranged | null;
};

export function answerTo(
  asked: Asked,
  circumstances: Circumstances,
  place: Pick<Scenario, 'noiseDbA'>,
): Answer {
  if (asked === 'noise') return noiseAnswer(circumstances, place);
  const found = ABOUT[asked].filter((one) => circumstances[one]);
  return {
    found,
    mend: found.length === 0 ? null : Object.fromEntries(found.map((one) => [one, false])),
  };
}

/** It is too loud where soft sounds are hidden; where quiet was asked for, there is nothing more to ask for. */
function noiseAnswer(circumstances: Circumstances, place: Pick<Scenario, 'noiseDbA'>): Answer {
  if (backgroundThresholdDb(noiseOf(place, circumstances)) === 0) return { found: [], mend: null };
  return circumstances.isQuieter
    ? { found: ['isStillLoud'], mend: null }
    : { found: ['isLoud'], mend: { isQuieter: true, isSeatedAnew: true } };
}

/** What can be asked in a view. Fingers go under a cuff that is on. */
export function askedIn(view: keyof typeof ASKED_OF, isCuffOn: boolean): readonly Asked[] {
  return ASKED_OF[view].filter((one) => one !== 'fingers' || isCuffOn);
}
