/** How full a pulse feels, in words; each scale of grades means others by the same grade. */
export type AmplitudeWord =
  | 'absent'
  | 'weak'
  | 'barely-felt'
  | 'below-normal'
  | 'normal'
  | 'full'
  | 'bounding';

/** The words of each grade from 0 up. Source: bedside handbook 1.9, scales A, B and C (textbooks, second-hand). */
const GRADES = {
  'to-four-two-normal': ['absent', 'weak', 'normal', 'full', 'bounding'],
  'to-four-three-normal': ['absent', 'barely-felt', 'below-normal', 'normal', 'bounding'],
  'to-three-two-normal': ['absent', 'weak', 'normal', 'bounding'],
} as const satisfies Record<string, readonly AmplitudeWord[]>;

export type AmplitudeScale = keyof typeof GRADES;
export const AMPLITUDE_SCALES = Object.keys(GRADES) as readonly AmplitudeScale[];

/**
 * What a grade means on its scale; null for a grade that the scale does not have. One scale is never turned into another.
 *
 * @param grade whole, from 0 (absent): 2 is written 2+
 */
export function amplitudeWord(scale: AmplitudeScale, grade: number): AmplitudeWord | null {
  return GRADES[scale][grade] ?? null;
}
