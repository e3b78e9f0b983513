import {
  missingSigns as missingOf,
  type NextStep,
  nextPressureStep,
  nextStep,
  type ReadingsCircumstances,
  type RoundEvent,
  type RoundReading,
  type RoundSign,
  type RoundState,
  type RoundValue,
  readingsCircumstances,
  roundState,
} from '@evenfall/clinical';
import { type Entry, type RoundContent, roundInputOf } from '@evenfall/record';
import { type DraftRun, secondsBetween } from '../pressure/pressureDraft.js';
import type { RoundDraft } from './draft.js';
import { contentOf, roundContent, runContentOf, type Signing, valueEntriesOf } from './entries.js';
import { eventsWith } from './events.js';
import { roundFactsIn } from './facts.js';
import { SIGNS_IN_ORDER } from './measuring.js';

type Under = Pick<Signing, 'facts' | 'inForce' | 'program'>;

/** Where a round stands: what comes next, what is missing, and what the protocol makes of it so far. */
export type RoundStanding = {
  readonly state: RoundState;
  readonly next: NextStep;
  /** What the pressure alone still needs; null for nothing. */
  readonly nextPressure: NextStep | null;
  readonly missing: readonly RoundSign[];
  /** What a severe pressure asks and nobody answered: without it an alert may be missing, so nothing is signed. */
  readonly unasked: readonly ('features' | 'pregnancy')[];
  readonly content: RoundContent;
};

/** Where a round stands now. Nothing of it is kept: it is made of the draft each time. */
export function standingOf(draft: RoundDraft, under: Under): RoundStanding {
  const { roundRules: rules } = under.inForce;
  const entries = valueEntriesOf(draft, { ...NOBODY, ...under, signedAt: draft.begunAt });
  const content = roundContent(draft, entries, under);
  const state = roundState(eventsOf(draft, under));
  const known = knownOf(entries as readonly object[] as readonly Entry[], content, rules);
  const facts = roundFactsIn(draft, under.facts);
  return {
    state,
    next: nextStep(state, facts, known, rules),
    nextPressure: nextPressureStep(state, facts, known, rules),
    missing: missingOf(state, rules.plan),
    unasked: unaskedOf(content),
    content,
  };
}

function unaskedOf({ value }: RoundContent): RoundStanding['unasked'] {
  if (value === null) return [];
  const { features, pregnancy } = value.ask;
  return [
    ...(features.length > 0 ? (['features'] as const) : []),
    ...(pregnancy ? (['pregnancy'] as const) : []),
  ];
}

/** Entries that are only looked at have no signer. */
const NOBODY = { agent: '', role: 'observer', device: '', sequence: 0 } as const;

function knownOf(
  entries: readonly Entry[],
  { evidence }: RoundContent,
  rules: Parameters<typeof readingsCircumstances>[1],
): ReadingsCircumstances {
  if (evidence === null) throw new Error('A round on this page has evidence');
  return readingsCircumstances(roundInputOf(entries, evidence), rules);
}

/** What happened in a round so far, in the order of the work. */
export function eventsOf(draft: RoundDraft, under: Under): RoundEvent[] {
  const { pressure, measures } = draft;
  const taken = [
    ...SIGNS_IN_ORDER.flatMap((sign) =>
      draft[sign].values.map((value) => ({ ...value, value: rateOf(draft, sign, value, under) })),
    ),
    ...pressure.values.map((value) => ({ ...value, value: readingOf(draft, value, under) })),
    ...measures.map((one) => ({ ...one, value: { id: one.entry, of: one.sign.of } })),
  ].sort((a, b) => a.sequence - b.sequence);
  return eventsWith(draft, taken);
}

function rateOf(
  draft: RoundDraft,
  sign: (typeof SIGNS_IN_ORDER)[number],
  value: RoundDraft['pulse']['values'][number],
  under: Under,
): RoundValue {
  const { perMinute, nextWindowSeconds } = contentOf(draft, sign, value, under).value;
  const { rhythmFelt } = value.noticed;
  const isFeltIrregular = rhythmFelt === null ? null : rhythmFelt === 'irregular';
  return { id: value.entry, of: sign, perMinute, isFeltIrregular, nextWindowSeconds };
}

/** The readings of a round so far, in the order of the work. */
export function readingsSoFar(draft: RoundDraft, under: Under): RoundReading[] {
  return draft.pressure.values.map((value) => readingOf(draft, value, under));
}

/** A reading as the rules of a round take it; seconds count from the first reading that was kept in this visit. */
export function readingOf(
  draft: RoundDraft,
  value: DraftRun,
  under: Under,
): RoundReading & { readonly of: 'pressure' } {
  const { systolic, diastolicUsed } = runContentOf(draft, value, under).value;
  const { entry, run, place, uprightMinutes, unwellUpright = null, keptAt } = value;
  const { site, side, posture } = place;
  return {
    of: 'pressure',
    id: entry,
    site,
    side,
    posture,
    method: run.method,
    systolic,
    diastolic: diastolicUsed,
    pulsePerMinute: run.pulsePerMinute,
    uprightMinutes,
    isUnwellUpright: unwellUpright,
    atSeconds: secondsBetween(draft.pressure.values[0]?.keptAt ?? null, keptAt),
  };
}
