import { type CountOf, exceptionsWithRest, SIGNS } from '@evenfall/clinical';
import {
  type CountContent,
  chartCount,
  chartRound,
  chartRun,
  chartSign,
  type Entry,
  type EntryFrame,
  type InForce,
  type Role,
  type RoundContent,
  type RunContent,
  type SignContent,
  type Stamp,
  type TapsContent,
} from '@evenfall/record';
import type { DraftRun } from '../pressure/pressureDraft.js';
import { feltPulse, previousInflation, rhythmFelt } from '../pressure/runCircumstances.js';
import type { DraftMeasure, DraftValue, RoundDraft } from './draft.js';
import { circumstancesOf, type Facts, roundFactsIn } from './facts.js';
import { SIGNS_IN_ORDER } from './measuring.js';
import { restOf } from './restDraft.js';
import { tapRules } from './tapRulesLater.js';

/** Who signs, in what role, on which device, and under which rules. */
export type Signing = {
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

/** The newest schema of each kind that the page writes (a test holds it against the record). */
export const WRITTEN_SCHEMA = 1;
export const COUNT_SCHEMA = 2;
export const RUN_SCHEMA = 6;
export const SIGN_SCHEMA = 2;
export const ROUND_SCHEMA = 4;
export const SERIES_SCHEMA = 3;
export const CLOSED_SCHEMA = 2;

type Under = Pick<Signing, 'facts' | 'inForce' | 'program'>;

/** What the chart will hold of a value: its evidence, and what `clinical` makes of it. */
export function contentOf(
  draft: RoundDraft,
  sign: CountOf,
  value: DraftValue,
  { facts, inForce, program }: Under,
): CountContent | TapsContent {
  const circumstances = circumstancesOf(draft, sign, value, facts, inForce);
  const added = { circumstances, override: null, note: null };
  return value.kind === 'count'
    ? chartCount({ ...added, count: value.count, rateTyped: value.rateTyped ?? null }, inForce, program)
    : tapRules().chartTaps({ ...added, taps: value.taps, repair: true }, inForce, program);
}

/** What the chart will hold of a reading of the pressure. */
export function runContentOf(draft: RoundDraft, value: DraftRun, under: Under): RunContent {
  const { inForce, program } = under;
  const {
    run,
    place,
    uprightMinutes,
    unwellUpright = null,
    lyingMinutes = null,
    gauge = null,
    markedBy = null,
    note,
  } = value;
  const circumstances = {
    rhythmFelt: rhythmFelt(draft),
    previous: previousInflation(draft, value),
    uprightMinutes,
    lyingMinutes,
    unwellUpright,
  };
  const done = { run, place, circumstances, gauge, markedBy, override: null, note };
  return chartRun(done, inForce, program);
}

/** What the chart will hold of a sign that was read. */
export function signContentOf(draft: RoundDraft, measure: DraftMeasure, under: Under): SignContent {
  const { sign, typed = null, note } = measure;
  const circumstances = {
    ageMonths: under.facts.ageMonths,
    feltPulsePerMinute: feltPulse(draft, under.inForce),
    minutesSinceDrinkOrSmoke: null,
  };
  return chartSign({ sign, typed, circumstances, note }, under.inForce, under.program);
}

/** The values of a round as they would be charted now, in the order in which they were taken. */
export function valueEntriesOf(draft: RoundDraft, signing: Signing): EntryFrame[] {
  const frame = frameOf(draft, signing);
  const counted = SIGNS_IN_ORDER.flatMap((sign) =>
    draft[sign].values.map((value) => ({
      ...started(frame, value),
      kind: value.kind,
      schema: value.kind === 'count' ? COUNT_SCHEMA : WRITTEN_SCHEMA,
      content: contentOf(draft, sign, value, signing),
    })),
  );
  const runs = draft.pressure.values.map((value) => ({
    ...started(frame, value),
    kind: value.kind,
    schema: RUN_SCHEMA,
    content: runContentOf(draft, value, signing),
  }));
  const signs = draft.measures.map((measure) => ({
    ...started(frame, measure),
    kind: measure.kind,
    schema: SIGN_SCHEMA,
    content: signContentOf(draft, measure, signing),
  }));
  return [...counted, ...runs, ...signs].sort((a, b) => a.sequence - b.sequence);
}

/** A round as it is signed: an entry for each value, and the one that signs them, last. */
export function entriesOf(draft: RoundDraft, signing: Signing): EntryFrame[] {
  const values = valueEntriesOf(draft, signing);
  const signed = {
    ...frameOf(draft, signing),
    id: draft.signing,
    kind: 'round' as const,
    schema: ROUND_SCHEMA,
    sequence: signing.sequence,
    measuredAt: signing.signedAt,
    writtenAt: signing.signedAt.at,
    content: roundContent(draft, values, signing),
  };
  return [...values, signed];
}

type Frame = Omit<EntryFrame, 'id' | 'kind' | 'sequence' | 'measuredAt' | 'content'>;

function frameOf(draft: RoundDraft, signing: Signing): Frame {
  return {
    frame: 1,
    book: draft.book,
    schema: WRITTEN_SCHEMA,
    person: draft.person,
    round: draft.round,
    session: draft.session,
    agent: signing.agent,
    role: signing.role,
    device: signing.device,
    writtenAt: signing.signedAt.at,
    amends: null,
  };
}

function started(
  frame: Frame,
  { entry, sequence, measuredAt }: Pick<DraftValue, 'entry' | 'sequence' | 'measuredAt'>,
) {
  return { ...frame, id: entry, sequence, measuredAt };
}

/** The signing, with what the protocol makes of the values as they are charted. */
export function roundContent(
  draft: RoundDraft,
  values: readonly EntryFrame[],
  { facts, inForce, program }: Under,
): RoundContent {
  const { features, unwell, note, begun } = draft;
  const rest = restOf(draft.rest);
  const exceptions = exceptionsWithRest(draft.exceptions, rest);
  const known = roundFactsIn(draft, facts);
  const signed = {
    status: draft.isPreliminary ? ('preliminary' as const) : ('final' as const),
    signs: signsOf(draft),
    evidence: {
      exceptions: exceptions === null ? null : [...exceptions],
      features: features === null ? null : [...features],
      unwell,
      facts: { ...known, arms: known.arms.map((arm) => ({ ...arm })) },
    },
    note,
    begun,
    rest,
    isCuffAsked: draft.pressure.isCuffAsked === true,
  };
  return chartRound(signed, values as readonly EntryFrame[] as readonly Entry[], inForce, program);
}

/** Of each sign that was taken, its entries; of each that was not, why. A sign nobody wanted is not in it. */
function signsOf(draft: RoundDraft): RoundContent['signs'] {
  const { pressure, measures, measuresNotDone } = draft;
  const counted = SIGNS_IN_ORDER.map((sign) => ({ sign, ...draft[sign] }));
  const measured = SIGNS.map((sign) => ({
    sign,
    values: measures.filter((one) => one.sign.of === sign),
    notDone: measuresNotDone[sign] ?? null,
  }));
  return [...counted, { sign: 'pressure' as const, ...pressure }, ...measured].flatMap(
    ({ sign, values, notDone }): RoundContent['signs'] => {
      if (notDone !== null) return [{ sign, notDone }];
      return values.length === 0 ? [] : [{ sign, entries: values.map(({ entry }) => entry) }];
    },
  );
}
