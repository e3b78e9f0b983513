import type { Gauge } from '@evenfall/record';
import { gaugeStandingText, type Words } from '@evenfall/words';
import { dayText } from '../app/times.js';

/** How a gauge stands, in one line. */
export function standingText(gauge: Pick<Gauge, 'standing' | 'endedOn'>, words: Words): string {
  return gaugeStandingText(gauge, words, (day) => dayText(day, words));
}
