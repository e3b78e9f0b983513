import type { Gauge } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { useApp, useKept } from '../app/context.js';
import { Choices } from '../parts/Choices.js';
import { standingText } from './standingText.js';
import { useEquipment } from './useEquipment.js';

const NOT_SAID = '';

/** The gauges that are here, and the one that this device was last read from, if it still is. */
export function useGaugeAtHand(): { readonly gauges: readonly Gauge[]; readonly gauge: Gauge | null } {
  const { equipment } = useEquipment();
  const last = useKept(({ kept }) => kept.gauge ?? null);
  const gauges = (equipment?.gauges ?? []).filter(({ endedOn }) => endedOn === null);
  return { gauges, gauge: gauges.find(({ id }) => id === last) ?? null };
}

/** Remembers on this device which gauge is read. */
export function useRememberGauge(): (gauge: string | null) => void {
  const { store } = useApp();
  return (gauge) => store.change((state) => ({ ...state, kept: { ...state.kept, gauge } }));
}

/** A gauge among others: one that failed, or that a check of it is due, says so before it is chosen. */
export function gaugeChoiceText(
  { named, standing }: Pick<Gauge, 'named' | 'standing'>,
  words: Words,
): string {
  if (standing.state === 'good') return named.name;
  return words.sentence(standing.state === 'failed' ? 'equipment.choiceFailed' : 'equipment.choiceDue', {
    name: named.name,
  });
}

type ChoiceProps = {
  readonly gauges: readonly Gauge[];
  readonly chosen: Gauge | null;
  readonly onChoose: (gauge: string | null) => void;
};

/** Which gauge is read: one touch, and none where the place has named none. What is wrong with it is said at once. */
export function GaugeChoice({ gauges, chosen, onChoose }: ChoiceProps) {
  const { words } = useApp();
  if (gauges.length === 0) return null;
  return (
    <>
      <Choices
        legend={words.sentence('equipment.which')}
        choices={[
          ...gauges.map((gauge) => ({ id: gauge.id, text: gaugeChoiceText(gauge, words) })),
          { id: NOT_SAID, text: words.sentence('equipment.notSaid') },
        ]}
        chosen={chosen?.id ?? NOT_SAID}
        onChoose={(id) => onChoose(id === NOT_SAID ? null : id)}
      />
      <GaugeWarning gauge={chosen} />
    </>
  );
}

/** That a gauge failed or that a check of it is due: said before a reading, never after it. */
export function GaugeWarning({ gauge }: { readonly gauge: Gauge | null }) {
  const { words } = useApp();
  if (gauge === null || gauge.standing.state === 'good') return null;
  const isFailed = gauge.standing.state === 'failed';
  return (
    <div className={isFailed ? 'notice notice-stop' : 'notice'} role={isFailed ? 'alert' : 'status'}>
      <p>
        <strong>
          {words.sentence('equipment.beware', {
            name: gauge.named.name,
            text: standingText(gauge, words),
          })}
        </strong>
      </p>
      <p>{words.sentence(isFailed ? 'equipment.bewareFailed' : 'equipment.bewareDue')}</p>
    </div>
  );
}
