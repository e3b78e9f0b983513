import type { Arranged, Circumstances, Preparation } from '@evenfall/physiology';

/** What is not seen at once, and can be asked, looked at or felt: of the person, and of the arm. */
export const ASKED = ['intake', 'warmth', 'sleeve', 'fingers'] as const;
export type Asked = (typeof ASKED)[number];
export const ASKED_OF = { person: ['intake', 'warmth'], arm: ['sleeve', 'fingers'] } as const;

const ABOUT: Readonly<Record<Asked, readonly (keyof Preparation)[]>> = {
  intake: ['hadCaffeine', 'hadNicotine'],
  warmth: ['isCold'],
  sleeve: ['hasTightSleeve', 'isOverSleeve'],
  fingers: ['isCuffLoose'],
};

/** What comes of it: everything that is not as it should be, and how it is put right; null: nothing to put right. */
export type Answer = { readonly found: readonly (keyof Preparation)[]; readonly mend: Arranged | null };

export function answerTo(asked: Asked, circumstances: Circumstances): Answer {
  const found = ABOUT[asked].filter((one) => circumstances[one]);
  return {
    found,
    mend: found.length === 0 ? null : Object.fromEntries(found.map((one) => [one, false])),
  };
}

/** What can be asked in a view. Fingers go under a cuff that is on. */
export function askedIn(view: keyof typeof ASKED_OF, isCuffOn: boolean): readonly Asked[] {
  return ASKED_OF[view].filter((one) => one !== 'fingers' || isCuffOn);
}
