import type { Say } from '../../say.js';

type Text = { text: string };

/** A round from the identity check to the signature. */
export const review = {
  round: 'Round',
  identityTitle: 'Is this the right person?',
  askThem:
    'Let the person say who they are; do not read it out for a yes. Who cannot say it: read the wristband, or ask somebody who knows them.',
  doesNotMatch: 'They do not match',
  doesNotMatchSays:
    'If they do not match, this is another person’s chart: you go back to the list and nothing of this round is kept.',
  checked: 'Identity checked',
  title: 'Review',
  lead: 'A slip is put right here. After signing it can only be amended.',
  stillFetched: 'The rest of the round is still being fetched. What you took so far is kept.',
  notFetched:
    'The rest of the round could not be fetched. What you took so far is kept: load the page again where there is a network.',
  soFar: 'Taken so far',
  allOf: (f: { sign: string; values: number }, say: Say) => `${f.sign}, all ${say.short(f.values)} readings`,
  folded: 'Evidence, change',
  voidFolded: 'A count that was broken off',
  change: 'Change',
  take: 'Measure',
  takeAnother: 'Take another',
  asItWas: 'Leave it as it was',
  tapsStand: 'Each tap is a time as it was taken and is not rewritten: take another, or remove this one.',
  momentsStand:
    'The moments stay as they were marked; what was read on the gauge can be changed. To mark them again, take another.',
  notDone: 'Not done …',
  notDoneWhy: 'Why was it not done?',
  notDoneText: 'In a few words',
  notDoneKeep: 'Keep this reason',
  notDoneUndo: 'Take this back',
  notDoneIs: (f: Text) => `Not done: ${f.text}`,
  takenOrWhy: 'Take it, or say why it was not done: a blank is not charted.',
  declined: 'the person declined',
  away: 'the person was away',
  asleep: 'the person was asleep',
  'arm-barred': 'no arm may be used',
  'no-equipment': 'no equipment at hand',
  'not-possible': 'it was not possible',
  other: 'another reason',
  textMissing: 'Write the reason in a few words.',
  voidKept: 'Void, kept as such: it gives no number.',
  counts: 'What stands',
  goOnWith: (f: Text) => `Go on with ${f.text}`,
  sign: 'Sign',
  signedBy: 'Signed by',
  signsAs: 'Signing as',
  signHint: 'What is signed goes into the chart with its evidence.',
  discard: 'Discard this round …',
  discardSure: 'Discard everything taken in this round?',
  discardNow: 'Discard it',
  countAgain: 'Count again',
  cuffWrong: 'The cuff of a pressure is none of the list in force: choose the one that was used.',
  cuffUsed: 'Cuff used',
  cannotYet: 'Not ready to sign:',
  changedMeanwhile: 'Another page of this device changed this round: look again, then sign.',
  needsAgent: 'Choose who is measuring.',
  needs: (f: Text) => `${f.text}: take it or say why not.`,
  unaskedFeatures:
    'The pressure asks for the emergency features: say which there are, or that there are none.',
  unaskedPregnancy:
    'The pressure asks whether the person is pregnant or gave birth in the last six weeks: answer it.',
  signed: 'Signed.',
} as const;
