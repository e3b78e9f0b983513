/** What the bedside says of it; the rest is in `../second.ts` and comes later. */
export const second = {
  link: 'Mark for somebody else',
} as const;
