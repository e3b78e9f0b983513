import type { RunPlace } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { GaugeFlag } from '../equipment/GaugeFlag.js';
import { useEquipment } from '../equipment/useEquipment.js';
import type { Round } from '../round/useRound.js';
import { placeText } from './placeText.js';
import { withPressureAt } from './pressureSteps.js';

type PlaceLineProps = {
  readonly round: Round;
  readonly place: RunPlace;
  /** The gauge of a reading that is in; that of the readings to come where it is not given. */
  readonly gauge?: string | null | undefined;
  /** For a reading that is put right: it was taken where it was taken. */
  readonly isFixed?: boolean;
  /** No cuff is on the arm while it is written: none is named. */
  readonly isBare?: boolean;
};

/** Where the cuff is and which gauge is read, with the way back to change it. */
export function PlaceLine({
  round,
  place,
  gauge = round.draft.pressure.gauge,
  isFixed = false,
  isBare = false,
}: PlaceLineProps) {
  const { words } = useApp();
  const { equipment } = useEquipment();
  const named = equipment?.gauges.find(({ id }) => id === gauge)?.named.name;
  return (
    <>
      <p className="place-line small">
        <span>
          {placeText(isBare ? { ...place, cuff: null } : place, words)}
          {isBare ? ` · ${words.sentence('pressure.noCuffOn')}` : null}
          {named === undefined ? null : ` · ${named}`}
        </span>
        {isFixed ? null : (
          <button
            type="button"
            className="button button-quiet"
            onClick={() => round.change((draft) => withPressureAt(draft, { at: 'place' }))}
          >
            {words.sentence('pressure.changePlace')}
          </button>
        )}
      </p>
      <GaugeFlag gauge={gauge ?? null} />
    </>
  );
}
