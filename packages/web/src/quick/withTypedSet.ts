import type { RunPlace, Stamp } from '@evenfall/record';
import type { Instant } from '../pressure/pressureDraft.js';
import { withPressure, withReading } from '../pressure/pressureSteps.js';
import { NOTHING_NOTICED, type Noticed, type RoundDraft, withValue } from '../round/draft.js';
import type { TypedSet } from './typedSet.js';

/** What a typed set is kept under: ids made once, and the next numbers of this device. */
export type SetStart = {
  readonly run: string;
  readonly pulse: string;
  readonly sequence: number;
  readonly measuredAt: Stamp;
  readonly keptAt: Instant;
  /** How the pulse felt; absent where nobody was asked. */
  readonly rhythmFelt?: Noticed['rhythmFelt'];
  /** Whether it was said over how long this pulse was counted; absent where the habit was presumed. */
  readonly isWindowSaid?: boolean;
};

/** The same round with a typed set in it: the pulse, if one was typed, then the reading where the cuff was. */
export function withTypedSet(
  draft: RoundDraft,
  { run, method, numbers, pulse }: TypedSet,
  place: RunPlace,
  gauge: string | null,
  {
    run: entry,
    pulse: counted,
    sequence,
    measuredAt,
    keptAt,
    rhythmFelt = null,
    isWindowSaid = false,
  }: SetStart,
): RoundDraft {
  const taken =
    pulse === null
      ? draft
      : withValue(draft, 'pulse', {
          kind: 'count',
          entry: counted,
          sequence,
          measuredAt,
          noticed: { ...NOTHING_NOTICED, rhythmFelt },
          count: pulse,
          rateTyped: isWindowSaid ? 'window-said' : 'window-presumed',
        });
  const placed = withPressure({ ...taken, isIdentityChecked: true }, (pressure) => ({
    ...pressure,
    place,
    gauge,
  }));
  return withReading(placed, {
    kind: 'run',
    entry,
    sequence: sequence + 1,
    measuredAt,
    run,
    place,
    uprightMinutes: null,
    inflatedAt: null,
    keptAt,
    ...(pulse === null ? {} : { pulseOf: counted }),
    typedAs: { method, typed: numbers, fields: {}, reinflated: false },
    note: null,
  });
}

/** How many numbers of the device a typed set takes. */
export const SET_NUMBERS = 2;
