import { USUAL_FIGURES as U } from '../usual/figures.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';

/** Means of one person of which it was published how far two of them lie apart: of days at home, and awake over 24 hours. */
export type PublishedApart = 'home' | 'awake';

/** How far two systolic means of one person lie apart though nothing was changed, in mmHg. */
export type Apart = {
  /** SD of the difference. */
  readonly sd: number;
  /** 95 of 100 differences lie between these. */
  readonly low: number;
  readonly high: number;
};

/**
 * As it was published: at home a year apart by the SD of the difference, awake within a month by the range of 95 of 100
 * differences; the other of both is worked out as for a normal distribution. It says nothing of one person's change, and
 * of means over 24 hours, by night and of the diastolic nothing of the kind was found.
 *
 * Source: out-of-office handbook 17.1.
 */
export const APART_BY_THEMSELVES: Readonly<Record<PublishedApart, Apart>> = {
  home: ofSd(F.homeYearApartSd.value),
  awake: ofRange(F.awakeMonthApartLow.value, F.awakeMonthApartHigh.value),
};

/**
 * Between which values a change of a systolic mean lies, with 95 of 100, if both means scatter as it was published.
 *
 * @param difference the later minus the earlier mean, mmHg
 */
export function changeBetween(difference: number, of: PublishedApart): { low: number; high: number } {
  const reach = U.intervalZ.value * APART_BY_THEMSELVES[of].sd;
  return { low: difference - reach, high: difference + reach };
}

function ofSd(sd: number): Apart {
  const reach = U.intervalZ.value * sd;
  return { sd, low: -reach, high: reach };
}

function ofRange(low: number, high: number): Apart {
  return { sd: (high - low) / (2 * U.intervalZ.value), low, high };
}
