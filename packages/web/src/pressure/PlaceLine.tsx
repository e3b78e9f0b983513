import type { RunPlace } from '@evenfall/record';
import { useApp } from '../app/context.js';
import type { Round } from '../round/useRound.js';
import { placeText } from './placeText.js';
import { withPressureAt } from './pressureSteps.js';

/** Where the cuff is, with the way back to change it. */
export function PlaceLine({ round, place }: { readonly round: Round; readonly place: RunPlace }) {
  const { words } = useApp();
  return (
    <p className="place-line small">
      <span>{placeText(place, words)}</span>
      <button
        type="button"
        className="button button-quiet"
        onClick={() => round.change((draft) => withPressureAt(draft, { at: 'place' }))}
      >
        {words.sentence('pressure.changePlace')}
      </button>
    </p>
  );
}
