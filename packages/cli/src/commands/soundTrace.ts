import { roundTo } from '@evenfall/clinical';
import { csv, noticesOf } from '@evenfall/exchange';
import type { HeardLetDown } from '@evenfall/physiology/audio';

const SCHEMA = 1;
const HEADINGS = ['schema', 'notice', 'atSeconds', 'gaugeMmHg', 'cuffMmHg', 'phase', 'loudnessDb'];
/** Decimals of a pressure and of a loudness. */
const DECIMALS = 2;

/**
 * What the gauge showed and what was in the cuff, 50 lines a second, as CSV; a line has the phase and the loudness (dB over
 * a normal listener's threshold) of the sound that came since the line before.
 */
export function soundTrace({ simulation }: HeardLetDown): string {
  const { needle, cuff, tracePerSecond, sounds } = simulation;
  const notice = noticesOf({ book: 'simulated', invented: false }).join(' ');
  let next = 0;
  const rows = Array.from(needle, (mmHg, point) => {
    const atSeconds = point / tracePerSecond;
    let sound: (typeof sounds)[number] | null = null;
    for (; next < sounds.length && (sounds[next]?.atSeconds ?? 0) <= atSeconds; next++)
      sound = sounds[next] ?? null;
    return [
      SCHEMA,
      notice,
      atSeconds,
      roundTo(mmHg, DECIMALS),
      roundTo(cuff[point] ?? 0, DECIMALS),
      sound?.phase ?? null,
      sound === null ? null : roundTo(sound.levelDb, DECIMALS),
    ];
  });
  return csv(HEADINGS, rows);
}
