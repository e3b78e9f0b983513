import {
  armChoice,
  DAY_OF_ROUND,
  isSameLimb,
  type Method,
  type NextStep,
  placeFactsOf,
  type RoundFacts,
  type RoundRules,
} from '@evenfall/clinical';
import type { Gauge, RunPlace, Stamp } from '@evenfall/record';
import { type NotDone, type RoundDraft, slipOver } from '../round/draft.js';
import type { Reopened } from '../round/measuring.js';
import { endedRest } from '../round/restDraft.js';
import { firstToRead } from './firstToRead.js';
import {
  type DraftRun,
  type FeltDraft,
  type Inflated,
  type Instant,
  isLying,
  knownAt,
  type PressureAt,
  type PressureDraft,
  type SinceDraft,
  type TypedAs,
} from './pressureDraft.js';

/** The same round with its pressure changed. */
export function withPressure(
  draft: RoundDraft,
  change: (pressure: PressureDraft) => PressureDraft,
): RoundDraft {
  return { ...draft, pressure: change(draft.pressure) };
}

export function withPressureAt(draft: RoundDraft, measuring: PressureAt): RoundDraft {
  return withPressure(draft, (pressure) => ({ ...pressure, measuring }));
}

/**
 * The cuff is on: the pulse is felt for first, where the protocol says so, and neither was it felt on this arm yet nor a
 * pressure read there, which says as well how far to pump.
 */
export function withPlace(draft: RoundDraft, place: RunPlace, palpateFirst: boolean): RoundDraft {
  return withPressure(draft, (pressure) => {
    const { lostMmHg, readMmHg } = knownAt(pressure, place);
    const isFelt = lostMmHg !== null || readMmHg.length > 0;
    const measuring: PressureAt = palpateFirst && !isFelt ? { at: 'feel', typed: '' } : { at: 'ready' };
    return { ...pressure, ...clocksIn(pressure, place), place, isCuffAsked: true, notDone: null, measuring };
  });
}

/** The clocks since standing up and since lying down go on in their posture alone. */
function clocksIn(
  { upright = null, stoppedUpright = null, lying = null, stoppedLying = null }: PressureDraft,
  place: RunPlace,
): Pick<PressureDraft, 'upright' | 'stoppedUpright' | 'lying' | 'stoppedLying'> {
  const isUp = place.posture === 'stand';
  const isDown = isLying(place);
  return {
    upright: isUp ? upright : null,
    stoppedUpright: isUp ? stoppedUpright : null,
    lying: isDown ? lying : null,
    stoppedLying: isDown ? stoppedLying : null,
  };
}

/**
 * The reading that comes next is begun where it is asked for. At the arm where the cuff is already, it goes straight on, also in
 * another posture; another arm, or another site of it, is shown for a look before the cuff goes on, and what was decided about
 * the first does not hold.
 */
export function withNextReading(
  draft: RoundDraft,
  { step, side, site, posture }: Pick<NextStep, 'step' | 'side' | 'site' | 'posture'>,
  palpateFirst: boolean,
): RoundDraft {
  const { place } = draft.pressure;
  if (place === null) return withPressureAt(draft, { at: 'place' });
  const next = {
    ...place,
    side: side ?? place.side,
    site: site ?? place.site,
    posture: posture ?? place.posture,
  };
  // What is taken again was read there: nothing is felt for first.
  if (next.side === place.side && next.site === place.site)
    return withPlace(draft, next, palpateFirst && step !== 'repeat');
  return withPressure(draft, (pressure) => ({
    ...pressure,
    place: { ...next, override: null },
    measuring: { at: 'place' },
  }));
}

/** Which gauge is read from now on; readings taken before keep theirs. */
export function withGauge(draft: RoundDraft, gauge: string | null): RoundDraft {
  return withPressure(draft, (pressure) => ({ ...pressure, gauge }));
}

/** The pulse was lost at a pressure: the cuff is let go, and goes up again for listening. */
export function withFelt(draft: RoundDraft, felt: FeltDraft): RoundDraft {
  return withPressure(draft, (pressure) => ({
    ...pressure,
    felt: [...pressure.felt, felt],
    measuring: { at: 'ready' },
  }));
}

/** A blank keypad for a reading. */
export function blankReading(
  method: Method,
  {
    measuredAt,
    inflatedAt,
    fields = {},
  }: {
    readonly measuredAt: Stamp;
    readonly inflatedAt: Inflated | null;
    readonly fields?: TypedAs['fields'];
  },
): PressureAt {
  return { at: 'typing', method, typed: '', fields, reinflated: false, measuredAt, inflatedAt };
}

/** The gauge that was chosen, where it is a device that measures by itself and so has a display; else null. */
export function displayAmong(
  gauges: readonly { readonly id: string; readonly named: Pick<Gauge['named'], 'type'> }[],
  chosen: string | null,
): string | null {
  return gauges.find(({ id, named }) => id === chosen && named.type === 'automatic')?.id ?? null;
}

/**
 * A reading came in: it is shown, a reason for having none is gone, and the rest before it is over. What was read off a
 * display was not read from the gauge that is listened by: it has the gauge that comes with it, or none.
 */
export function withReading(draft: RoundDraft, reading: DraftRun): RoundDraft {
  const rest = draft.rest === null ? null : endedRest(draft.rest, reading.keptAt);
  return withPressure({ ...slipOver(draft, 'pressure'), rest }, (pressure) => ({
    ...pressure,
    values: [
      ...pressure.values,
      { ...reading, gauge: (reading.run.method === 'device' ? reading.gauge : pressure.gauge) ?? null },
    ],
    notDone: null,
    measuring: { at: 'shown', entry: reading.entry },
  }));
}

/** A slip undone before signing: the reading was never there. */
export function withoutReading(draft: RoundDraft, entry: string): RoundDraft {
  return withPressure(draft, (pressure) => ({
    ...pressure,
    values: pressure.values.filter((one) => one.entry !== entry),
    measuring: { at: 'ready' },
  }));
}

/**
 * Back to the keypad with what was typed, or to the gauge with what was marked. When each moment was is not put right:
 * it was marked as it was heard, and can only be marked again, in another reading.
 */
export function withReadingReopened(draft: RoundDraft, reopened: Reopened): RoundDraft {
  const reading = draft.pressure.values.find((one) => one.entry === reopened.entry);
  if (reading === undefined) return draft;
  const { typedAs, measuredAt, inflatedAt } = reading;
  return withPressureAt(
    draft,
    'marks' in typedAs
      ? { at: 'reading', ...typedAs, measuredAt, inflatedAt, chosen: firstToRead(typedAs.marks), reopened }
      : { at: 'typing', ...typedAs, measuredAt, inflatedAt, reopened },
  );
}

/** How the person felt on their feet at a reading: asked after it, and taken back with null. */
export function withUnwellUpright(
  draft: RoundDraft,
  entry: string,
  unwellUpright: boolean | null,
): RoundDraft {
  return withPressure(draft, (pressure) => ({
    ...pressure,
    values: pressure.values.map((one) => (one.entry === entry ? { ...one, unwellUpright } : one)),
  }));
}

/** The person stands since then; null for that they sit or lie again. */
export function withUpright(draft: RoundDraft, upright: SinceDraft | null): RoundDraft {
  return withPressure(draft, (pressure) => ({ ...pressure, upright, stoppedUpright: null }));
}

/** Whoever was to lie down lies: the clock since standing up is over, and whatever is taken next is taken so. */
export function withStandingStopped(draft: RoundDraft, posture: RunPlace['posture']): RoundDraft {
  return withPressure(withUpright(draft, null), (pressure) => ({
    ...pressure,
    place: pressure.place === null ? null : { ...pressure.place, posture },
  }));
}

/** The clock since standing up was stopped by hand: since when they stood is kept, as that may have been the slip. */
export function withUprightStopped(draft: RoundDraft): RoundDraft {
  return withPressure(draft, (pressure) => ({
    ...pressure,
    upright: null,
    stoppedUpright: pressure.upright ?? null,
  }));
}

/** The person lies since then; null for that they sit or stand again. */
export function withLying(draft: RoundDraft, lying: SinceDraft | null): RoundDraft {
  return withPressure(draft, (pressure) => ({ ...pressure, lying, stoppedLying: null }));
}

/** The clock since lying down was stopped by hand: since when they lay is kept, as that may have been the slip. */
export function withLyingStopped(draft: RoundDraft): RoundDraft {
  return withPressure(draft, (pressure) => ({
    ...pressure,
    lying: null,
    stoppedLying: pressure.lying ?? null,
  }));
}

/** What was typed or read back of a reading, put right. */
export type ReadingChange = Pick<DraftRun, 'run' | 'uprightMinutes' | 'typedAs' | 'note'> &
  Pick<Partial<DraftRun>, 'markedBy' | 'pulseOf' | 'lyingMinutes'>;

/** A reading put right, in its place: where it was taken, when, and what came before it stay. */
export function withReadingChanged(draft: RoundDraft, entry: string, change: ReadingChange): RoundDraft {
  return withPressure(draft, (pressure) => ({
    ...pressure,
    values: pressure.values.map((one) => (one.entry === entry ? { ...one, ...change } : one)),
    measuring: { at: 'shown', entry },
  }));
}

/** The pressure was not taken, for a reason; readings are given up with it. Null takes the reason back. */
export function withPressureNotDone(draft: RoundDraft, notDone: NotDone | null): RoundDraft {
  return withPressure(draft, (pressure) => ({
    ...pressure,
    values: notDone === null ? pressure.values : [],
    notDone,
    measuring: { at: 'place' },
    upright: null,
    lying: null,
  }));
}

/**
 * Where the cuff goes as long as nobody says otherwise: where it is, else the better arm by the facts, sitting. Arm,
 * cuff and circumference are never made up.
 */
export function suggestedPlace(
  { place }: PressureDraft,
  facts: RoundFacts,
  { cuff }: RoundRules,
): Pick<RunPlace, 'site' | 'side' | 'posture'> {
  if (place !== null) return place;
  const { sides, site } = armChoice(placeFactsOf(facts), DAY_OF_ROUND, cuff);
  return { site, side: sides[0] ?? 'right', posture: 'sit' };
}

/** The form of a reading, as typed so far. */
export function typedAs({ method, typed, fields, reinflated }: TypedAs): TypedAs {
  return { method, typed, fields, reinflated };
}

/**
 * How many seconds more to wait before the cuff may go up again on this limb, from what it was let go of last there; 0
 * for none, null where it is not known.
 */
export function secondsToWait(
  pressure: PressureDraft,
  now: Instant,
  {
    waitAfterEstimateSeconds,
    waitAfterReadingSeconds,
  }: { waitAfterEstimateSeconds: number; waitAfterReadingSeconds: number },
): number | null {
  const last = [
    ...pressure.felt.map(({ place, sequence, at }) => ({
      place,
      sequence,
      at,
      wait: waitAfterEstimateSeconds,
    })),
    ...pressure.values.map(({ place, sequence, keptAt }) => ({
      place,
      sequence,
      at: keptAt,
      wait: waitAfterReadingSeconds,
    })),
  ]
    .filter(({ place }) => pressure.place === null || isSameLimb(place, pressure.place))
    .sort((a, b) => a.sequence - b.sequence)
    .at(-1);
  if (last === undefined) return 0;
  if (last.at.session !== now.session) return null;
  return Math.max(0, Math.ceil(last.wait - (now.atMs - last.at.atMs) / 1000));
}
