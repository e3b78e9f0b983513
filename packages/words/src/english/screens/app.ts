import type { Say } from '../../say.js';
import { ENTRIES, EXERCISES, ROUNDS } from './nouns.js';

type Text = { text: string };

/** What every page carries: its frame, its notices, and what is said when the server does not answer. */
export const app = {
  name: 'Evenfall',
  notReviewed: 'This translation is not clinically reviewed.',
  pulse: 'Pulse',
  breaths: 'Breaths',
  pressure: 'Pressure',
  temperature: 'Temperature',
  'oxygen-saturation': 'Oxygen saturation',
  pain: 'Pain',
  consciousness: 'Consciousness',
  weight: 'Weight',
  height: 'Height',
  perMinute: '/min',
  notKnown: 'not known',
  broken: 'This page could not be shown. What you entered is kept on this device.',
  loadAgain: 'Load it again',
  back: 'Back',
  cancel: 'Cancel',
  save: 'Save',
  close: 'Close',
  skip: 'Skip to the page',
  invented: 'INVENTED',
  inventedBand: 'INVENTED: nobody here is real',
  pageTitle: (f: Text) => `${f.text} · Evenfall`,
  pageTitleInvented: (f: Text) => `INVENTED · ${f.text} · Evenfall`,
  loading: 'One moment …',
  notFound: 'There is no such page.',
  toPeople: 'To the list of people',
  noSuchPerson: 'There is no such person in this book.',
  unreachable: 'The server cannot be reached.',
  unreachableTry: 'Nothing that you entered is lost. Check that Evenfall is running, then try again.',
  refusedBy: (f: Text) => `The server refused: ${f.text}`,
  failed: 'The server could not do it. Try again in a moment.',
  unreadable: (f: { entries: number }, say: Say) =>
    `${say.counted(f.entries, ENTRIES)} cannot be read by this version of Evenfall. What you see leaves ${f.entries === 1 ? 'it' : 'them'} out, and may not be the newest. Nothing is lost: evenfall check lists each.`,
  tryAgain: 'Try again',
  notKept:
    'This browser keeps nothing between visits, so a reload would lose what is not signed yet. Leave the page open until you have signed.',
  newer:
    'A newer Evenfall is here. What you entered and signed stays on this device; a count under way would be lost, so finish it first.',
  newerReload: 'Reload to the newer one',
  keptForGood: 'This browser keeps what waits on this device until it is sent.',
  mayGo:
    'This browser may clear what waits on this device when it runs out of space: sign, and see that it is sent, before you put the device away.',
  onPhone: 'Evenfall on a phone',
  waiting: (f: { rounds: number }, say: Say) =>
    `${say.counted(f.rounds, ROUNDS)} signed on this device and not yet kept by the server.`,
  waitingSeries: (f: { series: number }, say: Say) =>
    `${say.counted(f.series, { one: 'series of readings', other: 'series of readings' })} signed on this device and not yet kept by the server.`,
  waitingClosed: 'That an alert was acted on is kept on this device and not yet by the server.',
  waitingExercises: (f: { exercises: number }, say: Say) =>
    `${say.counted(f.exercises, EXERCISES)} of practice on this device and not yet kept by the server.`,
  exerciseRefused: 'The server refused an exercise of practice, so it is not among what was practised:',
  exerciseBack: 'Take it back to the practice room',
  exerciseGiveUp: 'Give the exercise up',
  closedRefused: 'The server refused that an alert was acted on, so it still stands open:',
  closeAnew: 'Say it anew',
  waitingShort: (f: { rounds: number; series: number; closings: number; exercises: number }, say: Say) => {
    const parts = [
      ...(f.rounds === 0 ? [] : [say.counted(f.rounds, ROUNDS)]),
      ...(f.series === 0 ? [] : [`${say.short(f.series)} series`]),
      ...(f.closings === 0
        ? []
        : [say.counted(f.closings, { one: 'alert acted on', other: 'alerts acted on' })]),
      ...(f.exercises === 0 ? [] : [say.counted(f.exercises, EXERCISES)]),
    ];
    const isOne = f.rounds + f.series + f.closings + f.exercises === 1;
    return `${say.allOf(parts)} ${isOne ? 'waits here, sent by itself' : 'wait here, sent by themselves'}`;
  },
  withoutServer: 'No server just now: go on, nothing is lost',
  waitingAgain: 'It is sent again by itself. You may also send it now.',
  sendNow: 'Send now',
  sending: 'Sending …',
  refusedCuff:
    'the cuff named at a blood pressure is none of its list. Take the round back and choose the cuff that was used in its review.',
  waitingRefused: 'The server refused a signed round, so it is not in the chart:',
  waitingSeriesRefused: 'The server refused a signed series of readings, so it is not in the record:',
  takeBackLater:
    'It cannot be taken back yet: another one was begun in its place on this device. Sign or discard that one first.',
  takeBack: 'Take it back to put it right',
  to: (f: { low: string; high: string }) => `${f.low} to ${f.high}`,
  rangeIncluded: (f: { low: string; high: string }) => `${f.low} to under ${f.high}`,
  rangeOpen: (f: { low: string; high: string }) => `over ${f.low}, under ${f.high}`,
} as const;
