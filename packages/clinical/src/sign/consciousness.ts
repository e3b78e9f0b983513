import { type FieldReader, type NumberFault, readFields } from '../contract/fields.js';
import type { Flag } from '../contract/flag.js';
import { isBlank } from '../contract/numberText.js';
import type { SignFlagCode } from './codes.js';
import { SIGN_FIGURES as F } from './figures.js';
import { wholeWithin } from './readSign.js';
import {
  CONSCIOUSNESS_LEVELS,
  type Consciousness,
  type ConsciousnessLevel,
  type GlasgowPart,
  type GlasgowParts,
} from './sign.js';

export const CONSCIOUSNESS_FIELDS = ['of', 'level', 'glasgow'] as const;
const GLASGOW_FIELDS = ['eyes', 'verbal', 'motor'] as const;

/** Reads a level and, where it was scored, the Glasgow parts; null if anything was refused. */
export function readConsciousness(reader: FieldReader): Consciousness | null {
  const level = reader.choice<ConsciousnessLevel>('level', CONSCIOUSNESS_LEVELS, null);
  const given = reader.raw('glasgow');
  if (isBlank(given)) return level === null ? null : { of: 'consciousness', level, glasgow: null };
  const parts = readFields(given, GLASGOW_FIELDS, '/glasgow');
  const glasgow = readGlasgow(parts);
  reader.refusals.push(...parts.refusals);
  return level === null || glasgow === null ? null : { of: 'consciousness', level, glasgow };
}

/** Reads `eyes`, `verbal` and `motor`, each its points or `not-testable` (`NT`); null if anything was refused. */
export function readGlasgow(reader: FieldReader): GlasgowParts | null {
  const eyes = glasgowPart(reader, 'eyes', wholeWithin(1, F.mostEyes.value));
  const verbal = glasgowPart(reader, 'verbal', wholeWithin(1, F.mostVerbal.value));
  const motor = glasgowPart(reader, 'motor', wholeWithin(1, F.mostMotor.value));
  return eyes === null || verbal === null || motor === null ? null : { eyes, verbal, motor };
}

function glasgowPart(
  reader: FieldReader,
  key: string,
  check: (value: number) => NumberFault | null,
): GlasgowPart | null {
  const got = reader.raw(key);
  return got === 'not-testable' || got === 'NT' ? 'not-testable' : reader.number(key, check);
}

/** Anybody not alert is told, and that a part which was not tested leaves no total. Source: bedside handbook 4.3. */
export function consciousnessFlags({ level, glasgow }: Consciousness): Flag<SignFlagCode>[] {
  const flags: Flag<SignFlagCode>[] = level === 'alert' ? [] : [{ code: 'not-alert', figures: {} }];
  const isUntested = glasgow !== null && GLASGOW_FIELDS.some((key) => glasgow[key] === 'not-testable');
  return isUntested ? [...flags, { code: 'glasgow-not-testable', figures: {} }] : flags;
}
