import {
  type OxygenScale,
  type PainTool,
  type Parsed,
  parseSign,
  type Refusal,
  SIGN_FIGURES,
  SIGNS,
  type Sign,
  type SignOf,
} from '@evenfall/clinical';
import type { TypedNumber } from '@evenfall/record';
import type { Say } from '@evenfall/words';
import {
  asTyped,
  fieldIn,
  isMeasured,
  keptOf,
  type Measured,
  type TypedMeasure,
  typedIn,
  unitNamed,
} from '../app/typedMeasure.js';
import { withPoint, withPoints } from '../app/withPoint.js';
import { refusedInMm, scoreTyped } from './typedLine.js';

/** The fields of each sign as the form has them; each is kept as text under `sign.field`. */
export const TYPED_FIELDS = {
  temperature: ['celsius', 'celsius.[degF]', 'celsius.unit', 'site'],
  'oxygen-saturation': [
    'percent',
    'breathes',
    'device',
    'litresPerMinute',
    'oxygenPercent',
    'pulsePerMinute',
    'probe',
  ],
  pain: ['way', 'score', 'mm', 'word', 'moving', 'where'],
  consciousness: ['level', 'eyes', 'verbal', 'motor'],
  weight: ['kg', 'kg.[lb_av]', 'kg.unit', 'how'],
  height: ['cm', 'cm.[in_i]', 'cm.unit', 'how', 'lying'],
} as const satisfies Record<SignOf, readonly string[]>;

/** Gives what was typed into a field of one sign; empty for nothing. */
export type TypedOf = (field: string) => string;

/** By what a saturation of this person is judged. */
export type OxygenTarget = { readonly scale: OxygenScale | null; readonly prescriber: string | null };

/** Scale 2 where somebody decided so by name; none for a child, who has another limit; else scale 1. */
export function oxygenTarget(prescriber: string | null, ageMonths: number | null): OxygenTarget {
  if (prescriber !== null) return { scale: 2, prescriber };
  const isChild = ageMonths !== null && ageMonths < SIGN_FIGURES.childUnderMonths.value;
  return { scale: isChild ? null : 1, prescriber: null };
}

/** The field of the form it is typed in, by the unit in which this device's user types it. */
export function fieldTyped(key: Measured, { manner }: Say): string {
  return fieldIn(key, key, manner);
}

/** The field of the form for a unit that is chosen beside the number. */
export function unitField(key: Measured): string {
  return `${key}.unit`;
}

/** The number of a sign as it was typed, with its unit; null for a sign that has no other unit to be typed in. */
export function typedNumberOf(of: SignOf, typed: TypedOf, say: Say): TypedNumber | null {
  const key = MEASURED_OF[of];
  return key === undefined ? null : typedIn(typedMeasure(typed, key, say), key, say.manner);
}

const MEASURED_OF: Readonly<Partial<Record<SignOf, Measured>>> = {
  temperature: 'celsius',
  weight: 'kg',
  height: 'cm',
};

/**
 * Reads a sign from its fields as typed. What was not typed is missing, never a zero and never an assumption. What was
 * typed in another unit is converted here, once; a refusal of it speaks of that unit again.
 */
export function readTypedSign(of: SignOf, typed: TypedOf, target: OxygenTarget, say: Say): Parsed<Sign> {
  const parsed = parseSign({ of, ...INPUTS[of](typed, target, say) });
  if (parsed.ok) return parsed;
  return { ok: false, refusals: parsed.refusals.map((one) => inWords(one, typed, say)) };
}

function inWords(refusal: Refusal, typed: TypedOf, say: Say): Refusal {
  if (typed('way') === 'visual-analogue') return refusedInMm(refusal, numeric(typed, 'mm', say), '/mm');
  const key = refusal.field.slice(1);
  return isMeasured(key) ? asTyped(refusal, typedMeasure(typed, key, say), key, say.manner) : refusal;
}

type Input = Readonly<Record<string, unknown>>;

const INPUTS: Readonly<Record<SignOf, (typed: TypedOf, target: OxygenTarget, say: Say) => Input>> = {
  temperature: (typed, _target, say) => ({
    celsius: measured(typed, 'celsius', say),
    site: given(typed, 'site'),
  }),
  'oxygen-saturation': oxygenInput,
  pain: painInput,
  consciousness: (typed) => ({ level: given(typed, 'level'), glasgow: glasgowInput(typed) }),
  weight: (typed, _target, say) => ({ kg: measured(typed, 'kg', say), how: given(typed, 'how') }),
  height: (typed, _target, say) => ({
    cm: measured(typed, 'cm', say),
    how: given(typed, 'how'),
    lying: typed('lying') === 'yes',
  }),
};

function oxygenInput(typed: TypedOf, { scale, prescriber }: OxygenTarget, say: Say): Input {
  const number = (field: string) => numeric(typed, field, say);
  const breathes = typed('breathes');
  // How oxygen is given is asked for only on oxygen: what was typed before a change of mind is not read.
  const onOxygen =
    breathes === 'oxygen'
      ? {
          device: given(typed, 'device'),
          litresPerMinute: number('litresPerMinute'),
          oxygenPercent: number('oxygenPercent'),
        }
      : {};
  return {
    percent: number('percent'),
    ...(breathes === '' ? {} : { onOxygen: breathes === 'oxygen' }),
    ...onOxygen,
    scale,
    scalePrescriber: prescriber,
    probe: given(typed, 'probe'),
    pulsePerMinute: number('pulsePerMinute'),
  };
}

function painInput(typed: TypedOf, _target: OxygenTarget, say: Say): Input {
  const tool = painTool(typed('way'));
  const moving = typed('moving');
  const asked = {
    numeric: () => ({ score: given(typed, 'score') }),
    'visual-analogue': () => ({ score: scoreTyped(numeric(typed, 'mm', say)) }),
    verbal: () => ({ word: given(typed, 'word') }),
  }[tool];
  return {
    tool,
    ...asked(),
    moving: moving === '' ? null : moving === 'moving',
    where: given(typed, 'where'),
  };
}

/** How a pain is asked for on a screen: in numbers, on a line, or in words. */
export const PAIN_WAYS = ['numeric', 'visual-analogue', 'verbal'] as const satisfies readonly PainTool[];

export function painTool(way: string): (typeof PAIN_WAYS)[number] {
  return PAIN_WAYS.find((one) => one === way) ?? 'numeric';
}

/** Null where no part was touched; else all three, so that a part forgotten is missing. */
function glasgowInput(typed: TypedOf): Input | null {
  const parts = { eyes: given(typed, 'eyes'), verbal: given(typed, 'verbal'), motor: given(typed, 'motor') };
  return Object.values(parts).every((part) => part === null) ? null : parts;
}

/** A number as typed, its decimal comma as a point where the language writes one. */
function numeric(typed: TypedOf, field: string, say: Say): string | null {
  const text = given(typed, field);
  return text === null ? null : withPoint(text, say);
}

/** A number in the unit that is kept; what is none stays as typed, to be refused. */
function measured(typed: TypedOf, key: Measured, say: Say): string | number | null {
  return keptOf(typedMeasure(typed, key, say), key, say.manner);
}

function typedMeasure(typed: TypedOf, key: Measured, say: Say): TypedMeasure {
  const text = given(typed, fieldTyped(key, say));
  return {
    text: text === null ? null : withPoints(text, say),
    chosen: unitNamed(key, typed(unitField(key))),
  };
}

function given(typed: TypedOf, field: string): string | null {
  const text = typed(field).trim();
  return text === '' ? null : text;
}

/** What is wrong with a sign, by the field of the form beside which it is said. */
export type SignWrong = Readonly<Record<string, readonly Refusal[]>>;

/** Refusals by the field of the form: `/glasgow/eyes` is said at `eyes`. */
export function wrongByField(refusals: readonly Refusal[]): SignWrong {
  const wrong: Record<string, Refusal[]> = {};
  for (const refusal of refusals) {
    const name = refusal.field.split('/').at(-1) ?? '';
    const field = name === 'onOxygen' ? 'breathes' : name;
    wrong[field] = [...(wrong[field] ?? []), refusal];
  }
  return wrong;
}

/** The signs of which something was typed and not kept. A way of asking or a unit alone is nothing typed. */
export function unkeptSigns(fields: Readonly<Record<string, string>>): readonly SignOf[] {
  return SIGNS.filter((of) =>
    TYPED_FIELDS[of].some(
      (field) =>
        field !== 'way' && !field.endsWith('.unit') && (fields[`${of}.${field}`] ?? '').trim() !== '',
    ),
  );
}
