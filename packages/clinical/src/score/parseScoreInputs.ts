import { type FieldReader, type NumberFault, readFields } from '../contract/fields.js';
import { inOrder } from '../contract/inOrder.js';
import { isBlank } from '../contract/numberText.js';
import { type Parsed, type Refusal, refusal } from '../contract/refusal.js';
import { passes } from '../contract/threshold.js';
import { DEFLATION_COMPARISONS } from '../deflation/comparisons.js';
import { DEFLATION_FIGURES } from '../deflation/figures.js';
import { systolicFault, usableDiastolic } from '../deflation/readPressure.js';
import { SIGN_FIGURES } from '../sign/figures.js';
import { choiceOrNone, numberOrNone, wholeWithin, within, yesNo } from '../sign/readSign.js';
import { CONSCIOUSNESS_LEVELS, type GlasgowPart } from '../sign/sign.js';
import { isPast } from './bands.js';
import { SCORE_FIGURES as F } from './figures.js';
import { DEFAULT_SCORE_RULES, type ScoreRules } from './rules.js';
import { NO_SCORE_INPUTS, type ScoreInput, type ScoreInputs } from './scoreInputs.js';
import { SCORES, type ScoreId } from './scores.js';

/**
 * Reads what a score is made from. Whatever is absent is not known and makes the score incomplete; it is not refused.
 * An absent scale is that of the local rules.
 *
 * Units: /min, %, mmHg, degC, completed years, kg, cm.
 * Errors, all together in the order of the score's inputs: `not-a-number`, `not-whole`, `out-of-range`, `impossible`,
 * `unknown-id`, `not-below-systolic`, and `unknown-field` for an input that the score does not take. The
 * early-warning score is refused under 16 years (`/age out-of-range`), in pregnancy and with a spinal injury
 * (`contradicts`); the sepsis screen under 18.
 * Source: docs/conventions.md section 7; bedside handbook 5.2.
 */
export function parseScoreInputs(
  of: ScoreId,
  input: unknown,
  rules: ScoreRules = DEFAULT_SCORE_RULES,
): Parsed<ScoreInputs> {
  const { takes } = SCORES[of];
  const reader = readFields(input, takes);
  const entries = takes.map((key) => [key, READ[key](reader, rules)]);
  const value: ScoreInputs = { ...NO_SCORE_INPUTS, ...Object.fromEntries(entries) };
  const refusals = [...reader.refusals, ...notFalling(value), ...notFor(of, value)];
  return refusals.length > 0 ? { ok: false, refusals: inOrder(refusals, takes) } : { ok: true, value };
}

type Read<Value> = (reader: FieldReader, rules: ScoreRules) => Value;

/** How each input is read; null is not known. */
const READ: { readonly [Key in ScoreInput]: Read<ScoreInputs[Key]> } = {
  respirations: (reader) => numberOrNone(reader, 'respirations', rateFault),
  oxygenSaturation: (reader) =>
    numberOrNone(reader, 'oxygenSaturation', within(0, SIGN_FIGURES.fullPercent.value)),
  scale: (reader, { oxygenScale }) => {
    const scale = choiceOrNone(reader, 'scale', ['1', '2']);
    return scale === null ? oxygenScale : scale === '1' ? 1 : 2;
  },
  onOxygen: (reader) => yesNo(reader, 'onOxygen', null),
  systolic: (reader) => numberOrNone(reader, 'systolic', systolicFault),
  diastolic: (reader) => usableDiastolic(reader, 'diastolic'),
  pulse: (reader) => numberOrNone(reader, 'pulse', rateFault),
  consciousness: (reader) => choiceOrNone(reader, 'consciousness', CONSCIOUSNESS_LEVELS),
  temperature: (reader) =>
    numberOrNone(
      reader,
      'temperature',
      within(SIGN_FIGURES.coldestCelsius.value, SIGN_FIGURES.hottestCelsius.value),
    ),
  glasgow: (reader) =>
    numberOrNone(reader, 'glasgow', wholeWithin(F.glasgowLeast.value, F.glasgowMost.value)),
  eyes: (reader) => glasgowPart(reader, 'eyes', SIGN_FIGURES.mostEyes.value),
  verbal: (reader) => glasgowPart(reader, 'verbal', SIGN_FIGURES.mostVerbal.value),
  motor: (reader) => glasgowPart(reader, 'motor', SIGN_FIGURES.mostMotor.value),
  age: (reader) => numberOrNone(reader, 'age', wholeWithin(0, F.mostAgeYears.value)),
  pregnant: (reader) => yesNo(reader, 'pregnant', null),
  spinalInjury: (reader) => yesNo(reader, 'spinalInjury', null),
  weightKg: (reader) =>
    numberOrNone(reader, 'weightKg', within(SIGN_FIGURES.lightestKg.value, SIGN_FIGURES.heaviestKg.value)),
  heightCm: (reader) =>
    numberOrNone(reader, 'heightCm', within(SIGN_FIGURES.shortestCm.value, SIGN_FIGURES.tallestCm.value)),
};

/** A rate per minute: from none at all (a measured zero) to the ceiling of a count. */
function rateFault(perMinute: number): NumberFault | null {
  if (perMinute < 0) return { code: 'out-of-range', expected: 'not-negative', figures: { minimum: 0 } };
  const ceilingPerMinute = DEFLATION_FIGURES.ceilingPerMinute.value;
  if (!passes(perMinute, DEFLATION_COMPARISONS.ceilingPerMinute, ceilingPerMinute)) return null;
  return { code: 'impossible', expected: 'at-most-per-minute', figures: { perMinute, ceilingPerMinute } };
}

function glasgowPart(reader: FieldReader, key: string, most: number): GlasgowPart | null {
  const got = reader.raw(key);
  if (isBlank(got)) return null;
  return got === 'not-testable' || got === 'NT' ? 'not-testable' : reader.number(key, wholeWithin(1, most));
}

function notFalling({ systolic, diastolic }: ScoreInputs): Refusal[] {
  if (systolic === null || diastolic === null || diastolic < systolic) return [];
  return [
    refusal('/diastolic', 'not-below-systolic', 'below-systolic', diastolic, { figures: { systolic } }),
  ];
}

/** Whom a score is not for. What is not known bars nobody. */
function notFor(of: ScoreId, { age, pregnant, spinalInjury }: ScoreInputs): Refusal[] {
  const from = of === 'early-warning' ? 'ewFromYears' : of === 'sepsis-screen' ? 'sepsisFromYears' : null;
  const refusals: Refusal[] = [];
  if (from !== null && age !== null && !isPast(age, from)) {
    refusals.push(refusal('/age', 'out-of-range', 'score-from-age', age, { figures: { fromYears: F[from].value } })); // biome-ignore format: one thought
  }
  if (pregnant === true)
    refusals.push(refusal('/pregnant', 'contradicts', 'score-not-in-pregnancy', pregnant));
  if (spinalInjury === true)
    refusals.push(refusal('/spinalInjury', 'contradicts', 'score-not-in-spinal-injury', spinalInjury));
  return refusals;
}
