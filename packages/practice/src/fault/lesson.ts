import { isUnwell, type ReportCode, type Scenario } from '@evenfall/physiology';
import type { Reported } from '../exercise/reportedOf.js';

/** What a person is there to teach that no other judgement of a reading says: in the order in which it is done. */
const TAUGHT = [
  'by-feel',
  'pulse-full-minute',
  'breaths-full-minute',
  'apex-rate',
  'pulse-irregular',
  'breaths-irregular',
  'pulse-weak',
  'pulse-strong',
  'three-readings',
  'standing-readings',
  'other-arm',
  'noise-of-place',
] as const satisfies readonly ReportCode[];
/** Of somebody who is unwell these are asked too: a number alone is not all that is told. */
const OF_UNWELL = ['pulse-rate', 'breaths-rate', 'temperature'] as const satisfies readonly ReportCode[];

/** A part of a lesson that can be the one thing to do. */
export type LessonCode = (typeof TAUGHT)[number] | (typeof OF_UNWELL)[number];

/** A full minute is a rate, too. */
const WITHIN: Partial<Record<LessonCode, LessonCode>> = {
  'pulse-rate': 'pulse-full-minute',
  'breaths-rate': 'breaths-full-minute',
};

/**
 * What of this person's lesson was not done, in the order in which it is done; empty: all of it was, or it is judged elsewhere.
 * Source: physiology handbook 14 (what each is there to show); assessment handbook 13 (critical when irregular).
 */
export function lessonOf(
  scenario: Pick<Scenario, 'redFlag'>,
  reported: readonly Reported[],
): readonly LessonCode[] {
  const left = new Set<ReportCode>(
    reported.filter(({ is }) => is === 'not-reported').map(({ code }) => code),
  );
  const asked: readonly LessonCode[] = isUnwell(scenario) ? [...OF_UNWELL, ...TAUGHT] : TAUGHT;
  return asked.filter((code) => {
    const wider = WITHIN[code];
    return left.has(code) && (wider === undefined || !left.has(wider));
  });
}
