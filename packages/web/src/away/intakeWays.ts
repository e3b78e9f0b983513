/** How readings come in: typed into the grid, pasted, or as a file. Apart from what reads them, which the start page does without. */
export const INTAKE_WAYS = ['typed', 'pasted', 'file'] as const;
export type IntakeWay = (typeof INTAKE_WAYS)[number];
