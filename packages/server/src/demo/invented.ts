import type { EmergencyFeature, Preparation, Side } from '@evenfall/clinical';
import type { DiaryLanguage, FactContent, Identity, RunPlace, TypedNumber } from '@evenfall/record';
import type { InventedAway } from './awaySeries.js';

/** Everybody here is invented. Their numbers start with INV, or their name says so, as every page of the demo does. */
export type InventedPerson = {
  readonly identity: Identity;
  readonly facts?: readonly InventedFact[];
  readonly rounds: readonly InventedRound[];
  readonly away?: readonly InventedAway[];
  /** A diary that is out: its first day so many days ago, and how long it is. */
  readonly diary?: { readonly daysAgo: number; readonly days: number; readonly language: DiaryLanguage };
};

export const INVENTED_AGENTS = {
  sister: 'Wren Halloran (invented)',
  doctor: 'Dr Ines Abara (invented)',
  learner: 'Kit Osei-Lund (invented, learner)',
} as const;
export type InventedAgent = keyof typeof INVENTED_AGENTS;

/** Something known of a person since so many days, with no end in sight. */
export type InventedFact = {
  readonly daysAgo: number;
  readonly about: FactContent['about'];
  readonly text?: string;
};

/** One invented set of signs: how long before now, who took it, and what was done. */
export type InventedRound = {
  readonly hoursAgo: number;
  readonly agent: InventedAgent;
  readonly pulse: InventedCount | InventedTaps | NotDone;
  readonly breaths: InventedCount | NotDone;
  /** Pressures, in the order in which they were taken; a round with any is signed as a whole one. */
  readonly pressures?: readonly InventedPressure[];
  readonly signs?: readonly InventedSign[];
  readonly exceptions?: readonly Preparation[];
  readonly features?: readonly EmergencyFeature[];
  /** Later amendments of the pulse, each by somebody, hours after the round. */
  readonly amended?: readonly Amended[];
  /** What closes the acts-now of the round. */
  readonly closed?: InventedClosing;
  readonly countersigned?: InventedCountersigning;
};

/** Another sign, as `parseSign` reads it; `typed` is its number in the other unit in which it was typed. */
export type InventedSign = Readonly<Record<string, unknown>> & { readonly typed?: TypedNumber };

/** What was done with the cuff, in the shape that `parseRun` reads, and where. */
export type InventedPressure = {
  readonly run: Readonly<Record<string, unknown>>;
  readonly side?: Side;
  readonly posture?: RunPlace['posture'];
  readonly cuff?: RunPlace['cuff'];
  readonly armCm?: number;
  readonly uprightMinutes?: number;
  /** Whether the person felt unwell on their feet; absent for not asked. */
  readonly unwellUpright?: boolean;
  /** What was meant, where a slip was signed: the numbers that a later amendment puts in its place. */
  readonly meant?: Readonly<Record<string, unknown>>;
};

export type InventedClosing = {
  readonly agent: InventedAgent;
  readonly minutesLater: number;
  readonly conditions: readonly string[];
  readonly toldWhom: string;
  readonly saidBack: string;
};

export type InventedCountersigning = {
  readonly agent: InventedAgent;
  readonly minutesLater: number;
  readonly agrees: boolean;
  readonly note?: string;
};

export type InventedCount = {
  readonly n: number;
  readonly windowSeconds: number;
  readonly clock?: 'beat' | 'any';
  readonly first?: 0 | 1;
  readonly rhythmFelt?: 'regular' | 'irregular';
  readonly strength?: 'weak' | 'normal';
};
/** Intervals between taps in ms, as a rhythm to draw from. */
export type InventedTaps = {
  readonly rhythm: 'steady' | 'breathing' | 'no-pattern';
  readonly meanMs: number;
  readonly beats: number;
};
export type NotDone = { readonly notDone: 'declined' | 'asleep' };
export type Amended =
  | { readonly agent: InventedAgent; readonly n: number; readonly reason: 'typing-slip' }
  | { readonly agent: InventedAgent; readonly inError: 'wrong-person' };
