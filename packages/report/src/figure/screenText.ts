/** Sizes of text in a figure that stands on a page alone, in pixels of the narrowest screen: what explains it stands beside it. */
export const SCREEN_TEXT = { usual: 12, small: 11 } as const;

/** From the middle of a line of such text down to where it is written. */
export const SCREEN_DROP = 4;
