/** Height of the figure of a letting down, and how narrow it may get before it scrolls, in pixels. */
export const RUN_FIGURE = { height: 420, leastWidth: 540 } as const;
