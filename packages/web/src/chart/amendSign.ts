import {
  CONSCIOUSNESS_LEVELS,
  PAIN_WORDS,
  type Parsed,
  parseSign,
  type Sign,
  TEMPERATURE_SITES,
} from '@evenfall/clinical';
import type { StoredEntry, TypedNumber } from '@evenfall/record';
import type { Manner } from '@evenfall/words';
import { asTyped, isMeasured, keptOf, type TypedMeasure, typedIn, unitNamed } from '../app/typedMeasure.js';
import { refusedInMm, scoreTyped } from '../signs/typedLine.js';

/** What of a sign can have been written wrongly: a number, or one of a few words. */
export type Reading =
  | { readonly key: 'celsius' | 'percent' | 'score' | 'kg' | 'cm'; readonly choices: null }
  | { readonly key: 'level'; readonly choices: typeof CONSCIOUSNESS_LEVELS }
  | { readonly key: 'word'; readonly choices: typeof PAIN_WORDS };

const NUMBER_OF = {
  temperature: 'celsius',
  'oxygen-saturation': 'percent',
  pain: 'score',
  weight: 'kg',
  height: 'cm',
} as const;

/** What can be retyped of an entry; null where it is none of these signs. */
export function readingOf(entry: StoredEntry): Reading | null {
  if (entry.kind !== 'sign') return null;
  const { sign } = entry.content.evidence;
  if (sign.of === 'consciousness') return { key: 'level', choices: CONSCIOUSNESS_LEVELS };
  if (sign.of === 'pain' && sign.word !== null) return { key: 'word', choices: PAIN_WORDS };
  return { key: NUMBER_OF[sign.of], choices: null };
}

/** Where a temperature was taken, as it is charted; null for anything else. */
export function siteOf(entry: StoredEntry): string | null {
  if (entry.kind !== 'sign') return null;
  const { sign } = entry.content.evidence;
  return sign.of === 'temperature' ? sign.site : null;
}

/** The temperature as taken at another place; null where that is none, or the one that is charted. */
export function withSite(entry: StoredEntry & { readonly kind: 'sign' }, chosen: string): Sign | null {
  const site = TEMPERATURE_SITES.find((one) => one === chosen);
  if (site === undefined || site === siteOf(entry)) return null;
  const read = parseSign({ ...entry.content.evidence.sign, site });
  return read.ok ? read.value : null;
}

/** A reading as it was retyped: its text, and the unit that was chosen beside it; empty for the usual one. */
export type Retyped = { readonly text: string; readonly unit: string };

/** The number of an amendment with its unit, for a sign that can be typed in another one; null for any other. */
export function typedReading(
  entry: StoredEntry & { readonly kind: 'sign' },
  { text, unit }: Retyped,
  manner: Manner,
): TypedNumber | null {
  const key = readingOf(entry)?.key;
  if (key === undefined || !isMeasured(key)) return null;
  return typedIn({ text, chosen: unitNamed(key, unit) }, key, manner);
}

/** The sign with another reading in its place, in the unit in which it was typed; everything else of it stays. */
export function withReading(
  entry: StoredEntry & { readonly kind: 'sign' },
  { text: typed, unit }: Retyped,
  manner: Manner,
): Parsed<Sign> {
  const reading = readingOf(entry);
  const { sign } = entry.content.evidence;
  // A mark on a line is charted in mm, so it is put right in mm.
  if (sign.of === 'pain' && sign.tool === 'visual-analogue') {
    const parsed = parseSign({ ...sign, score: scoreTyped(typed) });
    if (parsed.ok) return parsed;
    return { ok: false, refusals: parsed.refusals.map((one) => refusedInMm(one, typed, '/score')) };
  }
  if (reading === null) return parseSign(sign);
  const { key } = reading;
  if (!isMeasured(key)) return parseSign({ ...sign, [key]: typed });
  const measure: TypedMeasure<string> = { text: typed, chosen: unitNamed(key, unit) };
  const parsed = parseSign({ ...sign, [key]: keptOf(measure, key, manner) });
  if (parsed.ok) return parsed;
  return { ok: false, refusals: parsed.refusals.map((one) => asTyped(one, measure, key, manner)) };
}
