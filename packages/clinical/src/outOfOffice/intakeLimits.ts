import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';
import type { Measure } from './seriesReading.js';

/** Least and most of a number that a file of readings may hold, both included; mmHg, and per minute for the pulse. */
export type IntakeLimits = { readonly minimum: number; readonly maximum: number };

/** What is outside is a slip or another unit and is refused by name, never edited. Source: out-of-office handbook 20 (a decision). */
export const INTAKE_LIMITS: Readonly<Record<Measure, IntakeLimits>> = {
  systolic: { minimum: F.intakeLeastSystolic.value, maximum: F.intakeMostMmHg.value },
  diastolic: { minimum: F.intakeLeastDiastolic.value, maximum: F.intakeMostMmHg.value },
  pulse: { minimum: F.intakeLeastPulse.value, maximum: F.intakeMostPulse.value },
};
