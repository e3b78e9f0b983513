import { generator } from '../../packages/clinical/fixtures/people.mjs';

export const HEADING = 'time,systolic,diastolic,pulse';

/** Recordings of invented people, each as rows of CSV: a reading every 20 minutes from 09:00 on, in UTC. */
export function inventedRecordings(count, readings, seed) {
  const chance = generator(seed);
  return Array.from({ length: count }, () => recording(chance, readings));
}

function recording(chance, readings) {
  const [level, fall] = [chance.uniform(110, 165), chance.uniform(0, 25)];
  return Array.from({ length: readings }, (_, k) => {
    const minutes = 540 + 20 * k;
    const [day, hour, minute] = [4 + Math.floor(minutes / 1440), Math.floor(minutes / 60) % 24, minutes % 60];
    const wave = (fall / 2) * Math.cos((2 * Math.PI * (hour - 15)) / 24);
    const systolic = Math.round(level + wave + chance.uniform(-9, 9));
    const two = (n) => String(n).padStart(2, '0');
    const diastolic = Math.round(systolic * 0.6 + chance.uniform(-5, 5));
    return `2025-03-${two(day)}T${two(hour)}:${two(minute)}:00+00:00,${systolic},${diastolic},${Math.round(chance.uniform(52, 92))}`;
  });
}
