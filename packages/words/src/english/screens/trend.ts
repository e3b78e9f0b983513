import type { Say } from '../../say.js';
import { ROUNDS } from './nouns.js';

type Text = { text: string };

/** A person's values over time. */
export const trend = {
  title: 'Trend',
  open: 'Trend over time',
  none: 'Nothing with a number is charted yet.',
  hint: 'Move over the drawing or along the line below it: what was measured then is written out. With a mouse, drag across to see a part closer.',
  label: (f: { rounds: number; elsewhere: number; from: string; to: string }, say: Say) =>
    `${say.counted(f.rounds, ROUNDS)}${f.elsewhere === 0 ? '' : ` and ${say.counted(f.elsewhere, TIMES)} from elsewhere,`} from ${f.from} to ${f.to}; every number stands in the table below`,
  circulation: 'Pressure (mmHg) and pulse (a minute)',
  breaths: 'Breaths a minute',
  'oxygen-saturation': 'Oxygen saturation (%)',
  temperature: (f: { unit: string }) => `Temperature (${f.unit})`,
  pain: 'Pain (0 to 10)',
  key: 'How it is drawn',
  keySystolic: 'systolic',
  keyDiastolic: 'diastolic',
  keyPulse: 'pulse',
  keyFelt: 'by feel: no diastolic',
  'key-stand': 'an upright stroke under it: standing',
  'key-lie': 'a level stroke under it: lying',
  keyAverage: 'what the round comes to; its readings are thin beside it',
  keyOther: 'another site than the upper arm, a gauge that failed, or amendments that disagree',
  span: 'How far back',
  day: 'a day',
  week: 'a week',
  month: 'a month',
  year: 'a year',
  all: 'everything',
  closer: 'Closer',
  wider: 'Wider',
  earlier: 'Earlier',
  later: 'Later',
  show: 'What is drawn',
  posture: 'Pressures taken',
  everyPosture: 'in any posture',
  side: 'On which arm',
  everySide: 'on either',
  round: 'Round to read out',
  toRound: 'To this round in the chart',
  average: (f: { readings: number; posture: string | null; text: string }, say: Say) =>
    `mean of ${say.short(f.readings)}${f.posture === null ? '' : `, ${f.posture}`}: ${f.text}`,
  noneIn: 'Nothing was measured in this span.',
  table: 'Every number as a table',
  when: 'When',
  pressure: 'Pressure (mmHg)',
  pulse: 'Pulse (a minute)',
  consciousness: 'Consciousness',
  notice: (f: { flags: number }, say: Say) =>
    `${say.counted(f.flags, { one: 'thing', other: 'things' })} to know: see the chart`,
  'may-be-corrected': 'may have been corrected since',
  correction: 'a correction, nobody knows of which',
  contested: 'amendments disagree',
  elsewhere: 'another site',
  notReliedOn: 'seen by a supervisor, and not relied on',
  gaugeFailed: (f: { name: string }) => `in doubt: ${f.name}`,
  keyNotReliedOn: 'struck through: a supervisor did not rely on it',
  fromElsewhere: 'What others say',
  keyElsewhere: 'hollow triangles: said by another system or a table',
  toElsewhere: 'To what others say, in the chart',
  print: 'Print',
  printed: (f: Text) => `Printed ${f.text}. What was entered in error is left out; the chart has it.`,
} as const;

const TIMES = { one: 'time', other: 'times' };
