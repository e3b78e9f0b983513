import type { Say } from '../../say.js';
import { ROUNDS } from './nouns.js';

type Text = { text: string };

/** So many minutes, in hours and days where they are many: a countdown is read at a glance. */
export function span(minutes: number, say: Say): string {
  if (minutes < HOUR) return say.counted(minutes, { one: 'minute', other: 'minutes' });
  if (minutes < DAY) return say.counted(Math.floor(minutes / HOUR), { one: 'hour', other: 'hours' });
  return say.counted(Math.floor(minutes / DAY), { one: 'day', other: 'days' });
}
const HOUR = 60;
const DAY = 1440;

/** The start page: who is here today, and who is measuring. */
export const people = {
  title: 'People',
  actNow: (f: { alerts: number }, say: Say) =>
    `Act now: ${say.counted(f.alerts, { one: 'alert', other: 'alerts' })} not closed`,
  actNowOf: (f: Text & { others: number }, say: Say) =>
    f.others === 0
      ? `Act now: ${f.text}, not closed`
      : `Act now: ${f.text} and ${say.counted(f.others, { one: 'more alert', other: 'more alerts' })}, not closed`,
  begunAlarm: (f: Text & { others: number; numbers: string }, say: Say) =>
    `Act now: ${f.numbers === '' ? '' : `${f.numbers}, `}${f.text}${f.others === 0 ? '' : ` and ${say.counted(f.others, { one: 'more alert', other: 'more alerts' })}`}; taken, not signed`,
  begunSevere: (f: Text & { numbers: string }) => `${f.numbers}, ${f.text}; taken, not signed`,
  begunUnasked: 'what it asks is not answered',
  recheckBy: (f: Text) => `Look at the pressure again by ${f.text}`,
  recheckFrom: (f: Text) => `Look at the pressure again from ${f.text} on`,
  recheckLate: (f: Text) => `Late: the pressure was to be looked at again by ${f.text}`,
  toCountersign: (f: { rounds: number }, say: Say) => `${say.counted(f.rounds, ROUNDS)} to countersign`,
  toCountersignTitle: 'To countersign',
  toCountersignLead: 'Open a round to see how it was taken, and to countersign it or not.',
  toCountersignNone: 'No learner’s round waits for a supervisor.',
  dueTitle: 'To act on, to look at again',
  dueAhead: (f: { minutes: number } & Text, say: Say) => `in ${span(f.minutes, say)}, from ${f.text} on`,
  dueNow: (f: { minutes: number } & Text, say: Say) => `now: ${span(f.minutes, say)} left, until ${f.text}`,
  dueSince: (f: { minutes: number } & Text, say: Say) =>
    f.minutes === 0 ? `due since ${f.text}` : `due since ${f.text} (${span(f.minutes, say)})`,
  dueLate: (f: { minutes: number } & Text, say: Say) =>
    f.minutes === 0 ? `late since ${f.text}` : `late since ${f.text} (${span(f.minutes, say)})`,
  dueTake: 'Take it now',
  dueGoOn: 'Go on with it',
  dueSaid: (f: { names: string }) => `To look at again now: ${f.names}`,
  cannotRing: 'A page that is closed cannot ring: look here yourself.',
  add: 'Add a person',
  none: 'Nobody is here yet.',
  noneHint: 'Add the first person, and a pulse can be charted a minute later.',
  whoMeasures: 'Who is measuring?',
  measuring: 'Measuring:',
  change: 'Change who is measuring',
  choose: 'Choose a name',
  setsLost: (f: Text) =>
    `Typed and not signed: ${f.text}. Whoever measures next starts on a blank keypad: sign it first, or it is gone.`,
  setsWait: (f: Text) =>
    `Typed and not signed: ${f.text}. It waits here for you alone, and nobody else sees it: sign it first, or come back to it.`,
  letWait: 'Leave it waiting',
  loseSets: 'Change, and let it go',
  roundsStay: (f: { rounds: number; names: string; text: string }, say: Say) =>
    `Not signed: ${say.counted(f.rounds, { one: 'round begun', other: 'rounds begun' })}${f.names === '' ? '' : ` (${f.names})`}. What was measured in ${f.rounds === 1 ? 'it stays with' : 'them stays with'} ${f.text}: nobody else goes on with it or signs it.`,
  somebodyElse: 'somebody else',
  othersRound: (f: { name: string; text: string }) =>
    `Begun by ${f.name}, ${f.text}, and not signed. What one person measured, another neither goes on with nor signs.`,
  othersRoundWays: (f: Text) =>
    `To go on with it or sign it, ${f.text} is chosen below. To measure anew under another name, it is signed or given up first.`,
  claim: (f: Text) => `It was all measured by ${f.text} …`,
  claimSure: (f: { name: string; text: string }) =>
    `Was everything in this round measured by ${f.name}, and the name ${f.text} on the device wrong? What another measured is not signed as one’s own; a learner’s stays preliminary.`,
  claimNow: 'Yes, the name was wrong',
  giveUpRound: 'Give this round up …',
  giveUpRoundSure: (f: Text) => `Everything that ${f.text} took in this round is gone then.`,
  giveUpRoundNow: 'Give it up',
  addAgent: 'Add a name',
  agentName: 'Name of whoever measures',
  agentHint: 'Kept on this device until you choose another.',
  keepName: 'Keep this name',
  born: (f: Text) => `born ${f.text}`,
  number: (f: Text) => `no. ${f.text}`,
  erased: 'Identity erased',
  meanOf: (f: { readings: number }, say: Say) => `mean of ${say.short(f.readings)}`,
  nothingYet: 'no round in the chart yet',
  onlyAway: (f: Text) => `readings from away until ${f.text}; no round yet`,
  diaryBegun: 'diary begun, not signed',
  mayBeOld: 'This list may be old: it stands as it was last fetched.',
  keptOnly:
    'Only those are listed of whom a round or readings are under way or wait on this device. What is shown of them may be old.',
  noneKept:
    'No list of people is kept on this device. Whoever was begun before, with a round or readings, can be gone on with without the server.',
  draft: 'round begun, not signed',
  waiting: 'signed, waiting for the server',
  contested: 'amended twice, the amendments disagree',
  byHand: 'set by hand',
  preliminary: 'preliminary, not countersigned',
  find: 'Find a person',
  noneFound: 'Nobody here matches that.',
} as const;
