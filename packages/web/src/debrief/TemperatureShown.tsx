import { type Exercise, temperatureRow } from '@evenfall/practice';
import { useApp } from '../app/context.js';

/** A temperature that was written, beside what the thermometer showed. */
export function TemperatureShown({ exercise }: { readonly exercise: Exercise }) {
  const { words } = useApp();
  const row = temperatureRow(exercise);
  if (row === null) return null;
  const { written, shown } = row;
  return (
    <section aria-labelledby="debrief-temperature">
      <h2 id="debrief-temperature">{words.sentence('counts.title-temperature')}</h2>
      <p className="debrief-verdict">
        {words.sentence(row.isAccepted ? 'counts.temperatureYes' : 'counts.temperatureNot', {
          written,
          shown,
        })}
      </p>
    </section>
  );
}
