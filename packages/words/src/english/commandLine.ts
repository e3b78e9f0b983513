import type { Say } from '../say.js';
import { BEATS, BREATHS, ENTRIES, TAPS } from './screens/nouns.js';

const PERSONS = { one: 'person', other: 'persons' };
const VALUES = { one: 'value', other: 'values' };
const PROBLEMS = { one: 'problem', other: 'problems' };
const FINDINGS = { one: 'finding', other: 'findings' };

/** What each command is for: one line, shown by `evenfall --help`. */
export const commands = {
  count: 'Turn beats or breaths counted in a window into a rate and the range it allows',
  taps: 'Turn a file of tap times into a rate, its range and a word for the rhythm',
  run: 'Turn one inflation and deflation of the cuff into a pressure, its ranges and what to do better',
  reading: 'Read a pressure as it is written: 148/92 76, 122/P, 118/62/0, 186/94, gap 186-152',
  cuff: 'Say which cuff fits an arm, and what the one at hand would do',
  average: 'Average the readings of one arm as a guideline does, and say what it still needs',
  category: 'Say in which category of a guideline a pressure falls',
  child: 'Say where a child’s pressure stands by sex, age and height',
  score: 'Work out a score or a value made from several signs, and say what is missing',
  home: 'Say what readings taken at home come to by a guideline, what was left out and why',
  ambulatory: 'Say what a recording over 24 hours comes to, by day and by night',
  variability:
    'Say how the variation of many people’s series goes with their mean, from the JSON lines of home or ambulatory',
  usual: 'Say where the usual pressure lies, and with which chance it is at or above a threshold',
  orthostatic: 'Say whether the pressure fell from lying or sitting to standing',
  simulate: 'Visit a simulated person: what was true, every beat and sound, and what a good observer reads',
  plan: 'Say what a way of measuring gets wrong on many simulated people, and how much of a clinician’s time it takes',
  sound:
    'Write what one let-down of the cuff of a simulated person sounds like as a WAV file, with the gauge beside it',
  serve: 'Start Evenfall on this machine and print its address',
  account: 'Make, list, change and close the accounts of whoever signs in',
  backup: 'Write everything kept into one file of JSON lines, and check it',
  restore: 'Put a backup into an empty record, all or nothing',
  check: 'Recompute every value from its evidence and print what differs',
  equipment: 'List gauges with how they stand, and cuffs by room',
  export: 'Write the chart of one person as a file: a table, a FHIR bundle for another system, or plain text',
  import: 'Take in a FHIR bundle or a table that export wrote; what is refused is listed, the rest is kept',
  help: 'Show what a command is for and what it takes',
} as const;

/** What each option means: one line, shown by `--help`. */
export const options = {
  n: 'beats or breaths counted',
  window: 'length of the window, over 0 and at most 300 s',
  clock: 'whether the clock started on a beat or at any moment (any if absent)',
  first: 'what the first beat was called (1 if absent)',
  of: 'what was counted (pulse if absent)',
  actions: 'what hands do, as JSON (the textbook’s hands if absent); - for standard input',
  planProtocol: 'the way of measuring, as JSON; what it leaves out is as the textbook has it',
  planAgainst: 'another one, tried on the same people',
  people: 'how many people it is tried on (10000 if absent)',
  workers:
    'how many threads work on it (as many as the machine has processors, if absent); the answer is the same',
  fileWorkers:
    'how many threads answer many files (as many as pay, if absent); the lines are the same, in the same order',
  seed: 'the number that chance is drawn from: the same one gives the same run (1 if absent)',
  soundRate: 'how fast the cuff is let down, in mmHg a second (2.5 if absent)',
  soundOut: 'the WAV file to write; the gauge goes into a CSV file of the same name',
  listeningEnd: 'which side of the chest piece is on the skin (bell if absent)',
  withRoom: 'with the noise of the place',
  loudspeaker: 'in a voice for small speakers, higher than a stethoscope gives; headphones need none',
  rhythm: 'how the rhythm felt',
  strength: 'how strong the pulse felt',
  firstSet: 'this is the first set of observations on the person',
  ageMonths: 'age of the person in months',
  previous: 'the rate charted before',
  deviceRate: 'the rate that a device shows',
  site: 'where it was counted',
  heartRateDrug: 'a drug acting on heart rate has just been given or is due',
  systolic: 'systolic pressure in mmHg; a mean may have decimals',
  diastolic: 'diastolic pressure in mmHg; leave it out where there is none',
  guideline: 'the guideline whose categories to use',
  childGuideline: 'the guideline whose limits to use (the one there is, if absent)',
  age: 'age in completed years',
  sex: 'whose reference tables to use',
  pregnant: 'pregnant, or in the six weeks after: the limits of pregnancy are used',
  heightCm: 'standing height in cm',
  deflationPreset: 'the published rules to let down and read by',
  inflationPreset: 'the published rules to pump up by',
  runRhythm: 'how the pulse felt',
  gaugeStep: 'what the gauge is marked in (that of the rules if absent)',
  arm: 'circumference of the middle of the arm in cm',
  cuffScheme: 'whose cuffs to choose from (the rules’ own if absent)',
  atHand: 'the cuff at hand, by its id in the scheme',
  preset: 'the published or local rules to use',
  noRepair: 'leave missed and doubled taps as they are',
  lan: 'reach it from phones in the same network, by TLS; an owner’s account must be there',
  host: 'the address to listen at with --lan (all of this machine if absent)',
  certificate: 'a TLS certificate of your own (PEM, with its chain); one is made if absent',
  key: 'the key of that certificate (PEM)',
  port: 'where to listen on this machine (4780 if absent, 4781 for the demo)',
  demo: 'the invented demo clinic, in a folder of its own',
  data: 'the folder that holds the record (the usual place if absent)',
  account: 'whose record it is, where root runs this',
  accountName: 'who it is, as the charts say it',
  signIn: 'the short name to sign in with',
  role: 'what they may do: owner, clinician, supervisor, learner; several with commas',
  log: 'write a line for each request, sign-in and change of an account, without names or values',
  replace: 'replace a backup that is there already',
  person: 'the person’s id (it stands in the address of the person’s page)',
  book: 'which book (care if absent)',
  as: 'what to write',
  importPerson: 'whose chart it is for (whom the file names if absent)',
  template: 'by which template a text is made (handover if absent)',
  withIdentity: 'write who the person is too (left out if absent)',
  language: 'the language of what it says (EVENFALL_LANGUAGE, else en, if absent)',
  json: 'answer with one JSON object on one line',
  list: 'list what there is to choose from',
  help: 'show this text',
  version: 'show the version',
} as const;

/** Headings and lines of the answers a person reads in a terminal. */
export const commandLine = {
  usage: 'Usage',
  commandsHeading: 'Commands',
  optionsHeading: 'Options',
  moreHelp: 'evenfall help COMMAND shows what a command takes.',
  source: 'source',
  itemVersion: (f: { version: string }, _say: Say) => `version ${f.version}`,
  next: 'Next',
  noRate: 'no rate',
  note: 'Note',
  wrote: (f: { path: string }) => `Wrote ${f.path}`,
  rhythm: 'Rhythm',
  repaired: 'Repaired',
  fault: (f: { cause: string }, _say: Say) =>
    `Evenfall failed, and not because of what you typed: ${f.cause}`,
  expected: (f: { expected: string }, _say: Say) => `expected ${f.expected}`,
  expectedGot: (f: { expected: string; got: string | null }, _say: Say) =>
    `expected ${f.expected}, got ${f.got ?? 'nothing'}`,
  moreProblems: (f: { problems: number }, say: Say) =>
    `${say.counted(f.problems, PROBLEMS)} more of this file`,
  between: (f: { low: number; high: number }, say: Say) =>
    `between ${say.short(f.low)} and ${say.short(f.high)}`,
  fromUnder: (f: { low: number; high: number }, say: Say) =>
    `from ${say.short(f.low)} to under ${say.short(f.high)}`,
  overUpTo: (f: { low: number; high: number }, say: Say) =>
    `over ${say.short(f.low)}, up to ${say.short(f.high)}`,
  fromTo: (f: { low: number; high: number }, say: Say) => `from ${say.short(f.low)} to ${say.short(f.high)}`,
  likely: (f: { low: number; high: number }, say: Say) =>
    `likely ${say.number(f.low, 1)} to ${say.number(f.high, 1)}`,
  beatsIn: (f: { n: number; seconds: number }, say: Say) =>
    `from ${say.counted(f.n, BEATS)} in ${say.short(f.seconds)} s`,
  breathsIn: (f: { n: number; seconds: number }, say: Say) =>
    `from ${say.counted(f.n, BREATHS)} in ${say.short(f.seconds)} s`,
  fromTaps: (f: { taps: number }, say: Say) => `from ${say.counted(f.taps, TAPS)}`,
  step: (f: { perMinute: number }, say: Say) =>
    `one more or less would change it by ${say.short(f.perMinute)}`,
  countFor: (f: { seconds: number }, say: Say) => `count ${say.short(f.seconds)} s`,
  missedAfter: (f: { index: number; added: number }, say: Say) =>
    `after tap ${say.number(f.index)}: ${say.counted(f.added, TAPS)} missed, put back`,
  doubledAt: (f: { index: number }, say: Say) => `tap ${say.number(f.index)}: doubled, taken out`,
  simulated: 'SIMULATED',
  letDownHeard: (f: { seconds: number; peakMmHg: number; mmHgPerSecond: number }, say: Say) =>
    `${say.number(f.seconds)} s: pumped up to ${say.number(f.peakMmHg)} mmHg, let down at ${say.short(f.mmHgPerSecond)} mmHg a second`,
  soundFile: 'Sound',
  gaugeFile: 'Gauge',
  truth: 'Truth',
  truthAtRest: (
    f: { systolic: number; diastolic: number; duringSystolic: number; duringDiastolic: number },
    say: Say,
  ) =>
    `${say.number(f.systolic)}/${say.number(f.diastolic)} at rest, ${say.number(f.duringSystolic)}/${say.number(f.duringDiastolic)} in the minute about this run, as a perfect listener would hear it`,
  gap: 'Silent gap',
  gapNone: 'none: the sounds go on from the first to the last',
  gapFrom: (f: { topMmHg: number; bottomMmHg: number }, say: Say) =>
    `from ${say.number(f.topMmHg)} down to ${say.number(f.bottomMmHg)} mmHg`,
  phases: 'Phases',
  phasesNone: 'nothing was there to be heard',
  phaseFrom: (f: { phase: string; fromMmHg: number; toMmHg: number }, say: Say) =>
    `${f.phase} ${say.number(f.fromMmHg)} to ${say.number(f.toMmHg)}`,
  loudspeakerVoice:
    'This is the voice for small speakers: a reading taken from it is no proof of what is heard through a stethoscope.',
  visitOf: (f: { seconds: number; peakMmHg: number }, say: Say) =>
    `${say.number(f.seconds)} s, pumped up to ${say.number(f.peakMmHg)} mmHg`,
  read: 'Read',
  readingOf: (f: { systolic: number; diastolic: number }, say: Say) =>
    `${say.number(f.systolic)}/${say.number(f.diastolic)} by a good observer`,
  offBy: (f: { part: string; mmHg: number; why: string }, say: Say) =>
    `${f.part} ${f.mmHg < 0 ? '−' : '+'}${say.number(Math.abs(f.mmHg), 1)} beside that minute: ${f.why}`,
  offPart: (f: { part: string; mmHg: number }, say: Say) =>
    `${f.part} ${f.mmHg < 0 ? '−' : '+'}${say.number(Math.abs(f.mmHg), 1)}`,
  off: 'Off',
  nothingRead: 'no pressure: nothing was heard',
  scenarioItem: (f: { title: string; ageYears: number; isWoman: boolean; lesson: string }, say: Say) =>
    `${f.title} (${f.isWoman ? 'f' : 'm'}, ${say.number(f.ageYears)} y). ${f.lesson}`,
  planned: (f: { percent: number }, say: Say) => `${say.number(f.percent)} %`,
  planPeople: (f: { people: number }, say: Say) =>
    `${say.counted(f.people, PERSONS)}, their usual pressure known; an error is what was measured minus that`,
  planFirst: 'This protocol',
  planSecond: 'The other one',
  planApart: 'Apart',
  planSide: (f: { bias: number; error: number; sd: number }, say: Say) =>
    `too ${f.bias < 0 ? 'low' : 'high'} by ${say.number(Math.abs(f.bias), 1)} mmHg on average (the study’s own error ${say.number(f.error, 2)}), SD of a person’s error ${say.number(f.sd, 1)}`,
  planWithin: (f: { within5: number; within10: number; within15: number }, say: Say) =>
    `within 5 mmHg ${say.percent(f.within5)}, within 10 ${say.percent(f.within10)}, within 15 ${say.percent(f.within15)}`,
  planWrong: (f: { up: number; down: number }, say: Say) =>
    `in too high a category ${say.percent(f.up)}, in too low a one ${say.percent(f.down)}; much of it is the people’s own, who vary from visit to visit`,
  planWithout: (f: { without: number }, say: Say) =>
    `without any number ${say.percent(f.without)}; what stands above is of the others`,
  planCount: (f: { pulse: boolean; bias: number; error: number; sd: number; within4: number }, say: Say) =>
    `${f.pulse ? 'pulse' : 'breaths'} as counted: ${f.bias < 0 ? '−' : '+'}${say.number(Math.abs(f.bias), 1)} a minute on average (own error ${say.number(f.error, 2)}), SD ${say.number(f.sd, 1)}, within 4 a minute ${say.percent(f.within4)}`,
  planMinutes: (f: { minutes: number; readings: number }, say: Say) =>
    `${say.number(f.minutes, 1)} min of a clinician a person, ${say.number(f.readings, 1)} readings`,
  planApartSystolic: (f: { mean: number; standardError: number }, say: Say) =>
    `systolic ${say.number(f.mean, 2)} mmHg, this minus the other (own error ${say.number(f.standardError, 2)})`,
  planApartDiastolic: (f: { mean: number; standardError: number }, say: Say) =>
    `diastolic ${say.number(f.mean, 2)} mmHg (own error ${say.number(f.standardError, 2)})`,
  planApartMinutes: (f: { mean: number; standardError: number }, say: Say) =>
    `${say.number(f.mean, 1)} min (own error ${say.number(f.standardError, 2)})`,
  planApartWrong: (f: { onlyFirst: number; onlySecond: number }, say: Say) =>
    `in a wrong category by this one alone ${say.percent(f.onlyFirst)}, by the other alone ${say.percent(f.onlySecond)}`,
  servedAt: 'Evenfall is at',
  inventedClinic: 'Everybody in this clinic is invented.',
  record: 'record',
  sharedRecord: 'the PostgreSQL of DATABASE_URL',
  howToStop: 'Ctrl-C stops it.',
  noAccounts: 'Nobody signs in here: whoever sits at this machine may act.',
  firstOwner:
    'Nobody signs in to this record yet, and beyond this machine it opens to nobody before somebody does. Its owner’s account is made here, now (owner, clinician and supervisor; an empty line leaves it).',
  firstOwnerName: 'Name, as the charts are to say it:',
  firstOwnerSignIn: 'Name to sign in with:',
  firstOwnerMade: 'The account is being made; wait a moment.',
  newPassPhrase: (f: { phraseAtLeast: number }, say: Say) =>
    `A first pass phrase of ${say.short(f.phraseAtLeast)} characters or more, which its user changes at the first sign-in:`,
  passPhraseAgain: 'The same again:',
  closed: 'closed',
  accountAdd: (f: { signIn: string; name: string }) => `${f.name} can sign in as ${f.signIn}.`,
  accountRoles: (f: { signIn: string; name: string }) => `What ${f.name} (${f.signIn}) may do was changed.`,
  accountPassPhrase: (f: { signIn: string; name: string }) =>
    `${f.name} (${f.signIn}) signs in with the new pass phrase and then chooses another; every device was signed out.`,
  accountClose: (f: { signIn: string; name: string }) =>
    `${f.name} (${f.signIn}) cannot sign in any more and was signed out; what they charted stays.`,
  accountReopen: (f: { signIn: string; name: string }) => `${f.name} can sign in as ${f.signIn} again.`,
  backedUp: (f: { entries: number; persons: number }, say: Say) =>
    `${say.counted(f.entries, ENTRIES)} of ${say.counted(f.persons, PERSONS)} written and checked`,
  unvouched: (f: { entries: number; file: string }, say: Say) =>
    `${f.file}: written, and ${say.counted(f.entries, ENTRIES)} in it cannot be read by this program, so a restore would refuse it. Keep the record itself; the program that wrote them may read them.`,
  unreadableEntry: (f: { id: string; kind: string; place: string }, _say: Say) =>
    `entry ${f.id} (${f.kind}) cannot be read: ${f.place}`,
  leftOut: (f: { entries: number }, say: Say) =>
    `${say.counted(f.entries, ENTRIES)} of this person cannot be read by this program and are left out of the table; evenfall check lists them.`,
  nothingWritten:
    'Nothing was written: a table needs a value or a reading of a series, a text a signed round or a series, and this person has none.',
  restored: (f: { entries: number; persons: number }, say: Say) =>
    `${say.counted(f.entries, ENTRIES)} of ${say.counted(f.persons, PERSONS)} put back`,
  brought: (f: { added: number; already: number }, say: Say) =>
    `${say.counted(f.added, ENTRIES)} added, ${say.short(f.already)} there already`,
  olderValues: (f: { values: number }, say: Say) =>
    `Left as they are: ${say.counted(f.values, VALUES)} of which the record has a later saying of the same source`,
  unclearValues: (f: { values: number }, say: Say) =>
    `Kept beside others under one name of their source, since nobody can tell whether one corrects another, ${say.counted(f.values, VALUES)}:`,
  passedOver: (f: { resources: string }) => `Passed over, since they hold no value: ${f.resources}`,
  refusedOf: (f: { problems: number }, say: Say) =>
    `${say.counted(f.problems, PROBLEMS)}, and the rest is kept:`,
  checked: (f: { values: number; entries: number }, say: Say) =>
    `${say.counted(f.values, VALUES)} in ${say.counted(f.entries, ENTRIES)} computed again`,
  nothingDiffers: 'Nothing differs.',
  differs: (f: { findings: number }, say: Say) => `${say.counted(f.findings, FINDINGS)}:`,
  changed: 'changed since it was kept',
  unreadable: 'cannot be read',
  'rests-on-unreadable': 'rests on an entry of its round that cannot be read',
  'names-another': 'names an entry that is not of its person, round and sign',
  'unknown-rule': 'made by a rule this program does not know',
  'unknown-protocol': 'made under a protocol that is not kept here',
  'impossible-evidence': 'its evidence cannot be',
  differing: 'its evidence gives another value',
  milliseconds: (f: { ms: number }, say: Say) => `${say.number(f.ms)} ms`,
} as const;
