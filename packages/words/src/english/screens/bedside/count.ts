/** What the bedside says of it; the rest is in `../count.ts` and comes later. */
export const count = {
  rubOut: 'Rub out',
} as const;
