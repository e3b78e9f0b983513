import type { Flag } from '../contract/flag.js';
import { isPast } from './bands.js';
import {
  type EarlyWarningBand,
  type EarlyWarningResponseCode,
  earlyWarningBand,
  earlyWarningResponse,
} from './earlyWarningResponse.js';
import * as points from './earlyWarningTable.js';
import { SCORE_FIGURES as F } from './figures.js';
import type { ScoreInputs } from './scoreInputs.js';

/** The seven parts, in the order of the table; all are needed. No diastolic pressure is among them. */
export const EARLY_WARNING_PARTS = [
  'respirations',
  'oxygenSaturation',
  'onOxygen',
  'systolic',
  'pulse',
  'consciousness',
  'temperature',
] as const;
export type EarlyWarningPart = (typeof EARLY_WARNING_PARTS)[number];

export type EarlyWarningAlertCode =
  | 'unresponsive'
  | 'no-breath-counted'
  | 'no-pulse-counted'
  | 'three-points-respirations'
  | 'three-points-oxygen-saturation'
  | 'three-points-systolic'
  | 'three-points-pulse'
  | 'three-points-consciousness'
  | 'three-points-temperature'
  | 'early-warning-medium'
  | 'early-warning-high';

/** `air-assumed` is added at the command line, the one place where a switch not given is air. */
export type EarlyWarningFlagCode =
  | 'score-age-not-known'
  | 'scale-two'
  | 'saturation-doubtful'
  | 'air-assumed';

/**
 * An early-warning score. `atLeast` is the sum of the parts that are known: the total where all are. With a part
 * missing `total`, `band`, `response` and `checks` are null, and `alerts` still holds somebody who does not respond or
 * has no breath or pulse, every part of 3 points, and a sum that is medium or high already.
 */
export type EarlyWarning = {
  readonly total: number | null;
  readonly atLeast: number;
  readonly parts: { readonly [Part in EarlyWarningPart]: number | null };
  readonly band: EarlyWarningBand | null;
  /** The inputs that are not known. */
  readonly missing: readonly EarlyWarningPart[];
  readonly alerts: readonly Flag<EarlyWarningAlertCode>[];
  readonly response: Flag<EarlyWarningResponseCode> | null;
  readonly checks: Flag<EarlyWarningResponseCode> | null;
  readonly flags: readonly Flag<EarlyWarningFlagCode>[];
  readonly why: readonly Flag<'parts-missing'>[];
};

/** The parts that can reach 3 points, and the code that says so; oxygen gives 2 at most. */
const ALERTS: readonly (readonly [EarlyWarningPart, EarlyWarningAlertCode])[] = [
  ['respirations', 'three-points-respirations'],
  ['oxygenSaturation', 'three-points-oxygen-saturation'],
  ['systolic', 'three-points-systolic'],
  ['pulse', 'three-points-pulse'],
  ['consciousness', 'three-points-consciousness'],
  ['temperature', 'three-points-temperature'],
];

/**
 * The early-warning score of an adult who is not pregnant and has no spinal injury. Whether oxygen is given must be
 * known; a scale that is not said is scale 1.
 *
 * Errors: none; {@link parseScoreInputs} refuses whom the score is not for.
 * Source: Royal College of Physicians, London 2017, with acknowledgement; bedside handbook 5.2.
 *
 * @example earlyWarning(inputs) // breaths 22, 94 % on air, 108 mmHg, pulse 112, alert, 38.4 degC: 7, high
 */
export function earlyWarning(inputs: ScoreInputs): EarlyWarning {
  const parts = partsOf(inputs);
  const missing = EARLY_WARNING_PARTS.filter((part) => inputs[part] === null);
  const atLeast = EARLY_WARNING_PARTS.reduce((sum, part) => sum + (parts[part] ?? 0), 0);
  const threes = ALERTS.filter(([part]) => parts[part] === F.ewMostPoints.value);
  const isWhole = missing.length === 0;
  const band = isWhole ? earlyWarningBand(atLeast, threes.length > 0) : null;
  const { response, checks } = band === null ? NO_RESPONSE : earlyWarningResponse(band, atLeast);
  return {
    total: isWhole ? atLeast : null,
    atLeast,
    parts,
    band,
    missing,
    alerts: [
      ...noLife(inputs),
      ...threes.map(([part, code]) => ({ code, figures: partFigures(inputs, part) })),
      ...sumAlerts(atLeast),
    ],
    response,
    checks,
    flags: flagsOf(inputs),
    why: isWhole ? [] : [{ code: 'parts-missing', figures: { missing: missing.length, atLeast } }],
  };
}

const NO_RESPONSE = { response: null, checks: null };

function partsOf(inputs: ScoreInputs): EarlyWarning['parts'] {
  const { oxygenSaturation: percent, onOxygen } = inputs;
  return {
    respirations: ifKnown(inputs.respirations, points.pointsOfBreaths),
    oxygenSaturation:
      percent === null ? null : points.pointsOfSaturation(percent, inputs.scale ?? 1, onOxygen),
    onOxygen: ifKnown(onOxygen, points.pointsOfOxygen),
    systolic: ifKnown(inputs.systolic, points.pointsOfSystolic),
    pulse: ifKnown(inputs.pulse, points.pointsOfPulse),
    consciousness: ifKnown(inputs.consciousness, points.pointsOfConsciousness),
    temperature: ifKnown(inputs.temperature, points.pointsOfTemperature),
  };
}

function ifKnown<Value>(value: Value | null, pointsOf: (value: Value) => number): number | null {
  return value === null ? null : pointsOf(value);
}

function partFigures(inputs: ScoreInputs, part: EarlyWarningPart): Flag['figures'] {
  const value = inputs[part];
  return typeof value === 'number'
    ? { value, points: F.ewMostPoints.value }
    : { points: F.ewMostPoints.value };
}

/** What is an emergency before any points are: a review by the ward would come too late. Source: bedside handbook 2.5, 5.2. */
function noLife({ consciousness, respirations, pulse }: ScoreInputs): Flag<EarlyWarningAlertCode>[] {
  const found: readonly (readonly [boolean, EarlyWarningAlertCode])[] = [
    [consciousness === 'unresponsive', 'unresponsive'],
    [respirations === 0, 'no-breath-counted'],
    [pulse === 0, 'no-pulse-counted'],
  ];
  return found.filter(([holds]) => holds).map(([, code]) => ({ code, figures: {} }));
}

function sumAlerts(atLeast: number): Flag<EarlyWarningAlertCode>[] {
  if (isPast(atLeast, 'ewHighTotal')) {
    return [{ code: 'early-warning-high', figures: { atLeast, limit: F.ewHighTotal.value } }];
  }
  if (!isPast(atLeast, 'ewMediumTotal')) return [];
  return [{ code: 'early-warning-medium', figures: { atLeast, limit: F.ewMediumTotal.value } }];
}

function flagsOf({ age, scale }: ScoreInputs): Flag<EarlyWarningFlagCode>[] {
  const flags: Flag<EarlyWarningFlagCode>[] = [];
  if (age === null) flags.push({ code: 'score-age-not-known', figures: { fromYears: F.ewFromYears.value } });
  if (scale === 2) flags.push({ code: 'scale-two', figures: {} });
  return flags;
}
