import { dayPartOf, homeDayOf } from './homeDays.js';
import type { HomeRules } from './homeRules.js';
import { inTimeOrder, type SeriesReading } from './seriesReading.js';

/** What somebody was asked to measure at home: by a diary that was handed out, or by the rules. */
export type AskedAtHome = Pick<HomeRules, 'readingsInSitting'> & {
  readonly days: number;
  /** The first day that was asked for, as days since 1970-01-01; null for the first with a reading. */
  readonly from: number | null;
};

/** A part of the day that is asked for at home. */
const ASKED_PARTS = ['morning', 'evening'] as const;

/**
 * Where fewer came than were asked for. Days as days since 1970-01-01, both included; `day` is morning and evening of each,
 * with nothing at all.
 */
export type HomeGap = {
  readonly part: (typeof ASKED_PARTS)[number] | 'day';
  readonly from: number;
  readonly until: number;
  /** Readings that came and that were asked for of one part of the day; nothing came of one that is blank. */
  readonly came: number;
  readonly asked: number;
};

/** How many readings were asked for and came, and where they are missing, in order of days. */
export type HomeAsked = {
  readonly asked: number;
  /** Those of the days and parts that were asked for; more than were asked for of one part count no more. */
  readonly came: number;
  readonly gaps: readonly HomeGap[];
};

/**
 * Readings at home beside what was asked for, each morning and evening of each day. A blank is none, and never a zero;
 * one that was left out of the mean came all the same. Days are those of the mean; a reading at another time of the day
 * is of neither part. Where nobody said which days, as many readings as were asked for are enough, on whichever days.
 *
 * Errors: none; null where nothing came or nothing is asked for.
 * Source: out-of-office handbook 2 (days, two sittings a day, readings in each), 3 (days and parts of the day).
 */
export function homeAsked(
  readings: readonly SeriesReading[],
  { readingsInSitting, days, from }: AskedAtHome,
  rules: HomeRules,
): HomeAsked | null {
  const came = inTimeOrder(onceEach(readings.filter(hasPressure)));
  const first = from ?? Math.min(...came.map((one) => homeDayOf(one, rules)));
  if (came.length === 0 || days < 1) return null;
  const places = new Map<string, number>();
  for (const one of came) {
    const place = `${homeDayOf(one, rules)} ${dayPartOf(one, rules)}`;
    places.set(place, (places.get(place) ?? 0) + 1);
  }
  const asked = days * ASKED_PARTS.length * readingsInSitting;
  if (from === null && came.length >= asked) return { asked, came: asked, gaps: [] };
  const gaps: HomeGap[] = [];
  let counted = 0;
  for (let day = first; day < first + days; day++) {
    const parts = ASKED_PARTS.map((part) => ({ part, came: places.get(`${day} ${part}`) ?? 0 }));
    for (const one of parts) counted += Math.min(one.came, readingsInSitting);
    if (parts.every((one) => one.came === 0)) addBlankDay(gaps, day, readingsInSitting);
    else {
      for (const one of parts) {
        if (one.came < readingsInSitting)
          gaps.push({ ...one, from: day, until: day, asked: readingsInSitting });
      }
    }
  }
  return { asked, came: counted, gaps };
}

/** Days without anything that follow each other are one gap. */
function addBlankDay(gaps: HomeGap[], day: number, asked: number): void {
  const before = gaps.at(-1);
  if (before?.part === 'day' && before.until === day - 1) gaps[gaps.length - 1] = { ...before, until: day };
  else gaps.push({ part: 'day', from: day, until: day, came: 0, asked });
}

function hasPressure({ systolic, diastolic }: SeriesReading): boolean {
  return systolic !== null || diastolic !== null;
}

/** What was given twice came once. */
function onceEach(readings: readonly SeriesReading[]): SeriesReading[] {
  const byText = new Map<string, SeriesReading>();
  for (const one of readings) byText.set(`${one.atMs} ${one.systolic} ${one.diastolic} ${one.pulse}`, one);
  return [...byText.values()];
}
