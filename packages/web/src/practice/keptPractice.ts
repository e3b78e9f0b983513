import type { CountedSign } from '@evenfall/practice';
import type { Aids, Stamp } from '@evenfall/record';
import type { RoundDraft, SignDraft } from '../round/draft.js';
import type { VisitData } from './visit.js';

/** What is on the table: the room, the bedside's own screen of a sign, the numbers, a pressure that was written, or what it came to. */
export type PracticeStep = 'room' | 'pulse' | 'apex' | 'breaths' | 'numbers' | 'written' | 'done';

/** An exercise under way on this device. Plain data, so that a reload finds it and the visit is played on. */
export type PracticeDraft = {
  readonly version: 1;
  /** The id of the entry that will keep it, made once. */
  readonly exercise: string;
  /** How often it went on in another tab. */
  readonly turn?: number;
  /** Its number among the entries of this device. */
  readonly sequence: number;
  readonly begunAt: Stamp;
  readonly visit: VisitData;
  /** What the bedside's screens keep, as in a round. */
  readonly round: RoundDraft;
  readonly step: PracticeStep;
  readonly aids: Aids;
  /** Quietest tap that was heard, dB over a normal listener's threshold; null: not checked. */
  readonly thresholdDb: number | null;
  /** Whether the sounds were ever shown. */
  readonly wasShown: boolean;
  readonly saysActNow: boolean | null;
  /** The second of the visit at which the window of each count began last. */
  readonly countedFrom: {
    readonly pulse: number | null;
    readonly breaths: number | null;
    readonly apex?: number | null;
  };
  /** The same of the first tap of each sign that is tapped. */
  readonly tappedFrom?: Readonly<Partial<Record<CountedSign, number>>>;
  /** The second at which each value's window or tapping began, by its entry. */
  readonly valuesFrom?: Readonly<Record<string, number>>;
  /** The count at the apex, as the bedside's screens keep one of the pulse. */
  readonly apex?: SignDraft;
  /** What was written of the thermometer, degC; absent: nothing. */
  readonly temperatureC?: number;
  /** Moments that were marked in the run at hand, when its cuff was flat last and when it was highest, seconds of the visit. */
  readonly marks: readonly number[];
  readonly wentUpSeconds?: number | null;
  readonly peakSeconds: number | null;
  readonly peakMmHg?: number;
  /** The highest point before the reading that is being written, and before the one that was kept, seconds of the visit. */
  readonly writtenFrom?: number | null;
  readonly runFrom?: number | null;
  /** The same of each reading, by its entry. */
  readonly runsFrom?: Readonly<Record<string, number | null>>;
  /** Whether the chest piece lies on the chest, to hear the breath. */
  readonly isOnChest?: boolean;
  /** Whether the tape was round the arm, the cuff on it. */
  readonly isCuffOn: boolean;
  readonly hasMeasuredArm: boolean;
  /** Where the chest piece or the fingers are on the arm's picture; null: in the hand. */
  readonly piece: { readonly x: number; readonly y: number; readonly isPressed: boolean } | null;
};

/** The part of `localStorage` that is needed here. */
export type PracticeShelf = {
  readonly getItem: (key: string) => string | null;
  readonly setItem: (key: string, text: string) => void;
  readonly removeItem: (key: string) => void;
};

const KEY = 'evenfall.practice';

/** What one agent keeps, another does not see. */
export function practiceKey(agent: string | null): string {
  return agent === null ? KEY : `${KEY}.${agent}`;
}

/** The exercise under way of an agent; null for none, or for one of a newer program, which is left alone. */
export function readPractice(shelf: PracticeShelf | null, agent: string | null): PracticeDraft | null {
  try {
    const text = shelf?.getItem(practiceKey(agent)) ?? null;
    const read = text === null ? null : (JSON.parse(text) as PracticeDraft);
    return read?.version === 1 && isWhole(read) ? read : null;
  } catch {
    return null;
  }
}

/**
 * Hands the exercise under way to whoever is chosen instead, without writing over one of theirs. Where another one is theirs,
 * or the shelf takes nothing, it stays where it was.
 */
export function movePractice(
  shelf: PracticeShelf | null,
  from: string | null,
  to: string | null,
  draft: PracticeDraft,
): void {
  const theirs = readPractice(shelf, to);
  if (theirs !== null && theirs.exercise !== draft.exercise) return;
  if (keepPractice(shelf, to, draft) && from !== to) keepPractice(shelf, from, null);
}

/** Whether what the room needs of it is there. */
function isWhole({ exercise, visit, round, step, marks }: Partial<PracticeDraft>): boolean {
  return (
    typeof exercise === 'string' &&
    typeof visit?.seed === 'number' &&
    typeof visit.scenario?.id === 'string' &&
    Array.isArray(visit.actions) &&
    typeof round?.pressure === 'object' &&
    typeof step === 'string' &&
    Array.isArray(marks)
  );
}

/** Keeps it, or takes it away; false where this device keeps nothing. */
export function keepPractice(
  shelf: PracticeShelf | null,
  agent: string | null,
  draft: PracticeDraft | null,
): boolean {
  try {
    if (shelf === null) return false;
    if (draft === null) shelf.removeItem(practiceKey(agent));
    else shelf.setItem(practiceKey(agent), JSON.stringify(draft));
    return true;
  } catch {
    return false;
  }
}

export function deviceShelf(): PracticeShelf | null {
  try {
    return window.localStorage;
  } catch {
    return null;
  }
}
