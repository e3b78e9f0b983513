import { inflateTo } from '@evenfall/clinical';
import type { RunPlace } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { Dial } from '../parts/Dial.js';
import type { Round } from '../round/useRound.js';
import { knownAt } from './pressureDraft.js';

type ListenTopProps = {
  readonly round: Round;
  readonly place: RunPlace;
  /** When the first moment was marked, ms; null for none yet. */
  readonly firstAtMs: number | null;
};

/** How far to pump up until the first moment is marked, then the hand of the watch: the eyes are on the gauge. */
export function ListenTop({ round, place, firstAtMs }: ListenTopProps) {
  const { words } = useApp();
  const { mmHg } = inflateTo(knownAt(round.draft.pressure, place), round.inForce.runRules.inflation);
  return (
    <div className="listen-top">
      {firstAtMs === null ? (
        <p className="pump-to">
          {mmHg === null
            ? words.sentence('pressure.pumpUnknown')
            : words.sentence('pressure.pumpTo', { mmHg })}
        </p>
      ) : (
        <Dial startedAtMs={firstAtMs} windowSeconds={null} />
      )}
    </div>
  );
}
