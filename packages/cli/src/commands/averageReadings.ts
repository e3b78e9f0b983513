import {
  AVERAGING_RULE_IDS,
  type AveragingRuleId,
  DEFAULT_RUN_RULES,
  type Parsed,
  parseShorthand,
  type Reading,
  type ReadingsCircumstances,
  type Refusal,
  refusal,
  shorthandResult,
} from '@evenfall/clinical';

/** What was typed for an average. */
export type TypedReadings = {
  readonly readings: readonly Reading[];
  readonly rule: AveragingRuleId;
  readonly raisedFrom: ReadingsCircumstances['raisedFrom'];
};

/**
 * Reads the pressures of an average, each one reading as it is written: `150/92`, `118/62/0`, `122/P`, and the two
 * limits of a child. Sounds that went to zero give the diastolic that is used.
 *
 * Errors, all together: `/readings/N` (from 0) for a pressure, `/raised-from`, `/rule`; a written mean
 * (`148/92x2`) is no reading (`contradicts`).
 */
export function typedReadings(
  operands: readonly string[],
  raised: string | null,
  typedRule: string | null,
): Parsed<TypedReadings> {
  const refusals: Refusal[] = [];
  const readings = operands.flatMap((text, at) => {
    const read = readOne(text, `/readings/${at}`);
    if (!read.ok) refusals.push(...read.refusals);
    return read.ok ? [read.value] : [];
  });
  const raisedFrom = raised === null ? null : limitsOf(raised, refusals);
  const rule = AVERAGING_RULE_IDS.find((id) => id === typedRule);
  if (rule === undefined) {
    const choices = AVERAGING_RULE_IDS;
    refusals.push(
      refusal('/rule', typedRule === null ? 'missing' : 'unknown-id', 'one-of', typedRule, { choices }),
    );
  }
  if (refusals.length > 0 || rule === undefined) return { ok: false, refusals };
  return { ok: true, value: { readings, rule, raisedFrom } };
}

/** One reading: the numbers alone. A second word would be a reading of its own that lost its slash. */
function readOne(text: string, field: string): Parsed<Reading> {
  if (/\s/.test(text) || !text.includes('/')) {
    return { ok: false, refusals: [refusal(field, 'not-a-number', 'pressure', text)] };
  }
  const written = parseShorthand(text);
  if (!written.ok) return { ok: false, refusals: written.refusals.map((one) => ({ ...one, field })) };
  if (written.value.readings > 1) {
    return { ok: false, refusals: [refusal(field, 'contradicts', 'one-reading', text)] };
  }
  const { systolic, diastolicUsed } = shorthandResult(written.value, DEFAULT_RUN_RULES);
  return { ok: true, value: { systolic, diastolic: diastolicUsed } };
}

/** The limits from which a child's reading is raised; both numbers are needed. */
function limitsOf(text: string, refusals: Refusal[]): ReadingsCircumstances['raisedFrom'] {
  const field = '/raised-from';
  const read = readOne(text, field);
  if (!read.ok) {
    refusals.push(...read.refusals);
    return null;
  }
  const { systolic, diastolic } = read.value;
  if (diastolic !== null) return { systolic, diastolic };
  refusals.push(refusal(field, 'missing', 'pressure', text));
  return null;
}
