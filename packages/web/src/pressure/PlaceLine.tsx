import type { RunPlace } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { useApp } from '../app/context.js';
import type { Round } from '../round/useRound.js';
import { withPressureAt } from './pressureSteps.js';

/** Where the cuff is, in a few words. */
export function placeText(place: Pick<RunPlace, 'side' | 'site' | 'posture' | 'cuff'>, words: Words): string {
  const where = words.sentence('pressure.placeIs', {
    side: words.sentence(`pressure.${place.side}Side`),
    site: words.sentence(`pressure.${place.site}Site`),
    posture: words.sentence(`pressure.${place.posture}Posture`),
  });
  if (place.cuff === null) return where;
  const cuff = words.sentence('pressure.cuffIs', { text: words.title('cuff', place.cuff.id) });
  return `${where} · ${cuff}`;
}

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
