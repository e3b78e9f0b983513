/** On which side of a limit something applies; every limit says so in data, beside its number. */
export type Comparison = '<' | '<=' | '>' | '>=';

/** Whether a value lies on the side of a limit that counts. Both in one unit; the value is not rounded first. */
export function passes(value: number, comparison: Comparison, limit: number): boolean {
  switch (comparison) {
    case '<':
      return value < limit;
    case '<=':
      return value <= limit;
    case '>':
      return value > limit;
    case '>=':
      return value >= limit;
  }
}

/** A ratio is settled to 1e-9 before it meets a limit. Source: docs/conventions.md section 4. */
const SETTLED_PARTS = 1e9;

/** A ratio (under a million) as it is compared with a limit: the last digits of a division decide nothing. */
export function settled(ratio: number): number {
  return Math.round(ratio * SETTLED_PARTS) / SETTLED_PARTS;
}
