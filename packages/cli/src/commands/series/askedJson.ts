import type { ClockRange } from '@evenfall/clinical';
import type { Json } from '../../answer.js';
import type { TypedRecording, TypedSeries } from './typedSeries.js';

/**
 * What was asked for beside a file, as it was typed; null where it was not, false of a switch that was left off. What was
 * taken in its place stands elsewhere in the answer.
 */
export function askedJson(typed: TypedSeries, recording: TypedRecording | null = null): Json {
  const { namedRules, choices, ageYears, sex, isPregnant, office, isTreated } = typed;
  const { zone, dates, unit, mapping } = choices;
  return {
    rules: namedRules,
    zone,
    dates,
    unit,
    columns: mapping === null ? null : mapping.columns,
    ageYears,
    sex,
    pregnant: isPregnant,
    office: office === null ? null : officeAsked(office),
    treated: isTreated,
    ...(recording === null ? {} : recordingAsked(recording)),
  };
}

/** A mean of the office, or pressures each with its day; whichever was not typed is null. */
function officeAsked(office: NonNullable<TypedSeries['office']>): Json {
  if (office.dated !== null) return { systolic: null, diastolic: null, count: null, visits: office.dated };
  const { systolic, diastolic, count } = office;
  return { systolic, diastolic, count, visits: null };
}

function recordingAsked({ dayNight, scheduled, isAllUsed, asksStiffness }: TypedRecording): Json {
  const diary = dayNight?.by === 'asleep-range' ? dayNight : null;
  const clock = dayNight?.by === 'clock' ? dayNight : null;
  return {
    asleep: rangeText(diary?.asleep),
    nap: rangeText(diary?.nap),
    day: rangeText(clock?.day),
    night: rangeText(clock?.night),
    scheduled,
    all: isAllUsed,
    stiffness: asksStiffness,
  };
}

/** A range of the clock as it is typed. Source: docs/conventions.md section 1. */
function rangeText(range: ClockRange | null | undefined): string | null {
  if (range == null) return null;
  const clock = (minutes: number) =>
    [Math.floor(minutes / 60), minutes % 60].map((part) => String(part).padStart(2, '0')).join(':');
  return `${clock(range.from)}-${clock(range.to)}`;
}
