import {
  type OxygenScale,
  type Parsed,
  parseSign,
  type Refusal,
  SIGN_FIGURES,
  SIGNS,
  type Sign,
  type SignOf,
} from '@evenfall/clinical';

/** The fields of each sign as the form has them; each is kept as text under `sign.field`. */
export const TYPED_FIELDS = {
  temperature: ['celsius', 'site'],
  'oxygen-saturation': [
    'percent',
    'breathes',
    'device',
    'litresPerMinute',
    'oxygenPercent',
    'pulsePerMinute',
    'probe',
  ],
  pain: ['way', 'score', 'word', 'moving', 'where'],
  consciousness: ['level', 'eyes', 'verbal', 'motor'],
  weight: ['kg', 'how'],
  height: ['cm', 'how', 'lying'],
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

/** Reads a sign from its fields as typed. What was not typed is missing, never a zero and never an assumption. */
export function readTypedSign(of: SignOf, typed: TypedOf, target: OxygenTarget): Parsed<Sign> {
  return parseSign({ of, ...INPUTS[of](typed, target) });
}

type Input = Readonly<Record<string, unknown>>;

const INPUTS: Readonly<Record<SignOf, (typed: TypedOf, target: OxygenTarget) => Input>> = {
  temperature: (typed) => ({ celsius: given(typed, 'celsius'), site: given(typed, 'site') }),
  'oxygen-saturation': oxygenInput,
  pain: painInput,
  consciousness: (typed) => ({ level: given(typed, 'level'), glasgow: glasgowInput(typed) }),
  weight: (typed) => ({ kg: given(typed, 'kg'), how: given(typed, 'how') }),
  height: (typed) => ({
    cm: given(typed, 'cm'),
    how: given(typed, 'how'),
    lying: typed('lying') === 'yes',
  }),
};

function oxygenInput(typed: TypedOf, { scale, prescriber }: OxygenTarget): Input {
  const breathes = typed('breathes');
  // How oxygen is given is asked for only on oxygen: what was typed before a change of mind is not read.
  const onOxygen =
    breathes === 'oxygen'
      ? {
          device: given(typed, 'device'),
          litresPerMinute: given(typed, 'litresPerMinute'),
          oxygenPercent: given(typed, 'oxygenPercent'),
        }
      : {};
  return {
    percent: given(typed, 'percent'),
    ...(breathes === '' ? {} : { onOxygen: breathes === 'oxygen' }),
    ...onOxygen,
    scale,
    scalePrescriber: prescriber,
    probe: given(typed, 'probe'),
    pulsePerMinute: given(typed, 'pulsePerMinute'),
  };
}

function painInput(typed: TypedOf): Input {
  const isVerbal = typed('way') === 'verbal';
  const moving = typed('moving');
  return {
    tool: isVerbal ? 'verbal' : 'numeric',
    ...(isVerbal ? { word: given(typed, 'word') } : { score: given(typed, 'score') }),
    moving: moving === '' ? null : moving === 'moving',
    where: given(typed, 'where'),
  };
}

/** Null where no part was touched; else all three, so that a part forgotten is missing. */
function glasgowInput(typed: TypedOf): Input | null {
  const parts = { eyes: given(typed, 'eyes'), verbal: given(typed, 'verbal'), motor: given(typed, 'motor') };
  return Object.values(parts).every((part) => part === null) ? null : parts;
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

/** The signs of which something was typed and not kept. A way of asking alone is nothing typed. */
export function unkeptSigns(fields: Readonly<Record<string, string>>): readonly SignOf[] {
  return SIGNS.filter((of) =>
    TYPED_FIELDS[of].some((field) => field !== 'way' && (fields[`${of}.${field}`] ?? '').trim() !== ''),
  );
}
