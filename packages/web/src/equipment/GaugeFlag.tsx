import { useApp } from '../app/context.js';
import { failedGauge } from './failedGauge.js';
import { useEquipment } from './useEquipment.js';

/** A flag beside a reading under way, where the gauge that it is taken with is out of use. */
export function GaugeFlag({ gauge }: { readonly gauge: string | null }) {
  const { words } = useApp();
  const { equipment } = useEquipment();
  const text = failedGauge(equipment?.gauges ?? [], gauge, words);
  if (text === null) return null;
  return (
    <ul className="flags">
      <li>{text}</li>
    </ul>
  );
}
