/** What the bedside says of it; the rest is in `../diary.ts` and comes later. */
export const diary = {
  dueTitle: 'Diaries due back',
  /** No day is today; the day from which it was kept stands where there are several. */
  dueLine: (f: { name: string; day: string; from: string }) =>
    `${f.name}: ${f.day === '' ? 'due today' : `since ${f.day}`}${f.from === '' ? '' : `, kept from ${f.from} on`}`,
} as const;
