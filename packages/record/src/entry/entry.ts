import { z } from 'zod';
import type { ActNowClosedContent } from '../content/actNowClosed.js';
import type { ClassSessionContent, KeptByAgreementContent } from '../content/classSession.js';
import type { CountContent } from '../content/count.js';
import type { CountersignedContent } from '../content/countersigned.js';
import type { DiaryEndedContent, DiaryHandedContent } from '../content/diary.js';
import type { EquipmentContent, EquipmentEndedContent, GaugeLoggedContent } from '../content/equipment.js';
import type { ExerciseContent } from '../content/exercise.js';
import type { FactContent, FactEndedContent } from '../content/fact.js';
import { KIND_NAMES, type KindName } from '../content/kinds.js';
import type { ReportedContent } from '../content/reported.js';
import type { RoundContent } from '../content/round.js';
import type { RunContent } from '../content/run.js';
import type { ScenarioContent } from '../content/scenario.js';
import type { SeriesContent, SeriesDecidedContent } from '../content/series.js';
import type { SignContent } from '../content/sign.js';
import type { TapsContent } from '../content/taps.js';
import { amends } from './amendment.js';
import { book } from './book.js';
import { id } from './id.js';
import { role } from './role.js';
import { instant, stamp } from './stamp.js';

/**
 * The frame every entry has, as a client sends it. An entry never changes once it is stored: its id is made
 * by the client (UUIDv7), so that sending it twice stores it once. Ids are never read as times.
 */
export const entryFrame = z
  .object({
    /** Which shape the frame itself has; absent is 1. Grows with a new field, and `readFrame` upgrades older ones. */
    frame: z.literal(1).default(1),
    id,
    book,
    kind: z.enum(KIND_NAMES),
    schema: z.number().int().min(1),
    /** Whose entry; null only for entries about the place (a protocol chosen, its equipment). */
    person: id.nullable(),
    /** The set of signs that it belongs to. */
    round: id.nullable(),
    /** The meeting of a group it was made in: what a class session keeps is deleted by it. Absent in older frames. */
    session: id.nullable().default(null),
    agent: id,
    role,
    device: id,
    /** Grows by one on each device: the order within a round, whatever the clocks say. */
    sequence: z.number().int().min(0).max(Number.MAX_SAFE_INTEGER),
    /** When it was measured; an amendment says when what it corrects was measured. */
    measuredAt: stamp,
    /** When this entry was written down on the device: later than the measuring for a late entry or an amendment. */
    writtenAt: instant,
    amends: amends.nullable(),
    content: z.record(z.string(), z.unknown()),
  })
  .strict();
export type EntryFrame = z.infer<typeof entryFrame>;

type Content = {
  count: CountContent;
  taps: TapsContent;
  run: RunContent;
  sign: SignContent;
  round: RoundContent;
  person: { readonly identifiers: readonly string[] };
  'identity-corrected': { readonly changed: readonly string[] };
  'identity-erased': { readonly reason: string };
  reported: ReportedContent;
  'diary-handed': DiaryHandedContent;
  'diary-ended': DiaryEndedContent;
  series: SeriesContent;
  'series-decided': SeriesDecidedContent;
  fact: FactContent;
  'fact-ended': FactEndedContent;
  'act-now-closed': ActNowClosedContent;
  countersigned: CountersignedContent;
  'entered-in-error': { readonly note: string | null };
  'protocol-chosen': { readonly version: string | null };
  equipment: EquipmentContent;
  'equipment-ended': EquipmentEndedContent;
  'gauge-logged': GaugeLoggedContent;
  exercise: ExerciseContent;
  scenario: ScenarioContent;
  'class-session': ClassSessionContent;
  'class-session-ended': Readonly<Record<never, never>>;
  'kept-by-agreement': KeptByAgreementContent;
};

/** An entry whose content has been read by the schema of its kind. */
export type Entry = {
  readonly [K in KindName]: Omit<EntryFrame, 'kind' | 'content'> & {
    readonly kind: K;
    readonly content: Content[K];
  };
}[KindName];

/** An entry as kept: with the instant at which the server took it. */
export type StoredEntry = Entry & { readonly recordedAt: string };
