import type { Say } from '../../say.js';

const VALUES = { one: 'value', other: 'values' };

type Text = { text: string };

type Counted = { count: number };

type Version = { number: number; day: string; who: string; hash: string };

/** The place's own rules: chosen from published ones, changed field by field, kept under a version for ever. */
export const protocol = {
  title: 'Local protocol',
  none: 'No protocol is in force here: values are charted by the general rules, and no category and no score is shown.',
  noneStart: (f: Text) => `Below stands what was in force last, to start from: ${f.text}.`,
  inForce: (f: Text) => `In force: ${f.text}.`,
  version: (f: Version, say: Say) => `version ${say.number(f.number)}, of ${f.day}, by ${f.who} (${f.hash})`,
  versionNotUsed: (f: { hash: string }) => `version ${f.hash}, kept and never in force`,
  versionTitle: (f: { number: number }, say: Say) => `Protocol version ${say.number(f.number)}`,
  versionShort: (f: { number: number }, say: Say) => `Version ${say.number(f.number)}`,
  versionUnnumbered: (f: { hash: string }) => `Protocol version ${f.hash}`,
  lead: 'Choose what your place goes by. Every rule shows its source and how sure it is; your own value wins. Rounds that are signed keep the version of their day.',
  guideline: 'Start from one guideline',
  guidelineNone: 'none: section by section',
  guidelineSets: (f: Text) => `${f.text} is set in these sections:`,
  guidelineLacks: (f: Text) => `There is no set of rules of ${f.text} for these; they stay what they were:`,
  preset: 'Set of rules',
  presetChanged: (f: Text & Counted, say: Say) =>
    `${say.counted(f.count, VALUES)} of your own; else: ${f.text}`,
  presetChanges: (f: Counted, say: Say) =>
    f.count === 0
      ? 'the values that are in force now'
      : `${say.counted(f.count, VALUES)} other than in force now`,
  fields: 'All rules of this section',
  source: (f: { named: string | null; sure: string }) =>
    f.named === null ? f.sure : `${f.named} (${f.sure})`,
  local: (f: Text) => `your own value; published: ${f.text}`,
  blank: (f: Text) => `blank: the published value counts, ${f.text}`,
  now: (f: Text) => `in force now: ${f.text}`,
  yes: 'yes',
  no: 'no',
  noneHere: 'none',
  withUnit: (f: Text & { unit: string }) => `${f.text} ${f.unit}`,
  ownIs: (f: { name: string; own: string; published: string }) =>
    `${f.name}: ${f.own}, in place of ${f.published}`,
  differs: 'What differs from the published rules',
  differsNothing: 'Nothing: every rule is as published.',
  differsCount: (f: Counted, say: Say) =>
    f.count === 0
      ? 'every rule as published'
      : `${say.counted(f.count, VALUES)} of its own, other than published`,
  publishedValue: 'Published',
  ownValue: 'Here',
  systolic: 'systolic',
  diastolic: 'diastolic',
  publishedSource: 'Source of the published value',
  changes: 'What you are about to change',
  changesNothing: 'Nothing: this is what is in force.',
  changesFromNone: 'Nothing is in force now, so all of this counts from then on.',
  against: 'What differs from what is in force now',
  againstSame: 'Nothing: every rule is the same.',
  setOfRules: 'Set of rules',
  inForceValue: 'In force now',
  newValue: 'From then on',
  versionValue: 'In this version',
  choose: 'Put this protocol in force',
  chooseNone: 'Go without a protocol',
  chooseNoneTitle: 'Go without a protocol?',
  chooseNoneWhat:
    'From then on, for everybody who works here: no category and no score is shown, and readings are averaged and repeated by the general rules.',
  chooseNoneAlarms:
    'Alarms stay: whoever must act at once is still told, by the published limits. Limits that your place set itself, and alarms that it switched off, do not count then.',
  chooseNoneKept:
    'What is in force now is kept among the versions below and can be put in force again. Rounds that are signed keep the version of their day.',
  chooseNoneNow: 'Yes, go without a protocol',
  keepIt: 'Keep the protocol',
  chosen: 'It is in force from now on.',
  chosenNone: 'No protocol is in force from now on.',
  wrong: 'Put these right first:',
  wrongAt: (f: { section: string; text: string }) => `${f.section}: ${f.text}`,
  versions: 'Versions of this place',
  versionsLead:
    'Every protocol that was ever in force here stays as it was. Open one to read it or to put it in force again.',
  versionsNone: 'No protocol was ever in force here.',
  versionNow: 'in force now',
  thisIs: (f: Text) => `This is ${f.text}.`,
  takenUnder: 'Taken under protocol',
  versionFrom: (f: { at: string; who: string }) => `In force from ${f.at}, put so by ${f.who}`,
  versionHash: (f: { hash: string }) => `Hash ${f.hash}`,
  presetIs: (f: { section: string; text: string }) => `${f.section}: ${f.text}`,
  history: 'Who chose what, newest first',
  historyVersion: (f: { at: string; who: string; number: number }, say: Say) =>
    `${f.at}: version ${say.number(f.number)}, by ${f.who}`,
  historyNone: (f: { at: string; who: string }) => `${f.at}: no protocol, by ${f.who}`,
  presets: 'Sets of rules it started from',
  rules: 'All its rules',
  notInForce: 'This version is not in force now.',
  isInForce: 'This version is in force now.',
  again: 'Put this version in force again',
  againFirst: 'Put this version in force',
  againTitle: 'Put this version in force?',
  againWhat:
    'It counts from then on for everybody who works here. What is in force now is kept among the versions.',
  againNow: 'Yes, put it in force',
  noSuchVersion: 'There is no such version of the protocol here.',
  unreadable: 'This version was made by a newer program and cannot be read by this one.',
  unknownAgent: 'somebody not known here',
  count: 'Counting pulse and breaths',
  inflation: 'Pumping up',
  deflation: 'Letting down and reading the gauge',
  cuff: 'Cuff and arm',
  round: 'What a round takes',
  category: 'Categories',
  readings: 'How many readings, and which average',
  arms: 'The two arms',
  recheck: 'When to look again',
  actNow: 'When to act at once',
  signing: 'Signing and classes',
  equipment: 'Keeping gauges',
  home: 'Readings at home',
  ambulatory: 'Recordings over 24 hours',
  score: 'Scores',
  found: 'read in the source',
  'second-hand': 'second-hand',
  derived: 'derived',
  memory: 'from memory',
  'memory-low': 'from memory, unsure',
  practice: 'common practice, no source',
  decision: 'a decision of this project',
} as const;
