type Text = { text: string };

/** Adding a person, and the quiet places of a person's page. */
export const person = {
  addTitle: 'Add a person',
  lead: 'Two identifiers at least, so that the numbers land in the right chart: the name, and a birth date or a number.',
  numberHint: 'From a wristband, a card or your own list.',
  add: 'Add this person',
  addAllTheSame: 'Add all the same',
  sameHere: 'Somebody like this is here already. A second chart would part the numbers of one person:',
  bornLongAgo: 'That birth date is before 1900. Is the year right?',
  nameLong: 'At most 200 characters.',
  numberLong: 'At most 60 characters.',
  secondMissing: 'Give a birth date or a number as well: one identifier is not enough.',
  birthDateWrong: 'Write a date that exists, not after today.',
  measuringFirst: 'Choose who is measuring before you add a person.',
  putRight: 'Put the identity right',
  correctTitle: 'Put the identity right',
  correctLead:
    'What stands here now is replaced. That it was put right, by whom and which parts, is kept; the old name, birth date or number is not shown any more.',
  correct: 'Put it right',
  nothingChanged: 'Nothing was changed.',
  erase: 'Erase who this person is …',
  eraseTitle: 'Erase this identity',
  eraseWhat:
    'The name, the birth date and the number are removed for good. What was measured stays, without a name, and so does a record that an identity was erased, by whom and why. This cannot be undone.',
  eraseReason: 'Why is it erased?',
  eraseReasonMissing: 'Write why.',
  eraseTyped: (f: Text) => `Type the name, ${f.text}, to confirm`,
  eraseTypedWrong: 'This is not the name as it stands.',
  eraseNow: 'Erase this identity',
  erased: 'The identity of this person was erased.',
} as const;
