/** What the start page says of it; the rest is in `../practice.ts` and comes later. */
export const practice = { link: 'Practice room: simulated people' } as const;
