import { type Parsed, type Refusal, type RefusalCode, refusal } from '@evenfall/clinical';
import {
  REPORTED_STATUSES,
  type ReportedContent,
  type ReportedValue,
  refusalsOf,
  reportedValue,
  type Stamp,
  stamp,
} from '@evenfall/record';
import type { Reported } from '../../reading/reported.js';
import { BODY_POSITION, SYSTEMS } from '../systems.js';
import { asObject, codesIn, type Json, listIn, objectIn, textIn, textOfConcept } from './json.js';
import { DIASTOLIC_CODES, SIGN_BY_LOINC, SYSTOLIC_CODES } from './knownCodes.js';
import { postureKnownIn } from './postureIn.js';
import { converted, UNITS_READ } from './units.js';

/** Names of who measured, by the addresses that a bundle gives them. */
export type Names = (reference: string) => string | null;

/**
 * Reads an Observation of any system as a value from elsewhere; what it holds besides is passed over.
 *
 * Errors: everything that is wrong with it at its JSON Pointer below `at`: a code that is no vital sign, a unit or a
 * number that cannot be, no time with its offset, a status that gives no value.
 */
export function readObservation(resource: Json, at: string, names: Names): Parsed<Reported> {
  const refusals: Refusal[] = [];
  const refuse: Refuse = (place, code, expected, got, choices = [], figures = {}) => {
    refusals.push(refusal(at + place, code, expected, got, { choices, figures }));
    return null;
  };
  // FHIR R4, Extensibility: what it may change of the meaning is not known here.
  if (listIn(resource, 'modifierExtension').length > 0)
    refuse('/modifierExtension', 'contradicts', 'no-modifier', null);
  const status = statusOf(resource, refuse);
  const time = timeOf(resource, refuse);
  const value = signIn(resource, refuse);
  const posed = value?.value.of === 'pressure' ? postureKnownIn(resource, refuse) : NOT_POSED;
  if (refusals.length > 0 || status === null || time === null || value === null) {
    return { ok: false, refusals };
  }
  const content: ReportedContent = {
    value: value.value,
    asSent: value.asSent,
    by: cut(whoMeasured(resource, names), LONGEST_WORDS),
    method: cut(textOfConcept(resource.method), LONGEST_WORDS),
    site: cut(textOfConcept(resource.bodySite), LONGEST_WORDS),
    posture: cut(postureOf(resource), LONGEST_WORDS),
    interpretation: cut(
      listIn(resource, 'interpretation').map(textOfConcept).find(isText) ?? null,
      LONGEST_WORDS,
    ),
    status: status === 'entered-in-error' ? 'unknown' : status,
    until: time.until,
    note: cut(
      listIn(resource, 'note')
        .map((note) => textIn(asObject(note), 'text'))
        .filter(isText)
        .join('\n'),
      LONGEST_NOTE,
    ),
    source: { format: 'fhir', id: cut(nameOf(resource), LONGEST_NAME) },
    saidAt: stampOf(resource.issued)?.at ?? null,
    ...posed,
  };
  return {
    ok: true,
    value: {
      at,
      content,
      measuredAt: time.measuredAt,
      isInError: status === 'entered-in-error',
      resource: textIn(resource, 'id'),
    },
  };
}

const NOT_POSED = { unwellUpright: null, uprightMinutes: null, lyingMinutes: null } as const;

/** Longer words than these are cut; what was said in full stands in the file. Characters; source: decision of this project. */
const LONGEST_WORDS = 200;
const LONGEST_NOTE = 1000;
const LONGEST_NAME = 400;

function cut(text: string | null, longest: number): string | null {
  const trimmed = text?.trim() ?? '';
  return trimmed === '' ? null : trimmed.slice(0, longest).trim();
}

const isText = (text: string | null): text is string => text !== null;

/** Says what is wrong at a place below the resource; the answer is always null. */
export type Refuse = (
  place: string,
  code: RefusalCode,
  expected: string,
  got: unknown,
  choices?: readonly string[],
  figures?: Refusal['figures'],
) => null;

const STATUSES = [...REPORTED_STATUSES, 'entered-in-error'] as const;

function statusOf(resource: Json, refuse: Refuse) {
  const got = resource.status;
  const status = STATUSES.find((one) => one === got);
  if (status !== undefined) return status;
  return refuse('/status', got === undefined ? 'missing' : 'unknown-id', 'choice', got, STATUSES);
}

type Time = { readonly measuredAt: Stamp; readonly until: string | null };

function timeOf(resource: Json, refuse: Refuse): Time | null {
  const period = objectIn(resource, 'effectivePeriod');
  const key = ['effectiveDateTime', 'effectiveInstant'].find((one) => resource[one] !== undefined);
  if (period !== null && key !== undefined)
    return refuse(`/${key}`, 'contradicts', 'one-effective', resource[key]);
  const place = period === null ? `/${key ?? 'effectiveDateTime'}` : '/effectivePeriod/start';
  const got = period === null ? resource[key ?? 'effectiveDateTime'] : period.start;
  const measuredAt = stampOf(got);
  if (measuredAt === null) {
    return refuse(place, got === undefined ? 'missing' : 'not-a-time', 'datetime', got);
  }
  if (period?.end === undefined) return { measuredAt, until: null };
  const end = stampOf(period.end);
  if (end === null) return refuse('/effectivePeriod/end', 'not-a-time', 'datetime', period.end);
  return { measuredAt, until: end.at };
}

/** An instant with seconds and offset, as FHIR writes one; the offset is all that is known of the zone. */
export function stampOf(got: unknown): Stamp | null {
  if (typeof got !== 'string' || !/T\d{2}:\d{2}:\d{2}/.test(got)) return null;
  const zone = /([+-]\d{2}:\d{2})$/.exec(got)?.[1] ?? 'UTC';
  const read = stamp.safeParse({ at: got, zone, asEntered: null });
  return read.success ? read.data : null;
}

type Value = { readonly value: ReportedValue; readonly asSent: string | null };

function signIn(resource: Json, refuse: Refuse): Value | null {
  const codes = loincIn(resource.code);
  const of = codes.map((code) => SIGN_BY_LOINC[code]).find((one) => one !== undefined);
  if (of === undefined) {
    const code = resource.code === undefined ? 'missing' : 'unknown-id';
    return refuse('/code', code, 'vital-sign-code', codes[0] ?? textOfConcept(resource.code));
  }
  if (of === 'pressure') return pressureIn(resource, refuse);
  const number = numberIn(resource, of, '', refuse);
  if (number === null) return null;
  const value = { of, [KEY_OF[of]]: number.value } as ReportedValue;
  return canBe(value, '/valueQuantity/value', number.got, refuse) ? { value, asSent: number.asSent } : null;
}

/** Under which key a sign has its number. */
const KEY_OF = {
  pulse: 'perMinute',
  breaths: 'perMinute',
  temperature: 'celsius',
  'oxygen-saturation': 'percent',
  weight: 'kg',
  height: 'cm',
} as const;

function pressureIn(resource: Json, refuse: Refuse): Value | null {
  const parts = listIn(resource, 'component').map(asObject);
  const find = (codes: readonly string[]) =>
    parts.flatMap((part, at) => (loincIn(part.code).some((code) => codes.includes(code)) ? [at] : []));
  const [systolics, diastolics] = [find(SYSTOLIC_CODES), find(DIASTOLIC_CODES)];
  // Which of two is the pressure nobody here can know.
  const second = systolics[1] ?? diastolics[1];
  if (second !== undefined) return refuse(`/component/${second}`, 'ambiguous', 'one-of-each', null);
  const [at = -1, below = -1] = [systolics[0], diastolics[0]];
  if (at < 0) return refuse('/component', 'missing', 'systolic-component', null);
  const systolic = numberIn(parts[at] as Json, 'pressure', `/component/${at}`, refuse);
  // Only what has no value at all is absent: one of another type is there, and is refused below.
  const isAbsent = below < 0 || !Object.keys(parts[below] as Json).some((key) => key.startsWith('value'));
  const diastolic = isAbsent
    ? null
    : numberIn(parts[below] as Json, 'pressure', `/component/${below}`, refuse);
  if (systolic === null || (diastolic === null && !isAbsent)) return null;
  const value = { of: 'pressure', systolic: systolic.value, diastolic: diastolic?.value ?? null } as const;
  const sent = [systolic.asSent, diastolic?.asSent ?? null].filter(isText);
  if (value.diastolic !== null && value.diastolic >= value.systolic)
    return refuse(
      `/component/${below}/valueQuantity/value`,
      'not-below-systolic',
      'diastolic-below',
      diastolic?.got,
    );
  if (!canBe(value, `/component/${at}/valueQuantity/value`, systolic.got, refuse)) return null;
  return { value, asSent: sent.length === 0 ? null : sent.join(' / ') };
}

type Given = { readonly value: number; readonly asSent: string | null; readonly got: unknown };

/** The number of a quantity in the unit of the sign. */
function numberIn(part: Json, of: ReportedValue['of'], at: string, refuse: Refuse): Given | null {
  const quantity = objectIn(part, 'valueQuantity');
  const place = `${at}/valueQuantity`;
  if (quantity === null) {
    const got = Object.keys(part).find((key) => key.startsWith('value'));
    const reason = textOfConcept(part.dataAbsentReason);
    return refuse(place, 'missing', 'quantity', got ?? reason);
  }
  const { value, code, system, comparator } = quantity;
  if (comparator !== undefined)
    return refuse(`${place}/comparator`, 'contradicts', 'no-comparator', comparator);
  if (typeof value !== 'number' || !Number.isFinite(value))
    return refuse(`${place}/value`, value === undefined ? 'missing' : 'not-a-number', 'number', value);
  const units = UNITS_READ[of];
  const unit = typeof code === 'string' && Object.hasOwn(units, code) ? units[code] : undefined;
  if (unit === undefined || system !== SYSTEMS.ucum) {
    const missing = code === undefined ? 'missing' : 'unknown-id';
    const wrong = unit === undefined ? code : system;
    return refuse(
      `${place}/${unit === undefined ? 'code' : 'system'}`,
      missing,
      'choice',
      wrong,
      unit === undefined ? Object.keys(units) : [SYSTEMS.ucum],
    );
  }
  const number = converted(value, unit);
  return { value: number, asSent: number === value ? null : `${value} ${code}`, got: value };
}

/** Whether a number can be of its sign at all, by the limits of the record; refused where it cannot. */
function canBe(value: ReportedValue, place: string, got: unknown, refuse: Refuse): boolean {
  const read = reportedValue.safeParse(value);
  if (read.success) return true;
  for (const { code, expected, figures } of refusalsOf(read.error, value))
    refuse(place, code, expected, got, [], figures);
  return false;
}

function loincIn(code: unknown): string[] {
  return codesIn(code, SYSTEMS.loinc);
}

function postureOf(resource: Json): string | null {
  const found = listIn(resource, 'extension')
    .map(asObject)
    .find(({ url }) => url === BODY_POSITION);
  return textOfConcept(found?.valueCodeableConcept);
}

/** Who is said to have measured: by the name that the bundle gives, else by what stands in the reference itself. */
function whoMeasured(resource: Json, names: Names): string | null {
  const said = listIn(resource, 'performer')
    .map(asObject)
    .map((who) => {
      const reference = textIn(who, 'reference');
      return textIn(who, 'display') ?? (reference === null ? null : (names(reference) ?? reference));
    });
  return said.find(isText) ?? null;
}

/** What the source calls the resource: its first identifier, else its id. */
function nameOf(resource: Json): string | null {
  const identifier = asObject(listIn(resource, 'identifier')[0]);
  const value = textIn(identifier, 'value');
  if (value === null) return textIn(resource, 'id');
  const system = textIn(identifier, 'system');
  return system === null ? value : `${system}|${value}`;
}
