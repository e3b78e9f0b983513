import { SERIES_SCALE } from '../away/FigureShown.js';

/** The figure of a letting down: its height and how narrow it may get before it scrolls, and pixels to a unit of both. */
export const RUN_FIGURE = { height: 345, leastWidth: 540, leastScale: SERIES_SCALE } as const;
