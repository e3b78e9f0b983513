import type { Say } from '../../say.js';

type Text = { text: string };

const TOUCHES = { one: 'touch', other: 'touches' };

/** The moments of a run, marked while the cuff is let down, and the gauge that is read back for each. */
export const moments = {
  way: 'How the sounds are noted',
  remember: 'Remember',
  mark: 'Mark each sound',
  valve: 'Touch as you open the valve',
  first: 'Touch at the first sound',
  last: 'Touch at the last sound',
  more: 'Again, if another came later',
  how: 'Touch anywhere, or use a clicker, a pedal or the space bar.',
  soFar: (f: { touches: number }, say: Say) => `${say.counted(f.touches, TOUCHES)} so far`,
  undo: 'Take one back',
  untimed: 'Read without times',
  readGauge: 'Read the gauge',
  notRead: 'not read yet',
  unread: (f: Text) => `${f.text}: not read yet. Give what the gauge showed, in mmHg.`,
  noNumber: (f: Text & { got: string }) =>
    `${f.text}: “${f.got}” is no number. Give what the gauge showed, in mmHg.`,
  mayStayEmpty: 'may stay empty',
  isAt: (f: { mmHg: number }, say: Say) => `${say.short(f.mmHg)} mmHg`,
  gaugeOf: (f: Text) => `${f.text} (mmHg)`,
  onGauge: (f: Text) => `${f.text}, on the gauge`,
  which: 'Which moment the gauge shows',
  lower: 'One mark lower',
  higher: 'One mark higher',
  next: (f: Text) => `Next: ${f.text}`,
  void: 'The screen was left while the cuff was let down: its times are void. The numbers can still be kept, if you know them.',
  notThese: 'Not these moments? Or more about this run',
  whatAt: (f: { seconds: number }, say: Say) => `The touch at ${say.short(f.seconds, 1)} s was`,
} as const;
