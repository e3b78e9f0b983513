/** What the bedside says of it; the rest is in `../person.ts` and comes later. */
export const person = {
  name: 'Name',
  birthDate: 'Birth date',
  number: 'Number',
  nameMissing: 'Write the name.',
  erasedNoRound: 'Without an identity no new round can be taken.',
} as const;
