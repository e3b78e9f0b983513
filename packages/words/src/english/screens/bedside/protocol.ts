/** What the bedside says of it; the rest is in `../protocol.ts` and comes later. */
export const protocol = {
  link: 'Local protocol',
} as const;
