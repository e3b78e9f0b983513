import type { Say } from './say.js';

/** Minutes and seconds as a stopwatch shows them. */
export function stopwatch(seconds: number, say: Say): string {
  const rest = seconds % 60;
  return `${say.short((seconds - rest) / 60)}:${rest < 10 ? '0' : ''}${say.short(rest)}`;
}
