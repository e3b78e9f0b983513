/** What the bedside says of it; the rest is in `../diary.ts` and comes later. */
export const diary = {
  dueTitle: 'Diaries due back',
  dueLine: (f: { name: string; day: string }) => `${f.name}: since ${f.day}`,
} as const;
