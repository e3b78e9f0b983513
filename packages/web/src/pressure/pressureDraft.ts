import type { KnownOfArm, Method, Run } from '@evenfall/clinical';
import type { MarkedByWhom, RunMarkedBy, RunPlace, Stamp } from '@evenfall/record';
import type { NotDone } from '../round/draft.js';
import type { Reopened } from '../round/measuring.js';

/** An instant of the monotonic clock; it means something only within its visit. */
export type Instant = { readonly session: string; readonly atMs: number };

/**
 * When the cuff went up, and whether the reading was asked for at once: by what stood in the round then, whatever is said of the
 * person later. Absent where nobody noted it.
 */
export type Inflated = Instant & { readonly isAtOnce?: boolean };

/** Since when a person stands, or lies, by both clocks: seconds go by the first within a visit, on by the other after a reload. */
export type SinceDraft = { readonly since: Instant; readonly at: Stamp };

/** What was felt before listening: where the pulse was lost, and where it came back if that was felt too. mmHg. */
export type FeltDraft = {
  readonly sequence: number;
  readonly place: RunPlace;
  readonly lostMmHg: number;
  readonly at: Instant;
};

/** A reading taken and not signed yet. Its id and number are made once, whatever happens later. */
export type DraftRun = {
  readonly kind: 'run';
  readonly entry: string;
  readonly sequence: number;
  readonly measuredAt: Stamp;
  readonly run: Run;
  readonly place: RunPlace;
  readonly uprightMinutes: number | null;
  /** Whether the person felt unwell on their feet; absent or null where nobody asked. */
  readonly unwellUpright?: boolean | null;
  /** How long the person had lain; absent or null where nobody said. */
  readonly lyingMinutes?: number | null;
  /** Which gauge of the place; absent for not said. */
  readonly gauge?: string | null;
  /** Who marked its moments, where a second person did; absent or null for nobody else. */
  readonly markedBy?: RunMarkedBy | null;
  /** When the cuff went up; null for a reading that was taken before it was typed. */
  readonly inflatedAt: Inflated | null;
  /** When its numbers were kept: the cuff was let go before. */
  readonly keptAt: Instant;
  /** Of which count of the round its pulse is; null for one that was typed with it, absent where nobody knows. */
  readonly pulseOf?: string | null;
  /** As it was typed or marked, so that a slip goes back to where it was made. */
  readonly typedAs: TypedAs | MarkedAs;
  readonly note: string | null;
};

/** What may be typed beside the numbers of a reading, each as text until it is kept. */
export const RUN_FIELDS = [
  'peak',
  'firstAtSeconds',
  'lastAtSeconds',
  'gapFrom',
  'gapTo',
  'backMmHg',
  'uprightMinutes',
  'lyingMinutes',
  'note',
] as const;
export type RunField = (typeof RUN_FIELDS)[number];

/** A reading as it stands on the keypad: the numbers as the trade writes them, and what else is known of the run. */
export type TypedAs = {
  readonly method: Method;
  readonly typed: string;
  readonly fields: Readonly<Partial<Record<RunField, string>>>;
  readonly reinflated: boolean;
};

/** What a touch in a run was of; a `slip` was of nothing. */
export const MARKS = [
  'peak',
  'pulse lost',
  'pulse back',
  'first sound',
  'muffled',
  'last sound',
  'slip',
] as const;
export type MarkOf = (typeof MARKS)[number];
/** What may be marked in a run by feel: nothing was heard in it. */
export const FELT_MARKS = ['peak', 'pulse lost', 'pulse back', 'slip'] as const;

/** A moment that was marked, and the gauge that is read back for it, as text; blank is not read yet. */
export type Mark = {
  readonly what: MarkOf;
  /**
   * Seconds since the first touch of its run, or since the valve was opened where that is known without one: then a touch
   * on the way up lies before it. Null where the times are void.
   */
  readonly atSeconds: number | null;
  /** False where it is known without a touch; absent for a touch. */
  readonly isTouch?: false;
  /** Who touched; absent for whoever measures. */
  readonly by?: MarkedByWhom;
  readonly typed: string;
};

/** A touch of a second person on another device, brought to this device's clock. */
export type SecondTouch = { readonly id: string; readonly atMs: number; readonly withinMs: number };

/** What a second person marked of the run so far, and when whoever measures began to mark instead; null for not. */
export type SecondMarking = {
  readonly touches: readonly SecondTouch[];
  readonly takenOverAtMs: number | null;
};

/** A reading as it was marked in time, with the gauge read back for each moment. */
export type MarkedAs = {
  readonly method: 'auscultation' | 'palpation';
  readonly marks: readonly Mark[];
  /** The screen was left while the cuff was let down, so that no time of it can be relied on. */
  readonly areTimesVoid: boolean;
  /** How far the clocks of two devices may be apart, ms; absent where one device marked alone. */
  readonly clocksWithinMs?: number;
  readonly fields: TypedAs['fields'];
  readonly reinflated: boolean;
};

/** Where the taking of the pressure is. */
export type PressureAt =
  | { readonly at: 'place' }
  /** The pulse is felt for while the cuff goes up. */
  | { readonly at: 'feel'; readonly typed: string }
  /** Ready to pump up, or waiting until it may be. */
  | { readonly at: 'ready' }
  | (TypedAs & {
      readonly at: 'typing';
      readonly measuredAt: Stamp;
      readonly inflatedAt: Inflated | null;
      /** Which reading is put right; absent for a new one. */
      readonly reopened?: Reopened;
    })
  /** The moments of a run are marked while the cuff is let down. */
  | {
      readonly at: 'listening';
      readonly session: string;
      readonly measuredAt: Stamp;
      readonly inflatedAt: Inflated;
      /** Each touch by the event's own time stamp. */
      readonly touchesMs: readonly number[];
      /** Absent where nobody marks on another device. */
      readonly second?: SecondMarking;
      /** What is known beside the numbers already: how long the person stood. Absent for nothing. */
      readonly fields?: TypedAs['fields'];
      /** By feel alone; absent for by ear. */
      readonly method?: 'palpation';
      /** When the letting down began, where that is known without a touch; absent where the first touch says it. */
      readonly openedAtMs?: number;
    }
  /** The gauge of each marked moment is read back. */
  | (MarkedAs & {
      readonly at: 'reading';
      readonly measuredAt: Stamp;
      readonly inflatedAt: Inflated | null;
      /** Which mark the gauge shows. */
      readonly chosen: number;
      readonly reopened?: Reopened;
    })
  | { readonly at: 'shown'; readonly entry: string };

/** The pressure of a round. */
export type PressureDraft = {
  /** Where the cuff is, or was for a set that was typed; null until it was put on. */
  readonly place: RunPlace | null;
  /** Whether its points were asked: where it is put on, or of a typed set on the page of making ready; absent for not. */
  readonly isCuffAsked?: boolean;
  /** Which gauge of the place the readings to come are read from; absent for not said. */
  readonly gauge?: string | null;
  readonly felt: readonly FeltDraft[];
  readonly values: readonly DraftRun[];
  readonly notDone: NotDone | null;
  readonly measuring: PressureAt;
  /** Since when the person stands; absent or null while nobody said. */
  readonly upright?: SinceDraft | null;
  /** A clock since standing up that was stopped and may be put back while they stand; absent or null for none. */
  readonly stoppedUpright?: SinceDraft | null;
  /** Since when the person lies; absent or null while nobody said. */
  readonly lying?: SinceDraft | null;
  /** A clock since lying down that was stopped and may be put back while they lie; absent or null for none. */
  readonly stoppedLying?: SinceDraft | null;
};

export const NO_PRESSURE: PressureDraft = {
  place: null,
  felt: [],
  values: [],
  notDone: null,
  measuring: { at: 'place' },
};

/** The reading that is put right; null while a new one is taken. */
export function reopenedReading({ measuring, values }: PressureDraft): DraftRun | null {
  const entry = 'reopened' in measuring ? measuring.reopened?.entry : undefined;
  return values.find((one) => one.entry === entry) ?? null;
}

/** Seconds from one instant to a later one; null across two visits, whose clocks have nothing in common. */
export function secondsBetween(from: Instant | null, to: Instant | null): number | null {
  if (from === null || to === null || from.session !== to.session) return null;
  return Math.max(0, to.atMs - from.atMs) / 1000;
}

/** What is known of the pressure at a place in this round: where the pulse was lost, and systolics read there, mmHg. */
export function knownAt(pressure: PressureDraft, place: RunPlace): KnownOfArm {
  const read = pressure.values.filter(
    (one) => one.place.side === place.side && one.place.site === place.site,
  );
  return {
    lostMmHg: feltFor(pressure, place)?.lostMmHg ?? null,
    readMmHg: read.flatMap((one) => systolicOf(one.run)),
  };
}

function systolicOf({ moments }: Run): readonly number[] {
  const first = moments.find(({ what }) => what === 'first sound' || what === 'pulse back');
  return first === undefined ? [] : [first.mmHg];
}

/** The estimate that was felt last on this arm, in whatever posture; null if there is none. It says how far to pump. */
function feltFor(pressure: PressureDraft, place: RunPlace): FeltDraft | null {
  return pressure.felt.findLast((one) => one.place.side === place.side) ?? null;
}

/**
 * The estimate that goes with a reading as its own, mmHg: the last that was felt on this arm in this posture; null if there
 * is none. One of another posture is no estimate of a pressure that fell on standing.
 */
export function feltHere(pressure: PressureDraft, { side, posture }: RunPlace): number | null {
  const last = pressure.felt.findLast(({ place }) => place.side === side && place.posture === posture);
  return last?.lostMmHg ?? null;
}

/** Whether the pulse was felt, and a pressure read, on this arm in this posture. */
export function restsOn(
  pressure: PressureDraft,
  place: RunPlace,
): { readonly isFeltHere: boolean; readonly isReadHere: boolean } {
  const isReadHere = pressure.values.some(
    (one) =>
      one.place.side === place.side && one.place.site === place.site && one.place.posture === place.posture,
  );
  return { isFeltHere: feltHere(pressure, place) !== null, isReadHere };
}

/** Whether somebody lies, on the back or on the side. */
export function isLying({ posture }: Pick<RunPlace, 'posture'>): boolean {
  return posture === 'lie' || posture === 'lie-left';
}
