import type { RoundReading } from './roundReading.js';
import type { RoundState } from './roundState.js';

/** The readings of the pressure that stand, in the order in which they came. */
export function readingsOf({ values }: RoundState): readonly RoundReading[] {
  return values.filter(
    (value): value is RoundReading & { readonly of: 'pressure' } => value.of === 'pressure',
  );
}

/** The readings of one place: one arm, one site, one posture. Only these are averaged with each other. */
export function seriesOf(
  readings: readonly RoundReading[],
  { side, site, posture }: Pick<RoundReading, 'side' | 'site' | 'posture'>,
): readonly RoundReading[] {
  return readings.filter((one) => one.side === side && one.site === site && one.posture === posture);
}

export function isUpright({ posture }: RoundReading): boolean {
  return posture === 'stand';
}
