/**
 * What a figure is drawn with. On paper fixed greys, readable without colour; on a screen whatever the page uses (a custom property of
 * its style sheet), in which case every element also has a class to be styled by.
 */
export type Paint = {
  readonly ink: string;
  readonly muted: string;
  readonly grid: string;
  readonly shade: string;
  readonly ground: string;
  readonly font: string;
};

/** Ink on white paper. `muted` has a contrast of 4.5 to 1 or more on white and on the shade. */
export const PAPER: Paint = {
  ink: '#1a1a1a',
  muted: '#666666',
  grid: '#d4d4d4',
  shade: '#ececec',
  ground: '#ffffff',
  font: 'DejaVu Sans, sans-serif',
};
