import { type Parsed, type Refusal, refusal } from '../contract/refusal.js';
import {
  CUFF_SITES,
  CUFF_SIZES,
  type CuffSite,
  type CuffSize,
  POSTURES,
  type Posture,
  type Side,
} from '../cuff/places.js';
import type { Gap } from './pressures.js';
import { GAP, loneNumber, readGap, readNumbers, readPulse, type WrittenNumbers } from './readNumbers.js';
import type { Shorthand } from './shorthand.js';

/** What may stand beside the numbers, as it is written. */
const WORDS = [
  'R',
  'L',
  ...POSTURES,
  ...CUFF_SITES.slice(1),
  ...CUFF_SIZES.map((size) => `${size}-cuff`),
  'device',
];

/** A word of the text with its column, from 1. */
type Word = { readonly text: string; readonly column: number };

/** What was read so far; null is not written yet. */
type Found = {
  numbers: WrittenNumbers | null;
  pulse: number | null;
  gap: Gap | null;
  side: Side | null;
  posture: Posture | null;
  site: Exclude<CuffSite, 'upper-arm'> | null;
  cuff: CuffSize | null;
  device: true | null;
};

/**
 * Reads the trade's shorthand: `148/92 76`, `122/P`, `118/62/0`, `186/94, gap 186-152`, `148/92x2`, and beside the
 * numbers in any order a pulse, `R` or `L`, a posture, a site other than the upper arm, `L-cuff`, `device`.
 * Nothing is guessed: a word that is not known is refused, and `80/120` too.
 *
 * Errors, in the order of the text, with the column (from 1) in `figures`: `/systolic`, `/muffled`, `/diastolic`,
 * `/readings`, `/pulse`, `/gap`, `/side`, `/posture`, `/site`, `/cuff`, `/method`, or `/text` for a word that is
 * none of these: `missing`, `not-a-number`, `not-whole`, `out-of-range`, `out-of-order`, `not-below-systolic`,
 * `impossible`, `repeated`, `ambiguous`, `contradicts`, `unknown-id`.
 * Source: docs/conventions.md section 1; bedside handbook 3.4, 3.5, 3.7 and 7.2.
 */
export function parseShorthand(text: string): Parsed<Shorthand> {
  const found: Found = {
    numbers: null,
    pulse: null,
    gap: null,
    side: null,
    posture: null,
    site: null,
    cuff: null,
    device: null,
  };
  const refusals: Refusal[] = [];
  const words = wordsOf(text);
  for (let at = 0; at < words.length; at++) {
    const word = words[at] as Word;
    const isGap = word.text.toLowerCase() === GAP;
    const next = isGap ? words[at + 1] : undefined;
    if (isGap) at++;
    const wrong = take(found, word, next);
    refusals.push(...wrong.map((one) => ({ ...one, figures: { ...one.figures, column: word.column } })));
  }
  if (found.numbers === null && refusals.length === 0) {
    refusals.push(found.pulse === null ? noNumbers(text) : loneNumber(found.pulse));
  }
  const { numbers, device, ...beside } = found;
  if (numbers === null) return { ok: false, refusals };
  const { isPalpated, ...written } = numbers;
  const method = device === true ? 'device' : isPalpated ? 'palpation' : 'auscultation';
  const value: Shorthand = { ...written, method, ...beside };
  refusals.push(...contradictionsOf(value, isPalpated));
  return refusals.length > 0 ? { ok: false, refusals } : { ok: true, value };
}

function noNumbers(text: string): Refusal {
  return refusal('/systolic', 'missing', 'pressure', text.trim() || null);
}

/** Words are parted by blanks, with or without a comma before. A comma inside a word stays: it may be a decimal one. */
function wordsOf(text: string): Word[] {
  return [...text.matchAll(/\S+/g)]
    .map((match) => ({ text: match[0].replace(/,$/, ''), column: match.index + 1 }))
    .filter((word) => word.text !== '');
}

/** Puts a word where it belongs; what is wrong with it otherwise. */
function take(found: Found, { text }: Word, next: Word | undefined): Refusal[] {
  const once = <Key extends keyof Found>(key: Key, field: string, read: Read<NonNullable<Found[Key]>>) => {
    if ('refusals' in read) return read.refusals;
    if (found[key] !== null) return [refusal(field, 'repeated', 'once', text)];
    found[key] = read.value as Found[Key];
    return [];
  };
  const lower = text.toLowerCase();
  if (lower === GAP) return once('gap', '/gap', readGap(next?.text ?? null));
  if (text.includes('/')) return once('numbers', '/systolic', readNumbers(text));
  if (/^-?[\d.]+$/.test(text)) return once('pulse', '/pulse', readPulse(text));
  if (lower === 'r') return once('side', '/side', { value: 'right' });
  if (lower === 'l') return once('side', '/side', { value: 'left' });
  if (lower === 'device') return once('device', '/method', { value: true });
  const posture = POSTURES.find((one) => one === lower);
  if (posture !== undefined) return once('posture', '/posture', { value: posture });
  const site = CUFF_SITES.find((one) => one === lower);
  if (site !== undefined && site !== 'upper-arm') return once('site', '/site', { value: site });
  const cuff = CUFF_SIZES.find((size) => `${size}-cuff`.toLowerCase() === lower);
  if (cuff !== undefined) return once('cuff', '/cuff', { value: cuff });
  const bare = CUFF_SIZES.find((size) => size.toLowerCase() === lower);
  if (bare !== undefined) {
    return [refusal('/cuff', 'ambiguous', 'one-of', text, { choices: [`${bare}-cuff`] })];
  }
  return [refusal('/text', 'unknown-id', 'one-of', text, { choices: WORDS })];
}

type Read<T> = { readonly value: T } | { readonly refusals: Refusal[] };

/** Words that cannot stand side by side. */
function contradictionsOf(
  { gap, method, systolic, muffled, diastolic }: Shorthand,
  isPalpated: boolean,
): Refusal[] {
  if (method === 'device' && (isPalpated || muffled !== null)) {
    return [refusal('/method', 'contradicts', 'two-numbers-of-a-device', 'device')];
  }
  if (gap === null) return [];
  const got = `${gap.fromMmHg}-${gap.toMmHg}`;
  if (method !== 'auscultation' || diastolic === null) {
    return [refusal('/gap', 'contradicts', 'gap-by-ear-only', got)];
  }
  const lowest = muffled ?? diastolic;
  if (gap.fromMmHg <= systolic && gap.toMmHg >= lowest) return [];
  const figures = { systolic, lowestMmHg: lowest };
  return [refusal('/gap', 'out-of-range', 'gap-between-sounds', got, { figures })];
}
