import { ROUND_FIGURES } from '@evenfall/clinical';
import type { RunPlace } from '@evenfall/record';
import { useApp } from '../app/context.js';
import type { Round } from '../round/useRound.js';
import { isLainWrong } from './lying.js';
import { isLying, reopenedReading, type TypedAs } from './pressureDraft.js';
import { RunInput } from './RunInput.js';
import { uprightOf } from './upright.js';

type MinutesProps = {
  readonly round: Round;
  readonly place: RunPlace;
  readonly fields: TypedAs['fields'];
  /** Whether the reading was to be kept, so that what is missing is said. */
  readonly isAsked: boolean;
  readonly onChange: (field: 'uprightMinutes' | 'lyingMinutes', text: string) => void;
};

/** The minutes on the feet at a standing reading, or those lying before a lying one; the clocks fill them in. */
export function PostureMinutes({ round, place, fields, isAsked, onChange }: MinutesProps) {
  const { words } = useApp();
  const { upright = null, lying = null } = round.draft.pressure;
  const isNew = reopenedReading(round.draft.pressure) === null;
  const counted = words.sentence('pressure.uprightByClock');
  if (place.posture === 'stand') {
    const isWrong = isAsked && uprightOf(fields.uprightMinutes, words.say) === null;
    return (
      <div className="upright-minutes">
        <RunInput
          field="uprightMinutes"
          text={fields.uprightMinutes ?? ''}
          hint={isNew && upright !== null ? counted : undefined}
          wrong={isWrong ? words.sentence('pressure.uprightMissing') : null}
          onChange={(text) => onChange('uprightMinutes', text)}
        />
      </div>
    );
  }
  if (!isLying(place)) return null;
  const minutes = ROUND_FIGURES.longestLyingMinutes.value;
  const isWrong = isAsked && isLainWrong(place, fields.lyingMinutes, words.say);
  return (
    <div className="upright-minutes">
      <RunInput
        field="lyingMinutes"
        text={fields.lyingMinutes ?? ''}
        hint={isNew && lying !== null ? counted : words.sentence('postures.lyingHint')}
        wrong={isWrong ? words.sentence('postures.lyingWrong', { minutes }) : null}
        onChange={(text) => onChange('lyingMinutes', text)}
      />
    </div>
  );
}
