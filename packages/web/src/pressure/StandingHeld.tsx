import type { NextStep } from '@evenfall/clinical';
import { pressureWritten } from '@evenfall/record';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { Flags } from '../parts/Flags.js';
import { runContentOf } from '../round/entries.js';
import type { RoundStanding } from '../round/standing.js';
import type { Round } from '../round/useRound.js';

/** Why nobody is stood up as a matter of course: a systolic that is low before it; empty for nothing. */
export function lowBeforeStanding({ nextPressure }: RoundStanding): NextStep['why'] {
  return nextPressure?.why.filter(({ code }) => code === 'low-before-standing') ?? [];
}

type HeldProps = {
  readonly round: Round;
  readonly why: NextStep['why'];
  /** Whether leaving it comes first; not once they stand. */
  readonly isFirst: boolean;
};

/** Where somebody with a low pressure would be stood up: what was measured, what speaks against it, and the way to leave it. */
export function StandingHeld({ round, why, isFirst }: HeldProps) {
  const { words, program } = useApp();
  const { draft } = round;
  const numbers = draft.pressure.values.map((one) =>
    pressureWritten(runContentOf(draft, one, { ...round, program })),
  );
  return (
    <div className="standing-held">
      <p>
        <strong>{words.say.allOf(numbers)}</strong> {words.sentence('pressure.mmHg')}
      </p>
      <Flags flags={why} isAnnounced />
      <Link
        href={`/people/${draft.person}/round`}
        className={isFirst ? 'button button-first button-large' : 'button'}
      >
        {words.sentence('count.toReview')}
      </Link>
    </div>
  );
}
