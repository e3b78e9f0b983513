type Text = { text: string };

/** What the bedside says of it; the rest is in `../result.ts` and comes later. */
export const result = {
  actNow: 'Act now',
  actNowSays:
    'Do not wait for this page. After signing, say in the chart whom you told and what was said back.',
  ask: 'Ask now',
  askSays: 'Does the person have any of these, new?',
  askPregnancy: 'Is the person pregnant, or has given birth in the last six weeks?',
  notPregnant: 'No',
  isPregnant: 'Yes',
  saidPregnant: 'Pregnant, or gave birth in the last six weeks: note it among the facts too.',
  noneOfThese: 'None of these',
  someOfThese: 'Keep these',
  asked: 'Asked: none of the emergency features.',
  askedSome: (f: Text) => `Asked: ${f.text}`,
  askAgain: 'Ask again',
} as const;
