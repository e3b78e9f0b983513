import type { Say } from '../../say.js';
import { MINUTES } from './nouns.js';

const TOUCHES = { one: 'touch', other: 'touches' };

/** A second person marks the moments of a run on another device: what either of the two screens says. */
export const second = {
  way: 'A second person marks',
  opening: 'Asking for a code …',
  unreachable:
    'No code: the server cannot be reached. It is asked again; meanwhile mark the sounds yourself, or remember them.',
  over: 'The code has run out.',
  anew: 'A new code',
  refused: 'This account takes no signs, so nobody can mark for it.',
  code: 'Code for the other device',
  how: (f: { minutes: number }, say: Say) =>
    `On the other device: start page, “Mark for somebody else”, and this code. It is good for ${say.counted(f.minutes, MINUTES)}.`,
  picture: 'Address of the other device’s page, as a QR picture',
  waiting: 'Nobody has joined yet. If you pump up now, you mark the sounds yourself.',
  joined: 'The other device is ready: it marks, you watch the gauge.',
  marks: 'The second person marks',
  soFarHere: 'Touches here mark nothing.',
  unheard:
    'Nothing is heard of the other device. What it marks is kept there and comes when it is back; you can go on without it.',
  cutOff:
    'This device does not reach the server. What the other one marks comes when it does; you can go on without it.',
  takeOver: 'I mark from here on',
  title: 'Mark for somebody else',
  intro:
    'Somebody else lets a cuff down; you mark on this device when the valve opens and when sounds come and go. Type the code that their device shows.',
  typed: 'Code',
  join: 'Join',
  joining: 'Joining, and bringing the two clocks together …',
  codeMissing: 'Type the code that the other device shows: six letters and digits.',
  wrong:
    'No run waits under this code. It was mistyped, or it is over: ask for the code that stands there now.',
  taken: 'Another device has already joined by this code. Ask for a new one.',
  mayNot: 'This account takes no signs, so it cannot mark either.',
  tooOften: 'Too many wrong codes. Try again in a quarter of an hour.',
  offline: 'The server cannot be reached. Nothing is lost; try again.',
  ofCode: (f: { text: string }) => `Code ${f.text}`,
  valve: 'Touch as the valve opens',
  isKept: 'All your touches have arrived.',
  notSent: 'Not connected. What you mark is kept here and sent when the connection is back; go on marking.',
  clocks: (f: { ms: number }, say: Say) =>
    `The clocks of the two devices agree within ${say.short(f.ms)} ms.`,
  clocksCoarse: (f: { ms: number; thumb: number }, say: Say) =>
    `The clocks of the two devices agree only within ${say.short(f.ms)} ms, more than a thumb scatters by itself (${say.short(f.thumb)} ms): between a moment marked here and one marked there the time is no better than that.`,
  notYet: 'The other cuff is not going up yet; what is touched before that does not count.',
  runOver: 'That run is over; the next one is marked here too.',
  ended: 'Nothing is marked for that device any more. Thank you.',
  late: (f: { touches: number }, say: Say) =>
    `${say.counted(f.touches, TOUCHES)} of yours may have come too late for that run: tell whoever measured.`,
  leave: 'Stop marking',
  markedBy: 'Marked by',
  bySecond: 'a second person on another device.',
  byBoth: (f: { moments: string }) =>
    `a second person on another device (${f.moments}), the rest by whoever measured.`,
} as const;
