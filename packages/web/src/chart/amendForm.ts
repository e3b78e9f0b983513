import {
  type Count,
  countOfRate,
  DEFAULT_DEFLATION_RULES,
  isBlank,
  NOTHING_BESIDE,
  numberFrom,
  type Parsed,
  parseCount,
  parseRun,
  parseShorthand,
  printShorthand,
  type Refusal,
  type Run,
  refusal,
  type Sign,
  shorthandOf,
} from '@evenfall/clinical';
import {
  AMENDMENT_REASONS,
  type AmendmentReason,
  type Amends,
  belongsNowhere,
  chartCount,
  chartRun,
  chartSign,
  chartTaps,
  type InForce,
  type Override,
  type PressureOverride,
  type RateTyped,
  type RunPlace,
  type Stamp,
  type StoredEntry,
  type TypedNumber,
} from '@evenfall/record';
import type { Manner } from '@evenfall/words';
import { ofNumbers, readRun } from '../pressure/readRun.js';
import { type PlaceFields, readPlace } from './amendPlace.js';
import { siteOf, typedReading, withReading, withSite } from './amendSign.js';
import { isTakenStanding, readUpright, type UprightFields, type UprightKnown } from './amendUpright.js';

/**
 * What should stand: another count, other numbers of a pressure, another arm or cuff, how it was on the feet, another reading of a sign
 * or another place where it was taken, a value set by hand, another time of measuring, nothing (it should never have been charted), or, in
 * place of a mark of error, what was marked.
 */
export const AMENDING = [
  'count',
  'numbers',
  'place',
  'upright',
  'reading',
  'site',
  'by-hand',
  'time',
  'in-error',
  'as-was',
] as const;
export type Amending = (typeof AMENDING)[number];

export type AmendFields = PlaceFields &
  UprightFields & {
    readonly what: string;
    readonly n: string;
    /** The unit that was chosen beside a reading; empty for the usual one. */
    readonly unit: string;
    /** Of a rate that was typed for a count: over how long it was counted; absent or empty for as it stands. */
    readonly windowSeconds?: string;
    readonly perMinute: string;
    /** Where a temperature was taken. */
    readonly site: string;
    /** Local, `YYYY-MM-DDTHH:mm`. */
    readonly time: string;
    readonly reason: string;
    /** Of a value of another person: whether the rest of its set goes with it (`WITH_SET`); absent or empty for not said. */
    readonly set?: string;
    /** A few words beside the reason; of a value set by hand, why. */
    readonly text: string;
  };

export type Amendment = {
  readonly amends: Amends;
  readonly change:
    | { readonly what: 'count'; readonly count: Count; readonly rateTyped: RateTyped | null }
    | { readonly what: 'numbers'; readonly run: Run }
    | { readonly what: 'place'; readonly place: RunPlace }
    | { readonly what: 'upright'; readonly upright: UprightKnown }
    | { readonly what: 'reading'; readonly sign: Sign; readonly typed: TypedNumber | null }
    | { readonly what: 'by-hand'; readonly perMinute: number; readonly reason: string }
    | { readonly what: 'pressure-by-hand'; readonly pressure: NonNullable<PressureOverride> }
    | { readonly what: 'time'; readonly measuredAt: Stamp }
    | { readonly what: 'in-error' | 'as-was' };
};

/** What is wrong with a field: a key of the words, or what `clinical` refuses. */
export type AmendWrong = Readonly<Partial<Record<keyof AmendFields, AmendWrongCode | readonly Refusal[]>>>;
type AmendWrongCode =
  | 'reasonMissing'
  | 'setMissing'
  | 'textMissing'
  | 'whatMissing'
  | 'whatInError'
  | 'numberMissing'
  | 'numbersMissing'
  | 'numbersAndPulseMissing'
  | 'placeMissing'
  | 'uprightMissing'
  | 'uprightSame'
  | 'siteMissing'
  | 'timeMissing'
  | 'timeBeforeBirth'
  | 'byHandWhyMissing';

/** The unit of a rate that is typed in the place of what was counted. */
export const PER_MINUTE = 'per-minute';

/** The count behind a rate as it was typed; refused where its window cannot give it, and never moved to the next one. */
function countOfTypedRate(count: Count, fields: AmendFields, { countRules }: InForce): Parsed<Count> {
  const { of, clock, first } = count;
  const { windowSeconds = '' } = fields;
  const seconds = windowSeconds === '' ? count.windowSeconds : Number(windowSeconds);
  const typed = fields.n.trim();
  if (!/^\d+$/.test(typed))
    return { ok: false, refusals: [refusal('/n', 'not-whole', 'a-whole-number', typed)] };
  return countOfRate(Number(typed), { of, windowSeconds: seconds, clock, first }, countRules);
}

/**
 * How far the window of a rate that is typed for a count is known: as said now, else as it was before. What was counted was
 * counted in its window; of an older count nobody knows whether it was.
 */
function rateTypedIn({ schema, content }: CountEntry, { windowSeconds = '' }: AmendFields): RateTyped {
  if (windowSeconds !== '') return 'window-said';
  return content.evidence.rateTyped ?? (schema < SAYS_RATE_TYPED ? 'window-presumed' : 'window-said');
}

type CountEntry = StoredEntry & { readonly kind: 'count' };

/** The first schema of a count that says whether a rate was typed. */
const SAYS_RATE_TYPED = 2;

/** Whether the count itself can be put right: a count that was finished. */
export function canCorrectCount(entry: StoredEntry): boolean {
  return entry.kind === 'count' && 'n' in entry.content.evidence.count;
}

/** The numbers of a pressure as they stand, with the pulse beside them, as they are typed; empty for anything else. */
export function numbersOf(entry: StoredEntry): string {
  if (entry.kind !== 'run') return '';
  const { evidence, value } = entry.content;
  if (value === null) return '';
  const beside = { ...NOTHING_BESIDE, pulse: evidence.run.pulsePerMinute };
  const shorthand = shorthandOf(value, beside, DEFAULT_DEFLATION_RULES);
  // That a device took it is not retyped.
  return printShorthand(value.method === 'device' ? { ...shorthand, method: 'auscultation' } : shorthand);
}

/** Why it can be amended: only a pressure has a limb and a cuff. */
export function reasonsFor(entry: StoredEntry): readonly AmendmentReason[] {
  return AMENDMENT_REASONS.filter((reason) => reason !== 'wrong-limb-or-cuff' || entry.kind === 'run');
}

/** Whether a value may be set over it: never over what was broken off, which has none. */
export function canSetByHand(entry: StoredEntry): boolean {
  return entry.kind === 'taps' || entry.kind === 'run' || canCorrectCount(entry);
}

/** What the reading of an amendment needs to know of the time and of whom it is about. */
export type AmendAround = {
  readonly now: Stamp;
  readonly stampOf: (typed: string) => Stamp | null;
  /** `YYYY-MM-DD`; null where it is not known. */
  readonly birthDate: string | null;
  /** Of the person on the day of the value, in whole months; null where it is not known. */
  readonly ageMonths: number | null;
  /** The units in which numbers are typed. */
  readonly manner: Manner;
};

/** Reads an amendment as typed, or says everything that is wrong with it, each at its field. */
export function readAmendment(
  entry: StoredEntry,
  fields: AmendFields,
  inForce: InForce,
  around: AmendAround,
): { readonly amendment: Amendment | null; readonly wrong: AmendWrong } {
  const wrong: { -readonly [Field in keyof AmendWrong]: AmendWrong[Field] } = {};
  const text = fields.text.trim();
  const reason = reasonsFor(entry).find((one) => one === fields.reason);
  if (reason === undefined) wrong.reason = 'reasonMissing';
  if (reason === 'other' && text === '') wrong.text = 'textMissing';
  const change = readChange(entry, fields, inForce, around, wrong);
  const isNoOther = change === null || change.what === 'in-error' || change.what === 'as-was';
  if (reason !== undefined && belongsNowhere(reason) && !isNoOther) wrong.what = 'whatInError';
  if (reason === undefined || change === null || Object.keys(wrong).length > 0)
    return { amendment: null, wrong };
  return {
    amendment: { amends: { entry: entry.id, reason, text: text === '' ? null : text }, change },
    wrong,
  };
}

/** What would stand in the place of a value as far as it is typed; null for nothing that gives another number. */
export function changeTyped(
  entry: StoredEntry,
  fields: AmendFields,
  inForce: InForce,
  around: AmendAround,
): Amendment['change'] | null {
  if (!['count', 'numbers', 'reading'].includes(fields.what)) return null;
  return readChange(entry, fields, inForce, around, {});
}

function readChange(
  entry: StoredEntry,
  fields: AmendFields,
  inForce: InForce,
  around: AmendAround,
  wrong: { -readonly [Field in keyof AmendWrong]: AmendWrong[Field] },
): Amendment['change'] | null {
  switch (AMENDING.find((one) => one === fields.what)) {
    case 'in-error':
      return { what: 'in-error' };
    case 'as-was':
      return { what: 'as-was' };
    case 'time': {
      const measuredAt = around.stampOf(fields.time);
      if (measuredAt === null || Date.parse(measuredAt.at) > Date.parse(around.now.at))
        wrong.time = 'timeMissing';
      else if (around.birthDate !== null && measuredAt.at.slice(0, 10) < around.birthDate)
        wrong.time = 'timeBeforeBirth';
      else return { what: 'time', measuredAt };
      return null;
    }
    case 'count': {
      if (entry.kind !== 'count' || !('n' in entry.content.evidence.count)) break;
      if (fields.n.trim() === '') {
        wrong.n = 'numberMissing';
        return null;
      }
      const { count } = entry.content.evidence;
      const parsed =
        fields.unit === PER_MINUTE
          ? countOfTypedRate(count, fields, inForce)
          : parseCount({ ...count, n: fields.n.trim() }, inForce.countRules);
      if (parsed.ok) {
        const rateTyped = fields.unit === PER_MINUTE ? rateTypedIn(entry, fields) : null;
        return { what: 'count', count: parsed.value, rateTyped };
      }
      wrong.n = parsed.refusals;
      return null;
    }
    case 'numbers': {
      if (entry.kind !== 'run') break;
      const { run } = entry.content.evidence;
      const typed = { method: run.method, typed: fields.n, fields: {}, reinflated: run.reinflated };
      // The field opens with the pulse beside the numbers: rubbed out of it, it is gone.
      const known = { pulsePerMinute: null, lostMmHg: run.palpated.lostMmHg };
      const read = readRun(typed, known, inForce.runRules.deflation);
      if (read.run === null) {
        wrong.n = fields.n.trim() === '' ? 'numbersAndPulseMissing' : Object.values(read.wrong);
        return null;
      }
      // As they stand they are no other numbers, and what is typed has no times.
      if (fields.n.trim() === numbersOf(entry)) {
        wrong.n = 'numbersAndPulseMissing';
        return null;
      }
      // Gauge and peak were not what was mistyped, and no sound comes above the peak; times go with their moments.
      const parsed = parseRun({ ...read.run, peak: run.peak, gaugeStepMmHg: run.gaugeStepMmHg });
      if (parsed.ok) return { what: 'numbers', run: parsed.value };
      wrong.n = parsed.refusals;
      return null;
    }
    case 'place': {
      if (entry.kind !== 'run') break;
      const place = readPlace(entry, fields, inForce, around.ageMonths);
      if (place !== null) return { what: 'place', place };
      wrong.side = 'placeMissing';
      return null;
    }
    case 'upright': {
      if (!isTakenStanding(entry)) break;
      const upright = readUpright(entry, fields);
      if (typeof upright !== 'string') return { what: 'upright', upright };
      wrong[upright === 'uprightMissing' ? 'uprightMinutes' : 'unwellUpright'] = upright;
      return null;
    }
    case 'reading': {
      if (entry.kind !== 'sign') break;
      const retyped = { text: fields.n.trim(), unit: fields.unit };
      const read = withReading(entry, retyped, around.manner);
      const typed = typedReading(entry, retyped, around.manner);
      if (read.ok) return { what: 'reading', sign: read.value, typed };
      wrong.n = read.refusals;
      return null;
    }
    case 'site': {
      if (entry.kind !== 'sign' || siteOf(entry) === null) break;
      const read = withSite(entry, fields.site);
      if (read !== null) return { what: 'reading', sign: read, typed: entry.content.evidence.typed };
      wrong.site = 'siteMissing';
      return null;
    }
    case 'by-hand': {
      if (!canSetByHand(entry)) break;
      if (entry.kind === 'run') return readPressureByHand(fields, wrong);
      const read = readRate(fields.perMinute.trim(), inForce);
      const reason = fields.text.trim();
      if (typeof read !== 'number') wrong.perMinute = [read];
      if (reason === '') wrong.text = 'byHandWhyMissing';
      return typeof read === 'number' && reason !== '' ? { what: 'by-hand', perMinute: read, reason } : null;
    }
  }
  wrong.what = 'whatMissing';
  return null;
}

/** A rate set by hand: over zero, since that nothing was counted is a count of zero, and no higher than any rate. */
function readRate(given: string, { countRules }: InForce): number | Refusal {
  const { ceilingPerMinute } = countRules;
  const perMinute = numberFrom(given);
  if (perMinute !== null && perMinute > 0 && perMinute <= ceilingPerMinute) return perMinute;
  const code = isBlank(given) ? 'missing' : perMinute === null ? 'not-a-number' : 'out-of-range';
  return refusal('/perMinute', code, 'rate-by-hand', given, { figures: { ceilingPerMinute } });
}

function readPressureByHand(
  fields: AmendFields,
  wrong: { -readonly [Field in keyof AmendWrong]: AmendWrong[Field] },
): Amendment['change'] | null {
  const read = parseShorthand(fields.perMinute);
  const reason = fields.text.trim();
  if (!read.ok)
    wrong.perMinute = fields.perMinute.trim() === '' ? 'numbersMissing' : read.refusals.map(ofNumbers);
  if (reason === '') wrong.text = 'byHandWhyMissing';
  if (!read.ok || reason === '') return null;
  const { systolic, diastolic } = read.value;
  return { what: 'pressure-by-hand', pressure: { systolic, diastolic, reason } };
}

/** The kind and the content of the amending entry: the evidence stays, the value is made anew from it. */
export function amendedContent(
  entry: StoredEntry,
  { change }: Pick<Amendment, 'change'>,
  { inForce, program }: { readonly inForce: InForce; readonly program: string },
): { kind: 'count' | 'taps' | 'run' | 'sign' | 'entered-in-error'; content: Record<string, unknown> } {
  if (change.what === 'in-error') return { kind: 'entered-in-error', content: { note: null } };
  if (entry.kind === 'count') {
    const { count, circumstances, rateTyped } = entry.content.evidence;
    const override = overrideAfter(change, entry.content);
    const counted = change.what === 'count' ? change : { count, rateTyped };
    const done = {
      count: counted.count,
      rateTyped: counted.rateTyped,
      circumstances,
      override,
      note: entry.content.note,
    };
    return { kind: 'count', content: chartCount(done, inForce, program) };
  }
  if (entry.kind === 'taps') {
    const { evidence, note } = entry.content;
    const override = overrideAfter(change, entry.content);
    return { kind: 'taps', content: chartTaps({ ...evidence, override, note }, inForce, program) };
  }
  if (entry.kind === 'run') {
    const { evidence, note, override: before } = entry.content;
    const override =
      change.what === 'pressure-by-hand' ? change.pressure : change.what === 'numbers' ? null : before;
    const run = change.what === 'numbers' ? change.run : (evidence.run as Run);
    const place = change.what === 'place' ? change.place : evidence.place;
    // Numbers that are typed anew have no times, and so nobody who marked them.
    const markedBy = change.what === 'numbers' ? null : evidence.markedBy;
    const upright = change.what === 'upright' ? change.upright : {};
    const circumstances = { ...evidence.circumstances, ...upright };
    const done = { ...evidence, run, place, circumstances, markedBy, override, note };
    return { kind: 'run', content: chartRun(done, inForce, program) };
  }
  if (entry.kind === 'sign') {
    const { evidence, note } = entry.content;
    const { sign, typed } = change.what === 'reading' ? change : evidence;
    const done = { ...evidence, sign: sign as Sign, typed, note };
    return { kind: 'sign', content: chartSign(done, inForce, program) };
  }
  throw new Error(`An entry of kind ${entry.kind} charts no value`);
}

/** What stands over the computed rate afterwards: a corrected count is what was done, and needs no rate by hand. */
function overrideAfter(change: Amendment['change'], { override }: { readonly override: Override }): Override {
  if (change.what === 'by-hand') return { perMinute: change.perMinute, reason: change.reason };
  return change.what === 'count' ? null : override;
}
