import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { standingText } from './standingText.js';
import { useEquipment } from './useEquipment.js';

/** The gauge that a reading names, and how it stands now, with the way to its log. */
export function GaugeNamed({ gauge }: { readonly gauge: string }) {
  const { words } = useApp();
  const { equipment } = useEquipment();
  const found = equipment?.gauges.find(({ id }) => id === gauge);
  if (found === undefined) return <>{words.sentence('equipment.unknown')}</>;
  return (
    <Link href={`/equipment/gauges/${gauge}`}>
      {words.sentence('equipment.atRound', {
        name: found.named.name,
        text: words.sentence('equipment.standsNow', { text: standingText(found, words) }),
      })}
    </Link>
  );
}
