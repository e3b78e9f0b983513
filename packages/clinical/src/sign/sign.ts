/** Where a temperature is taken. A stored value is never converted between sites. Source: bedside handbook 4.1. */
export const TEMPERATURE_SITES = [
  'oral',
  'tympanic',
  'axillary',
  'rectal',
  'forehead',
  'urine',
  'other',
] as const;
export type TemperatureSite = (typeof TEMPERATURE_SITES)[number];

/** Degrees Celsius as read. */
export type Temperature = {
  readonly of: 'temperature';
  readonly celsius: number;
  readonly site: TemperatureSite;
};

/** Where the probe of an oximeter is. */
export const PROBE_SITES = ['finger', 'toe', 'ear', 'forehead', 'other'] as const;
export type ProbeSite = (typeof PROBE_SITES)[number];

/** The target by which a saturation is judged: 1 for most, 2 (88 to 92 %) where a named prescriber decided so. */
export type OxygenScale = 1 | 2;

/**
 * Oxygen in the blood as an oximeter shows it, 0 to 100 %. On oxygen, `device` is what gives it in the place's own
 * words, with the flow or the share of oxygen if known. `pulsePerMinute` is the pulse on the oximeter.
 */
export type OxygenSaturation = {
  readonly of: 'oxygen-saturation';
  readonly percent: number;
  readonly onOxygen: boolean;
  readonly device: string | null;
  readonly litresPerMinute: number | null;
  readonly oxygenPercent: number | null;
  readonly scale: OxygenScale | null;
  /** Who decided on scale 2; null on scale 1 or where no scale is used. */
  readonly scalePrescriber: string | null;
  readonly probe: ProbeSite | null;
  readonly pulsePerMinute: number | null;
};

/** How pain is asked for or seen. Source: bedside handbook 4.3 (from memory). */
export const PAIN_TOOLS = ['numeric', 'visual-analogue', 'verbal', 'face', 'flacc'] as const;
export type PainTool = (typeof PAIN_TOOLS)[number];

export const PAIN_WORDS = ['none', 'mild', 'moderate', 'severe'] as const;
export type PainWord = (typeof PAIN_WORDS)[number];

/**
 * Pain: `score` from 0 to 10 (a visual analogue line of 100 mm counts its mm / 10), or a `word` with the verbal
 * tool; the other of the two is null. `where` is the place of the pain in words.
 */
export type Pain = {
  readonly of: 'pain';
  readonly score: number | null;
  readonly word: PainWord | null;
  readonly tool: PainTool;
  readonly moving: boolean | null;
  readonly where: string | null;
};

/** Alert, newly confused, answers to voice, answers to pain, answers to nothing. Source: bedside handbook 4.3. */
export const CONSCIOUSNESS_LEVELS = ['alert', 'confusion', 'voice', 'pain', 'unresponsive'] as const;
export type ConsciousnessLevel = (typeof CONSCIOUSNESS_LEVELS)[number];

/** One part of the Glasgow scale: its points, or that it cannot be tested (a tube, swollen eyes). */
export type GlasgowPart = number | 'not-testable';

/** Eyes 1 to 4, verbal 1 to 5, motor 1 to 6. */
export type GlasgowParts = {
  readonly eyes: GlasgowPart;
  readonly verbal: GlasgowPart;
  readonly motor: GlasgowPart;
};

/** Never converted into each other: the level is one finding, the Glasgow parts are another. */
export type Consciousness = {
  readonly of: 'consciousness';
  readonly level: ConsciousnessLevel;
  readonly glasgow: GlasgowParts | null;
};

/** How a weight or a height is known. */
export const HOW_KNOWN = ['measured', 'stated', 'estimated'] as const;
export type HowKnown = (typeof HOW_KNOWN)[number];

export type Weight = { readonly of: 'weight'; readonly kg: number; readonly how: HowKnown };

/** `lying` is a length: longer than the standing height of the same person. */
export type Height = {
  readonly of: 'height';
  readonly cm: number;
  readonly how: HowKnown;
  readonly lying: boolean;
};

/** A sign that is neither counted nor taken with a cuff. Only `parseSign` makes one from outside. */
export type Sign = Temperature | OxygenSaturation | Pain | Consciousness | Weight | Height;

export type SignOf = Sign['of'];

export const SIGNS = [
  'temperature',
  'oxygen-saturation',
  'pain',
  'consciousness',
  'weight',
  'height',
] as const satisfies readonly SignOf[];

/** The version of the rules of this folder, as kept beside each value they make. */
export const SIGN_RULE = 'sign-1';
