/** What a series is of: readings at home over days, or a recording over 24 hours. */
export const SERIES_KINDS = ['home', 'ambulatory'] as const;
export type SeriesKind = (typeof SERIES_KINDS)[number];

/** How a reading came into the record. */
export const SERIES_WAYS = ['typed', 'pasted', 'file', 'fhir'] as const;
export type SeriesWay = (typeof SERIES_WAYS)[number];

/** Most readings, and most rows that were refused, of one series. Source: decision of this project. */
export const MOST_SERIES_READINGS = 2000;

/** What a hand did about readings: took them out, put back what a rule left out, or left it to the rule again. */
export const SERIES_DECISIONS = ['out', 'in', 'by-rule'] as const;
export type SeriesDecision = (typeof SERIES_DECISIONS)[number];

/** How a local time was settled on a night on which the clock changed. */
export const SERIES_CLOCKS = ['skipped', 'twice'] as const;
