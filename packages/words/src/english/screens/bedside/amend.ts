/** What the bedside says of it; the rest is in `../amend.ts` and comes later. */
export const amend = {
  reasonMissing: 'Choose a reason.',
} as const;
