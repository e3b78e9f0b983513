import type { ConsciousnessLevel } from '../sign/sign.js';
import type { KnownPressure } from './severe.js';

/**
 * What makes a severe pressure an emergency: each is asked of the person when a pressure is severe.
 * Source: bedside handbook 3.16 (from memory); pregnancy is asked there too and is a fact of its own here.
 */
export const EMERGENCY_FEATURES = [
  'chest-or-back-pain',
  'breathlessness',
  'new-weakness',
  'numbness',
  'speech-or-vision-change',
  'severe-headache',
  'confusion',
  'fit',
  'little-urine',
] as const;
export type EmergencyFeature = (typeof EMERGENCY_FEATURES)[number];

/** A score, or what of it is known: `atLeast` is the sum of the parts that are. Points. */
export type KnownScore = {
  readonly total: number | null;
  readonly atLeast: number;
  /** Points by part, in camelCase (`oxygenSaturation`); null or absent is not known. */
  readonly parts: Readonly<Record<string, number | null>>;
};

/**
 * What is known of a person at one time; null is not known, never normal. Pressures mmHg, rates per minute. A
 * systolic by palpation stands in `systolic` like any other, its diastolic is null.
 */
export type KnownSigns = KnownPressure & {
  readonly ageMonths: number | null;
  readonly pregnant: boolean | null;
  /** Whether the person felt dizzy, faint or unwell on their feet at this pressure. */
  readonly isUnwellUpright: boolean | null;
  /** Completed or part weeks since a birth; null if there was none or it is not known. */
  readonly weeksAfterBirth: number | null;
  readonly pulsePerMinute: number | null;
  readonly breathsPerMinute: number | null;
  readonly percentOxygen: number | null;
  /** The oxygen scale in use; null is scale 1. */
  readonly scale: 1 | 2 | null;
  readonly consciousness: ConsciousnessLevel | null;
  /** The emergency features that the person has; empty when all were asked and none is there, null when none was asked. */
  readonly features: readonly EmergencyFeature[] | null;
  readonly earlyWarning: KnownScore | null;
  /** The 95th centiles of a child's pressure, mmHg. */
  readonly p95: { readonly systolic: number; readonly diastolic: number } | null;
};

export const NOTHING_KNOWN: KnownSigns = {
  systolic: null,
  diastolic: null,
  ageMonths: null,
  pregnant: null,
  isUnwellUpright: null,
  weeksAfterBirth: null,
  pulsePerMinute: null,
  breathsPerMinute: null,
  percentOxygen: null,
  scale: null,
  consciousness: null,
  features: null,
  earlyWarning: null,
  p95: null,
};
