import type { Run } from '@evenfall/clinical';
import type { RunMarkedBy, RunPlace, Stamp } from '@evenfall/record';
import type { Reopened } from '../round/measuring.js';
import type { Round } from '../round/useRound.js';
import { type DraftRun, type Inflated, type Instant, isLying } from './pressureDraft.js';
import { withReading, withReadingChanged } from './pressureSteps.js';
import { pulseBefore, toCome } from './pulseOfRuns.js';
import { hasOwnPulse } from './readRun.js';

type Kept = {
  readonly run: Run;
  readonly place: RunPlace;
  readonly measuredAt: Stamp;
  readonly inflatedAt: Inflated | null;
  readonly keptAt: Instant;
  /** Minutes on the feet; it belongs to a reading while standing alone. */
  readonly uprightMinutes: number | null;
  /** Minutes that the person had lain; it belongs to a reading while lying alone. */
  readonly lyingMinutes: number | null;
  /** Who marked its moments, where a second person did. */
  readonly markedBy?: RunMarkedBy | null;
  /** The device whose display was read, if the place has named it; the gauge of the round for what was heard or felt. */
  readonly gauge?: string | null;
  readonly typedAs: DraftRun['typedAs'];
  /** As it was typed; a blank is none. */
  readonly note: string | undefined;
  /** Which reading it puts right; absent for a new one. */
  readonly reopened?: Reopened | undefined;
};

/** Keeps a run that was read, typed or read back from the gauge: as the next reading of the round, or in place of one. */
export function keepRun(round: Round, { uprightMinutes, lyingMinutes, note, reopened, ...read }: Kept): void {
  const text = (note ?? '').trim();
  const said = {
    uprightMinutes: read.place.posture === 'stand' ? uprightMinutes : null,
    lyingMinutes: isLying(read.place) ? lyingMinutes : null,
    note: text === '' ? null : text,
  };
  const { run, typedAs, markedBy = null } = read;
  const isOwn = hasOwnPulse(typedAs);
  if (reopened === undefined) {
    round.keep((draft, start) => {
      const pulseOf = isOwn ? null : pulseBefore(draft, toCome(read.place))?.entry;
      return withReading(draft, {
        ...start,
        ...read,
        ...said,
        ...(pulseOf === undefined ? {} : { pulseOf }),
        kind: 'run',
      });
    });
    return;
  }
  round.change((draft) => {
    const reading = draft.pressure.values.find(({ entry }) => entry === reopened.entry);
    const was = reading?.pulseOf;
    // A pulse that was its own and was rubbed out there: the reading goes by that of the round before it.
    const pulseOf = isOwn
      ? null
      : reading !== undefined && was === null
        ? pulseBefore(draft, reading)?.entry
        : was;
    const change = { run, typedAs, markedBy, ...said, ...(pulseOf === undefined ? {} : { pulseOf }) };
    return withReadingChanged(draft, reopened.entry, change);
  });
}
