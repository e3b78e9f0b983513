import type {
  Circumstances,
  Count,
  CountOf,
  EmergencyFeature,
  Interruption,
  Preparation,
  RoundSign,
  Sign,
  SignOf,
  Taps,
  VoidCount,
  Wanted,
} from '@evenfall/clinical';
import type { Beginning, RateTyped, RoundContent, Stamp, TypedNumber } from '@evenfall/record';
import { IN_CARE, type InBook } from '../app/book.js';
import { NO_PRESSURE, type PressureDraft } from '../pressure/pressureDraft.js';
import { type CountStart, isTimed, type Measuring, READY, type Reopened } from './measuring.js';
import type { RestDraft } from './restDraft.js';
import type { Slip } from './slip.js';

/** What was noticed with a value; null until it is touched. */
export type Noticed = Pick<Circumstances, 'rhythmFelt' | 'strength' | 'site'>;

export const NOTHING_NOTICED: Noticed = { rhythmFelt: null, strength: null, site: null };

/** A value taken and not signed yet. Its id and number are made once, here, whatever happens later. */
export type DraftValue = {
  readonly entry: string;
  readonly sequence: number;
  readonly measuredAt: Stamp;
  readonly noticed: Noticed;
} & (
  | {
      readonly kind: 'count';
      readonly count: Count | VoidCount;
      /** Where a rate was typed: how far its window is known; absent for a number that was counted. */
      readonly rateTyped?: RateTyped | null;
    }
  | { readonly kind: 'taps'; readonly taps: Taps }
);

type NotDoneSign = Extract<RoundContent['signs'][number], { notDone: unknown }>;
export type NotDone = NotDoneSign['notDone'];

/** One sign of a round: what was taken, or why not, and where the taking is. */
export type SignDraft = {
  readonly values: readonly DraftValue[];
  readonly notDone: NotDone | null;
  readonly measuring: Measuring;
};

/** A sign that was read: a temperature, a saturation, a pain ... */
export type DraftMeasure = {
  readonly kind: 'sign';
  readonly entry: string;
  readonly sequence: number;
  readonly measuredAt: Stamp;
  readonly sign: Sign;
  /** The number as it was typed, in its unit; absent or null where nobody said. */
  readonly typed?: TypedNumber | null;
  readonly note: string | null;
};

/** What was asked and seen besides the signs. Null is not asked, not looked at. */
export type RoundAround = {
  /** What was not as it should be when the person was made ready; none for "all was". */
  readonly exceptions: readonly Preparation[] | null;
  /** The emergency features that the person has; none for "asked, and none". */
  readonly features: readonly EmergencyFeature[] | null;
  readonly unwell: boolean | null;
  /** What was said when a severe pressure asked for it; a fact of the chart counts before it. */
  readonly isPregnant: boolean | null;
  /** What is wanted of this round beyond the protocol. */
  readonly wanted: readonly Wanted[];
  readonly note: string | null;
  /** How it began; null where nobody said. */
  readonly begun: Beginning | null;
  /** The rest before the pressure; null where none was begun. */
  readonly rest: RestDraft | null;
  /** What was taken out last; null once it is put back. */
  readonly slip: Slip | null;
};

export const NOTHING_AROUND: RoundAround = {
  exceptions: null,
  features: null,
  unwell: null,
  isPregnant: null,
  wanted: [],
  note: null,
  begun: null,
  rest: null,
  slip: null,
};

/** A round begun and not signed; its book and session are those of every entry it will be. */
export type RoundDraft = RoundAround &
  InBook & {
    readonly round: string;
    /** The id of the entry that will sign it. */
    readonly signing: string;
    readonly person: string;
    readonly begunAt: Stamp;
    /** Whose round it is: whoever was measuring when something was first said or measured in it; null while nobody was. */
    readonly by: string | null;
    /** Whether it stood under the name of somebody who was learning, whoever said since that it was theirs. */
    readonly isOfLearner: boolean;
    readonly isIdentityChecked: boolean;
    readonly isPreliminary: boolean;
    readonly pressure: PressureDraft;
    readonly measures: readonly DraftMeasure[];
    readonly measuresNotDone: Readonly<Partial<Record<SignOf, NotDone>>>;
  } & { readonly [sign in CountOf]: SignDraft };

const NO_SIGN: SignDraft = { values: [], notDone: null, measuring: READY };

export function begunRound(
  person: string,
  { round, signing, begunAt }: { round: string; signing: string; begunAt: Stamp },
  { book, session }: InBook = IN_CARE,
): RoundDraft {
  return {
    round,
    signing,
    person,
    begunAt,
    isIdentityChecked: false,
    isPreliminary: false,
    pulse: NO_SIGN,
    breaths: NO_SIGN,
    ...NOTHING_TAKEN,
    book,
    session,
  };
}

/** The parts that a round begun by an older program does not have. */
export const NOTHING_TAKEN = {
  ...IN_CARE,
  ...NOTHING_AROUND,
  pressure: NO_PRESSURE,
  measures: [],
  measuresNotDone: {},
  by: null,
  isOfLearner: false,
} satisfies Partial<RoundDraft>;

/** The same round with one sign changed. */
export function withSign(
  draft: RoundDraft,
  sign: CountOf,
  change: (sign: SignDraft) => SignDraft,
): RoundDraft {
  return { ...draft, [sign]: change(draft[sign]) };
}

export function withMeasuring(draft: RoundDraft, sign: CountOf, measuring: Measuring): RoundDraft {
  return withSign(draft, sign, (was) => ({ ...was, measuring }));
}

/** A value came in: it is shown, and a reason for having none is gone. One taken out before it stays out. */
export function withValue(draft: RoundDraft, sign: CountOf, value: DraftValue): RoundDraft {
  return withSign(slipOver(draft, sign), sign, ({ values }) => ({
    values: [...values, value],
    notDone: null,
    measuring: { at: 'shown', entry: value.entry },
  }));
}

/** Another of the same sign was taken, so that the one taken out is not put back beside it. */
export function slipOver(draft: RoundDraft, sign: RoundSign): RoundDraft {
  return draft.slip?.of === sign ? { ...draft, slip: null } : draft;
}

/** A slip undone before signing: the value was never there. */
export function withoutValue(draft: RoundDraft, sign: CountOf, entry: string): RoundDraft {
  return withSign(draft, sign, (was) => ({
    ...was,
    values: was.values.filter((value) => value.entry !== entry),
    measuring: READY,
  }));
}

/** Back to the keypad with the number that was typed, under the same window. Taps are times, which nobody types. */
export function withNumberReopened(draft: RoundDraft, sign: CountOf, reopened: Reopened): RoundDraft {
  const value = draft[sign].values.find((one) => one.entry === reopened.entry);
  if (value?.kind !== 'count' || isVoidValue(value)) return draft;
  const { n, windowSeconds, clock, first } = value.count as Count;
  return withMeasuring(draft, sign, {
    at: 'typing',
    start: { windowSeconds, clock, first },
    measuredAt: value.measuredAt,
    typed: String(n),
    reopened,
  });
}

/** The number of a count put right, in its place: when it was taken and what was noticed with it stay. */
export function withNumberChanged(draft: RoundDraft, sign: CountOf, entry: string, count: Count): RoundDraft {
  return withSign(draft, sign, (was) => ({
    ...was,
    values: was.values.map((value) =>
      value.entry === entry && value.kind === 'count' ? { ...value, count } : value,
    ),
    measuring: { at: 'shown', entry },
  }));
}

export function withNoticed(
  draft: RoundDraft,
  sign: CountOf,
  entry: string,
  noticed: Partial<Noticed>,
): RoundDraft {
  return withSign(draft, sign, (was) => ({
    ...was,
    values: was.values.map((value) =>
      value.entry === entry ? { ...value, noticed: { ...value.noticed, ...noticed } } : value,
    ),
  }));
}

/** The sign was not done, for a reason; values already taken are given up with it. */
export function withNotDone(draft: RoundDraft, sign: CountOf, notDone: NotDone | null): RoundDraft {
  return withSign(draft, sign, (was) => ({
    values: notDone === null ? was.values : was.values.filter(isVoidValue),
    notDone,
    measuring: READY,
  }));
}

/** Whether a value gives no number because it was broken off. */
export function isVoidValue(value: DraftValue): boolean {
  return value.kind === 'count' && 'interrupted' in value.count;
}

/** What was broken off becomes void: a count is kept as such, of taps nothing is. */
export function interrupted(
  draft: RoundDraft,
  sign: CountOf,
  { reason, nowMs }: { reason: Interruption['reason']; nowMs: number | null },
  { entry, sequence }: { entry: string; sequence: number },
): RoundDraft {
  const { measuring } = draft[sign];
  if (!isTimed(measuring)) return draft;
  if (measuring.at === 'tapping') {
    const begunMs = measuring.tapsMs[0] ?? null;
    const atSeconds = nowMs === null || begunMs === null ? null : tenths((nowMs - begunMs) / 1000);
    return withMeasuring(draft, sign, { at: 'void', way: 'taps', entry: null, atSeconds, reason });
  }
  const { start, measuredAt, startedAtMs } = measuring;
  const atSeconds = nowMs === null ? null : tenths(Math.max(0, (nowMs - startedAtMs) / 1000));
  const count = voidCount(sign, start, { atSeconds, reason });
  const kept: DraftValue = { entry, sequence, measuredAt, noticed: NOTHING_NOTICED, kind: 'count', count };
  return withMeasuring(withValue(draft, sign, kept), sign, {
    at: 'void',
    way: 'count',
    entry,
    atSeconds,
    reason,
  });
}

/** Says afterwards why a count was broken off. */
export function withInterruption(
  draft: RoundDraft,
  sign: CountOf,
  reason: Interruption['reason'],
): RoundDraft {
  const { measuring } = draft[sign];
  if (measuring.at !== 'void') return draft;
  const changed = withMeasuring(draft, sign, { ...measuring, reason, isSaid: true });
  return withSign(changed, sign, (was) => ({
    ...was,
    values: was.values.map((value) =>
      value.entry === measuring.entry && value.kind === 'count' && 'interrupted' in value.count
        ? { ...value, count: { ...value.count, interrupted: { ...value.count.interrupted, reason } } }
        : value,
    ),
  }));
}

function voidCount(of: CountOf, start: CountStart, interruption: Interruption): VoidCount {
  // An end of the window that arrives together with the interruption must not outlast the window.
  const { atSeconds } = interruption;
  const before = atSeconds === null ? null : Math.min(atSeconds, start.windowSeconds - 0.1);
  return { of, ...start, interrupted: { ...interruption, atSeconds: before } };
}

function tenths(seconds: number): number {
  return Math.round(seconds * 10) / 10;
}

/** Whether anything at all was taken or said. */
export function hasContent(draft: RoundDraft): boolean {
  return (
    (['pulse', 'breaths'] as const).some(
      (sign) =>
        draft[sign].values.length > 0 ||
        draft[sign].notDone !== null ||
        draft[sign].measuring.at === 'typing' ||
        isTimed(draft[sign].measuring),
    ) || hasMore(draft)
  );
}

function hasMore({ pressure, measures, measuresNotDone, exceptions, note }: RoundDraft): boolean {
  const { values, felt, notDone, measuring } = pressure;
  return (
    values.length + felt.length + measures.length + Object.keys(measuresNotDone).length > 0 ||
    notDone !== null ||
    measuring.at === 'typing' ||
    exceptions !== null ||
    note !== null
  );
}

/** A sign was read. One that was read twice stands twice, until a slip is taken out. */
export function withMeasure(draft: RoundDraft, measure: DraftMeasure): RoundDraft {
  const { of } = measure.sign;
  const { [of]: _taken, ...measuresNotDone } = draft.measuresNotDone;
  return { ...slipOver(draft, of), measures: [...draft.measures, measure], measuresNotDone };
}

/** What was read of a sign put right, in its place. */
export function withMeasureChanged(
  draft: RoundDraft,
  entry: string,
  change: Pick<DraftMeasure, 'sign' | 'typed'>,
): RoundDraft {
  const measures = draft.measures.map((one) => (one.entry === entry ? { ...one, ...change } : one));
  return { ...draft, measures };
}

export function withoutMeasure(draft: RoundDraft, entry: string): RoundDraft {
  return { ...draft, measures: draft.measures.filter((one) => one.entry !== entry) };
}

/** A sign was not done, for a reason; what was read of it is given up with it. Null takes the reason back. */
export function withMeasureNotDone(draft: RoundDraft, of: SignOf, notDone: NotDone | null): RoundDraft {
  const { [of]: _was, ...others } = draft.measuresNotDone;
  if (notDone === null) return { ...draft, measuresNotDone: others };
  return {
    ...draft,
    measures: draft.measures.filter(({ sign }) => sign.of !== of),
    measuresNotDone: { ...others, [of]: notDone },
  };
}
