/** The sex whose reference tables are used. Source: docs/conventions.md section 1. */
export const SEXES = ['f', 'm'] as const;
export type Sex = (typeof SEXES)[number];
