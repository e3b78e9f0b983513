import { useApp } from '../app/context.js';
import { Choices } from '../parts/Choices.js';
import type { Round } from '../round/useRound.js';
import type { DraftRun } from './pressureDraft.js';
import { withUnwellUpright } from './pressureSteps.js';

/** After a reading on the feet: how the person felt. One touch for nothing; what was said can be taken back. */
export function AskUpright({ round, reading }: { readonly round: Round; readonly reading: DraftRun }) {
  const { words } = useApp();
  const { unwellUpright = null, place, entry } = reading;
  if (place.posture !== 'stand') return null;
  return (
    <Choices
      legend={words.sentence('pressure.askUpright')}
      choices={[
        { id: 'none', text: words.sentence('pressure.wellUpright') },
        { id: 'unwell', text: words.sentence('pressure.unwellUpright') },
        ...(unwellUpright === null
          ? []
          : [{ id: 'unasked', text: words.sentence('pressure.uprightUnasked') }]),
      ]}
      chosen={unwellUpright === null ? null : unwellUpright ? 'unwell' : 'none'}
      onChoose={(id) =>
        round.change((draft) => withUnwellUpright(draft, entry, id === 'unasked' ? null : id === 'unwell'))
      }
    />
  );
}
