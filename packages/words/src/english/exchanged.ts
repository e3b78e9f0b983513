import type { Say } from '../say.js';
import { BEATS, BREATHS } from './screens/nouns.js';

/** What a file for another program says in words beside its codes: how a value was got, and what its reader must know. */
export const exchanged = {
  countedPulse: (f: { n: number; seconds: number }, say: Say) =>
    `${say.counted(f.n, BEATS)} counted in ${say.short(f.seconds)} s`,
  countedBreaths: (f: { n: number; seconds: number }, say: Say) =>
    `${say.counted(f.n, BREATHS)} counted in ${say.short(f.seconds)} s`,
  brokenOff: 'count broken off: no number',
  tappedPulse: (f: { beats: number }, say: Say) => `${say.counted(f.beats, BEATS)} tapped one by one`,
  tappedBreaths: (f: { beats: number }, say: Say) => `${say.counted(f.beats, BREATHS)} tapped one by one`,
  siteOf: (f: { side: string; site: string }) => `${f.side} ${f.site}`,
  phaseFive: 'auscultation; diastolic at disappearance of sounds (phase 5)',
  toZero: (f: { muffled: number }, say: Say) =>
    `auscultation; sounds down to zero, phase 4 (muffling) = ${say.short(f.muffled)} mmHg`,
  homeSeries: 'Taken at home',
  ambulatorySeries: 'By a recorder, over 24 hours',
  palpation: 'palpation: the pulse felt to come back',
  device: 'numbers read off the display of a device',
  cuffIs: (f: { cuff: string; scheme: string }) => `Cuff: ${f.cuff}${f.scheme}`,
  armIs: (f: { cm: number }, say: Say) => `Arm: ${say.short(f.cm, 1)} cm`,
  setByHand: (f: { reason: string }) => `Set by hand: ${f.reason}`,
  contested: 'Two amendments disagree about this value; each is written.',
  unsigned: 'No signing names this value.',
  onAir: 'On air',
  onOxygen: 'On oxygen',
  category: (f: { category: string; guideline: string }) => `Category ${f.category} by ${f.guideline}`,
  underProtocol: (f: { version: string }) => `Local protocol version ${f.version}`,
  averageOf: (f: { readings: number; rule: string }, say: Say) =>
    `Mean of ${say.short(f.readings)} readings of one round, rule ${f.rule}`,
  madeBy: (f: { program: string; rule: string }) => `${f.program}, rule ${f.rule}`,
  created: 'recorded',
  amended: (f: { reason: string }) => `amended: ${f.reason}`,
  inError: (f: { reason: string }) => `entered in error: ${f.reason}`,
  roundBegan: (f: { text: string }) => `How the round began: ${f.text}`,
  changedAtSource: 'changed where it came from',
} as const;
