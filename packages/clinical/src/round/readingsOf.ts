import type { RoundReading } from './roundReading.js';
import type { RoundState } from './roundState.js';

/** The readings of the pressure that stand, in the order in which they came. */
export function readingsOf({ values }: RoundState): readonly RoundReading[] {
  return values.filter(
    (value): value is RoundReading & { readonly of: 'pressure' } => value.of === 'pressure',
  );
}

type Place = Pick<RoundReading, 'side' | 'site' | 'posture'>;

/** The readings of one place: one arm, one site, one posture. Only these are averaged with each other. */
export function seriesOf(readings: readonly RoundReading[], place: Place): readonly RoundReading[] {
  return readings.filter((one) => isOnePlace(one, place));
}

/** One arm, one site, one posture. */
export function isOnePlace(one: Place, other: Place): boolean {
  return one.side === other.side && one.site === other.site && one.posture === other.posture;
}

export function isUpright({ posture }: RoundReading): boolean {
  return posture === 'stand';
}
