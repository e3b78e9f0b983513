import {
  type DeflationRules,
  parseRun,
  parseShorthand,
  type Refusal,
  type Run,
  refusal,
  runOfShorthand,
} from '@evenfall/clinical';
import type { DraftRun, RunField, TypedAs } from './pressureDraft.js';

/** What is known besides what was typed. */
export type RunAround = {
  /** The pulse of the round, per minute. */
  readonly pulsePerMinute: number | null;
  /** Where the pulse was lost when it was felt before. */
  readonly lostMmHg: number | null;
};

/** A run, or what is wrong with each field of it; `typed` is the field of the numbers. */
export type ReadRun =
  | { readonly run: Run; readonly wrong: null }
  | { readonly run: null; readonly wrong: Readonly<Partial<Record<RunField | 'typed', Refusal>>> };

/** Which field of the form a place in a run is typed in. */
const FIELD_OF: readonly (readonly [pointer: RegExp, field: RunField | 'typed'])[] = [
  [/^\/peak\/mmHg$/, 'peak'],
  [/^\/palpated\/lostMmHg$/, 'peak'],
  [/^\/palpated\/backMmHg$/, 'backMmHg'],
  [/^\/moments\/0\/atSeconds$/, 'firstAtSeconds'],
  [/^\/moments\/\d+\/atSeconds$/, 'lastAtSeconds'],
];

/**
 * Reads a typed run. The numbers are read as shorthand, the rest as fields; a blank is not known, never zero. Times are
 * seconds from the peak. What is wrong stands beside the field in which it was typed.
 */
export function readRun(typed: TypedAs, around: RunAround, rules: DeflationRules): ReadRun {
  const { fields } = typed;
  const gap = blank(fields.gapFrom) && blank(fields.gapTo) ? '' : `, gap ${fields.gapFrom}-${fields.gapTo}`;
  const device = typed.method === 'device' ? ' device' : '';
  const numbers = parseShorthand(`${withPalpated(typed)}${device}${gap}`);
  if (!numbers.ok) return { run: null, wrong: fromShorthand(numbers.refusals) };
  const bare = runOfShorthand(numbers.value, rules.gaugeStepMmHg);
  const first = bare.moments[0];
  const last = bare.moments.at(-1);
  const read = parseRun(
    {
      ...bare,
      pulsePerMinute: numbers.value.pulse ?? around.pulsePerMinute,
      palpated: { lostMmHg: around.lostMmHg, backMmHg: text(fields.backMmHg) },
      peak: blank(fields.peak) ? null : { mmHg: fields.peak, atSeconds: isTimed(fields) ? 0 : null },
      reinflated: typed.reinflated,
      moments: bare.moments.map((moment) => ({
        ...moment,
        atSeconds:
          moment === first
            ? text(fields.firstAtSeconds)
            : moment === last
              ? text(fields.lastAtSeconds)
              : moment.atSeconds,
      })),
    },
    rules,
  );
  if (read.ok) return { run: read.value, wrong: null };
  const wrong: Partial<Record<RunField | 'typed', Refusal>> = {};
  for (const refused of read.refusals) {
    const field = FIELD_OF.find(([pointer]) => pointer.test(refused.field))?.[1] ?? 'typed';
    wrong[field] ??= refused;
  }
  return { run: null, wrong };
}

/**
 * What was known when a reading was taken; null for one that is still to come. A pulse that was typed with its numbers was
 * not known before: without them the pulse of the round stands.
 *
 * @param felt the pulse of the round, per minute; null for none
 */
export function aroundOf(reading: DraftRun | null, felt: number | null): RunAround | null {
  if (reading === null) return null;
  const { pulsePerMinute, palpated } = reading.run;
  return {
    pulsePerMinute: hasOwnPulse(reading.typedAs) ? felt : pulsePerMinute,
    lostMmHg: palpated.lostMmHg,
  };
}

/** Whether a pulse stands among the numbers as they were typed (`148/92 76`): it is of that text, and goes with it. */
export function hasOwnPulse(typed: DraftRun['typedAs']): boolean {
  if ('marks' in typed) return false;
  const numbers = parseShorthand(withPalpated(typed));
  return numbers.ok && numbers.value.pulse !== null;
}

/** By feel one number is enough: `122` is `122/P`. */
function withPalpated({ method, typed }: TypedAs): string {
  const numbers = typed.trim();
  return method === 'palpation' && /^\d+$/.test(numbers) ? `${numbers}/P` : numbers;
}

function fromShorthand(refusals: readonly Refusal[]): Readonly<Partial<Record<RunField | 'typed', Refusal>>> {
  const wrong: Partial<Record<RunField | 'typed', Refusal>> = {};
  for (const refused of refusals)
    wrong[refused.field.startsWith('/gap') ? 'gapFrom' : 'typed'] ??= ofNumbers(refused);
  return wrong;
}

/** A word that no number is, such as a unit: what can be typed there is said, not every word of the shorthand. */
export function ofNumbers(refused: Refusal): Refusal {
  if (refused.field !== '/text') return refused;
  return refusal('/text', 'unknown-id', 'numbers-in-mmhg', refused.got);
}

function isTimed({ firstAtSeconds, lastAtSeconds }: TypedAs['fields']): boolean {
  return !blank(firstAtSeconds) || !blank(lastAtSeconds);
}

function text(given: string | undefined): string | null {
  return blank(given) ? null : (given ?? null);
}

function blank(given: string | undefined): boolean {
  return (given ?? '').trim() === '';
}
