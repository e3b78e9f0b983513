import type { CountOf } from '@evenfall/clinical';
import {
  type Book,
  type CountContent,
  chartCount,
  chartTaps,
  type EntryFrame,
  type InForce,
  type Role,
  type RoundContent,
  type Stamp,
  type TapsContent,
} from '@evenfall/record';
import type { DraftValue, RoundDraft } from './draft.js';
import { circumstancesOf, type Facts } from './facts.js';

/** Who signs, in what role, on which device, and under which rules. */
export type Signing = {
  readonly book: Book;
  readonly agent: string;
  readonly role: Role;
  readonly device: string;
  readonly signedAt: Stamp;
  /** The number of the signing entry: after those of its values. */
  readonly sequence: number;
  readonly facts: Facts;
  readonly inForce: InForce;
  readonly program: string;
};

/** The newest schema of every kind that the page writes (a test holds it against the record). */
export const WRITTEN_SCHEMA = 1;

/** What the chart will hold of a value: its evidence, and what `clinical` makes of it. */
export function contentOf(
  draft: RoundDraft,
  sign: CountOf,
  value: DraftValue,
  { facts, inForce, program }: Pick<Signing, 'facts' | 'inForce' | 'program'>,
): CountContent | TapsContent {
  const circumstances = circumstancesOf(draft, sign, value, facts, inForce);
  const added = { circumstances, override: null, note: null };
  return value.kind === 'count'
    ? chartCount({ ...added, count: value.count }, inForce, program)
    : chartTaps({ ...added, taps: value.taps, repair: true }, inForce, program);
}

/** A round as it is signed: an entry for each value, and the one that signs them, last. */
export function entriesOf(draft: RoundDraft, signing: Signing): EntryFrame[] {
  const frame = {
    frame: 1 as const,
    book: signing.book,
    schema: WRITTEN_SCHEMA,
    person: draft.person,
    round: draft.round,
    session: null,
    agent: signing.agent,
    role: signing.role,
    device: signing.device,
    amends: null,
  };
  const values = (['pulse', 'breaths'] as const).flatMap((sign) =>
    draft[sign].values.map((value) => ({
      ...frame,
      id: value.entry,
      kind: value.kind,
      sequence: value.sequence,
      measuredAt: value.measuredAt,
      writtenAt: signing.signedAt.at,
      content: contentOf(draft, sign, value, signing),
    })),
  );
  const signed = {
    ...frame,
    id: draft.signing,
    kind: 'round' as const,
    sequence: signing.sequence,
    measuredAt: signing.signedAt,
    writtenAt: signing.signedAt.at,
    content: roundContent(draft, signing.inForce),
  };
  return [...values, signed];
}

function roundContent(draft: RoundDraft, { presetVersion }: InForce): RoundContent {
  return {
    status: draft.isPreliminary ? 'preliminary' : 'final',
    signs: (['pulse', 'breaths'] as const).map((sign) => {
      const { notDone, values } = draft[sign];
      return notDone === null ? { sign, entries: values.map(({ entry }) => entry) } : { sign, notDone };
    }),
    protocolVersion: presetVersion,
    note: null,
  };
}
