import type { FieldReader } from '../contract/fields.js';
import type { Flag } from '../contract/flag.js';
import { isBlank } from '../contract/numberText.js';
import { refusal } from '../contract/refusal.js';
import { passes } from '../contract/threshold.js';
import type { SignCircumstances } from './circumstances.js';
import type { SignFlagCode } from './codes.js';
import { SIGN_COMPARISONS as SIDE } from './comparisons.js';
import { SIGN_FIGURES as F } from './figures.js';
import { choiceOrNone, numberOrNone, textOrNone, within, yesNo } from './readSign.js';
import { type OxygenSaturation, PROBE_SITES } from './sign.js';

export const OXYGEN_FIELDS = [
  'of',
  'percent',
  'onOxygen',
  'device',
  'litresPerMinute',
  'oxygenPercent',
  'scale',
  'scalePrescriber',
  'probe',
  'pulsePerMinute',
] as const;

/** What says how oxygen is given, and so cannot stand beside air. */
const OF_OXYGEN = ['device', 'litresPerMinute', 'oxygenPercent'] as const;

/** Reads a saturation; null if anything was refused. Whether on air or oxygen must be said; scale 2 names who decided. */
export function readOxygenSaturation(reader: FieldReader): OxygenSaturation | null {
  const percent = reader.number('percent', within(0, F.fullPercent.value));
  const onOxygen = yesNo(reader, 'onOxygen', undefined);
  if (onOxygen === false) {
    for (const key of OF_OXYGEN) {
      const got = reader.raw(key);
      if (!isBlank(got)) reader.refusals.push(refusal(`/${key}`, 'contradicts', 'nothing-on-air', got));
    }
  }
  const device = textOrNone(reader, 'device');
  const litresPerMinute = numberOrNone(reader, 'litresPerMinute', within(0, F.mostLitresPerMinute.value));
  const share = within(F.airPercent.value, F.fullPercent.value);
  const oxygenPercent = numberOrNone(reader, 'oxygenPercent', share);
  const written = choiceOrNone(reader, 'scale', ['1', '2']);
  const scale = written === null ? null : written === '1' ? 1 : 2;
  const scalePrescriber = textOrNone(reader, 'scalePrescriber');
  if (scale === 2 && scalePrescriber === null) {
    reader.refusals.push(refusal('/scalePrescriber', 'missing', 'named-prescriber', null));
  }
  if (scale !== 2 && scalePrescriber !== null) {
    reader.refusals.push(refusal('/scalePrescriber', 'contradicts', 'prescriber-of-scale-two', scalePrescriber)); // biome-ignore format: one thought
  }
  const probe = choiceOrNone(reader, 'probe', PROBE_SITES);
  const pulsePerMinute = numberOrNone(reader, 'pulsePerMinute', within(0, F.oximeterCeilingPerMinute.value));
  if (percent === null || onOxygen === undefined) return null;
  return {
    of: 'oxygen-saturation',
    percent,
    onOxygen,
    device,
    litresPerMinute,
    oxygenPercent,
    scale,
    scalePrescriber,
    probe,
    pulsePerMinute,
  };
}

/**
 * What to know of a saturation: a number no oximeter is held to, a child of concern, outside the target of its
 * scale (above only on oxygen), and an oximeter whose pulse is not the felt one.
 * Source: bedside handbook 4.2.
 */
export function oxygenFlags(sign: OxygenSaturation, known: SignCircumstances): Flag<SignFlagCode>[] {
  const { percent } = sign;
  const flags: Flag<SignFlagCode>[] = [];
  const lowestPercent = F.oximeterLowPercent.value;
  if (passes(percent, SIDE.oximeterLowPercent, lowestPercent)) {
    flags.push({ code: 'below-oximeter-range', figures: { percent, lowestPercent } });
  }
  return [...flags, ...targetFlags(sign, known), ...pulseFlags(sign, known)];
}

/** Whether what was said of a saturation is not to rely on it. */
export function isSaturationDoubtful(flags: readonly Flag[]): boolean {
  return flags.some(({ code }) => code === 'oximeter-pulse-disagrees');
}

function targetFlags(
  { percent, scale, onOxygen }: OxygenSaturation,
  { ageMonths }: SignCircumstances,
): Flag<SignFlagCode>[] {
  if (ageMonths !== null && passes(ageMonths, SIDE.childUnderMonths, F.childUnderMonths.value)) {
    const limitPercent = F.childLowPercent.value;
    const isLow = passes(percent, SIDE.childLowPercent, limitPercent);
    return isLow ? [{ code: 'low-oxygen-child', figures: { percent, limitPercent } }] : [];
  }
  if (scale === null) return [];
  const [low, high] =
    scale === 1
      ? (['scaleOneLowPercent', 'scaleOneHighPercent'] as const)
      : (['scaleTwoLowPercent', 'scaleTwoHighPercent'] as const);
  const figures = { percent, lowPercent: F[low].value, highPercent: F[high].value };
  if (passes(percent, SIDE[low], figures.lowPercent)) return [{ code: 'below-oxygen-target', figures }];
  const isHigh = onOxygen && passes(percent, SIDE[high], figures.highPercent);
  return isHigh ? [{ code: 'above-oxygen-target', figures }] : [];
}

function pulseFlags(
  { pulsePerMinute }: OxygenSaturation,
  { feltPulsePerMinute }: SignCircumstances,
): Flag<SignFlagCode>[] {
  if (pulsePerMinute === null || feltPulsePerMinute === null) return [];
  const differencePerMinute = Math.abs(pulsePerMinute - feltPulsePerMinute);
  const limitPerMinute = F.oximeterPulseDifferencePerMinute.value;
  if (!passes(differencePerMinute, SIDE.oximeterPulseDifferencePerMinute, limitPerMinute)) return [];
  const figures = { pulsePerMinute, feltPulsePerMinute, differencePerMinute, limitPerMinute };
  return [{ code: 'oximeter-pulse-disagrees', figures }];
}
