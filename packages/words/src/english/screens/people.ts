import type { Say } from '../../say.js';
import { ROUNDS } from './nouns.js';

type Text = { text: string };

/** The start page: who is here today, and who is measuring. */
export const people = {
  title: 'People',
  actNow: (f: { alerts: number }, say: Say) =>
    `Act now: ${say.counted(f.alerts, { one: 'alert', other: 'alerts' })} not closed`,
  recheckBy: (f: Text) => `Look at the pressure again by ${f.text}`,
  recheckFrom: (f: Text) => `Look at the pressure again from ${f.text} on`,
  recheckLate: (f: Text) => `Late: the pressure was to be looked at again by ${f.text}`,
  toCountersign: (f: { rounds: number }, say: Say) => `${say.counted(f.rounds, ROUNDS)} to countersign`,
  toCountersignTitle: 'To countersign',
  toCountersignNone: 'No learner’s round waits for a supervisor.',
  cannotRing: 'A page that is closed cannot ring: look here yourself.',
  add: 'Add a person',
  none: 'Nobody is here yet.',
  noneHint: 'Add the first person, and a pulse can be charted a minute later.',
  whoMeasures: 'Who is measuring?',
  measuring: 'Measuring:',
  change: 'Change who is measuring',
  choose: 'Choose a name',
  addAgent: 'Add a name',
  agentName: 'Name of whoever measures',
  agentHint: 'Kept on this device until you choose another.',
  keepName: 'Keep this name',
  born: (f: Text) => `born ${f.text}`,
  number: (f: Text) => `no. ${f.text}`,
  erased: 'Identity erased',
  meanOf: (f: { readings: number }, say: Say) => `mean of ${say.short(f.readings)}`,
  nothingYet: 'nothing charted yet',
  draft: 'round begun, not signed',
  waiting: 'signed, waiting for the server',
  contested: 'amended twice, the amendments disagree',
  byHand: 'set by hand',
  preliminary: 'preliminary, not countersigned',
  find: 'Find a person',
  noneFound: 'Nobody here matches that.',
} as const;
