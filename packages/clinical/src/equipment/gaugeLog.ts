/** What kinds of gauge there are: read by needle, by column, by digits while one listens; or a device that measures by itself. */
export const GAUGE_TYPES = ['aneroid', 'mercury', 'electronic', 'automatic'] as const;
export type GaugeType = (typeof GAUGE_TYPES)[number];

/** The checks that a gauge passes or fails. */
export const GAUGE_CHECKS = ['zero', 'comparison', 'leak'] as const;
export type GaugeCheckOf = (typeof GAUGE_CHECKS)[number];

/** What happens to a gauge and takes away what was checked before. */
export const GAUGE_EVENTS = ['dropped', 'repaired'] as const;
export type GaugeEvent = (typeof GAUGE_EVENTS)[number];

/** One pressure of a comparison: what the reference showed and what the gauge showed, both in mmHg, read together. */
export type ComparisonPoint = { readonly referenceMmHg: number; readonly gaugeMmHg: number };

/** What was done with a gauge and what was read. */
export type GaugeLog =
  | { readonly of: 'zero'; readonly restMmHg: number }
  | { readonly of: 'comparison'; readonly reference: string; readonly points: readonly ComparisonPoint[] }
  | {
      readonly of: 'leak';
      readonly fromMmHg: number;
      readonly toMmHg: number;
      readonly seconds: number;
    }
  | { readonly of: GaugeEvent };
