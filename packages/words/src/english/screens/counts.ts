import type { Say } from '../../say.js';
import { TAPS } from './nouns.js';

type Rate = { written: number };
type Held = Rate & { had: number; windowSeconds: number };

/** A difference with its sign, whole. */
function signed(perMinute: number, say: Say): string {
  const size = Math.round(Math.abs(perMinute));
  return size === 0 ? say.number(0) : `${perMinute > 0 ? '+' : '−'}${say.number(size)}`;
}

/** What the debrief says of counts, and of what was reported. */
export const counts = {
  'title-pulse': 'Your pulse',
  'title-apex': 'Your count at the apex',
  'title-breaths': 'Your breaths',
  'name-pulse': 'pulse',
  'name-apex': 'at the apex',
  'name-breaths': 'breaths',
  yes: (f: Held, say: Say) =>
    `Accepted: you wrote ${say.rate(f.written)} a minute; a perfect count of the same ${say.number(f.windowSeconds)} s gives ${say.number(f.had)}.`,
  not: (f: Held, say: Say) =>
    `Not accepted yet: you wrote ${say.rate(f.written)} a minute; a perfect count of the same ${say.number(f.windowSeconds)} s gives ${say.number(f.had)}.`,
  yesBare: (f: Rate & { truth: number }, say: Say) =>
    `Accepted: you wrote ${say.rate(f.written)} a minute, with no count kept beside it; over the minute about it there were ${say.number(f.truth)}.`,
  notBare: (f: Rate & { truth: number }, say: Say) =>
    `Not accepted yet: you wrote ${say.rate(f.written)} a minute, with no count kept beside it; over the minute about it there were ${say.number(f.truth)}.`,
  yesTaps: (f: Rate & { had: number }, say: Say) =>
    `Accepted, the rate alone: you wrote ${say.rate(f.written)} a minute; one tap for each gives ${say.number(f.had)}.`,
  notTaps: (f: Rate & { had: number }, say: Say) =>
    `Not accepted yet: you wrote ${say.rate(f.written)} a minute; one tap for each gives ${say.number(f.had)}.`,
  tapped: (f: { taps: number; there: number; missed: number; extra: number }, say: Say) =>
    `${say.counted(f.taps, TAPS)}; from the first of them to the last there were ${say.number(f.there)} to tap. ${f.missed === 0 ? 'None was let by' : `${say.number(f.missed)} had no tap`}; ${f.extra === 0 ? 'no tap was too many' : `taps too many: ${say.number(f.extra)}`}.`,
  tapsNextMissed:
    'Next time: tap at each one as it comes, however many there are; where one was let by, begin again.',
  tapsNextExtra: 'Next time: one tap for each, and the finger off the pad at once.',
  counted: (f: { n: number; there: number; windowSeconds: number }, say: Say) =>
    `In your ${say.number(f.windowSeconds)} s you counted ${say.number(f.n)}; there were ${say.number(f.there)}.`,
  allows: (f: { windowSeconds: number; stepPerMinute: number; withinPerMinute: number }, say: Say) =>
    `In a window of ${say.number(f.windowSeconds)} s one more or less is ${say.short(f.stepPerMinute)} a minute; a difference up to ${say.short(f.withinPerMinute)} a minute is accepted.`,
  truth: (f: { truth: number }, say: Say) => `Over the minute about it there were ${say.number(f.truth)}.`,
  chance: (f: { truth: number }, say: Say) =>
    `Over the minute about it there were ${say.number(f.truth)}: that you could not have had from this window, however well you counted.`,
  luck: (f: { truth: number }, say: Say) =>
    `What you wrote lies near what was true over the minute about it, ${say.number(f.truth)}, but by luck.`,
  'grave-pulse':
    'So far from the true rate, more than a tenth of it, that somebody could be hurt: in an assessment a critical failure.',
  'grave-breaths':
    'So far from the true rate, more than 4 a minute, that somebody could be hurt: in an assessment a critical failure.',
  better: (f: { neededSeconds: number }, say: Say) =>
    `For this person a window of ${say.number(f.neededSeconds)} s would have been the better one:`,
  enough: 'For this person that window was long enough.',
  'rhythm-regular-regular': 'You noted that it was regular. So it was.',
  'rhythm-irregular-irregular': 'You noted that it was irregular. So it was.',
  'rhythm-regular-irregular': 'You noted it as regular. It was irregular.',
  'rhythm-irregular-regular': 'You noted it as irregular. It was regular.',
  'rhythm-none-regular': 'Of its rhythm you noted nothing; it was regular.',
  'rhythm-none-irregular': 'It was irregular, and you did not note it.',
  'rhythm-hidden':
    'In this window it came evenly, and yet this person is irregular: a longer window shows it.',
  strengthRight: (f: { strength: string }) => `You noted its strength as ${f.strength}. So it was.`,
  strengthWrong: (f: { strength: string; was: string }) =>
    `You noted its strength as ${f.strength}. It was ${f.was}.`,
  strengthNone: (f: { was: string }) => `It was ${f.was}, and you did not note its strength.`,
  weak: 'weak',
  normal: 'normal',
  strong: 'strong',
  oneThing: 'Next time',

  'figure-pulse': 'Your window on the beats at the wrist',
  'figure-apex': 'Your window on the beats of the heart',
  'figure-breaths': 'Your window on the breaths',
  figureSays: (f: { windowSeconds: number; there: number; n: number }, say: Say) =>
    `A window of ${say.number(f.windowSeconds)} s with ${say.number(f.there)} in it; ${say.number(f.n)} were counted.`,
  tapsKey:
    'Each stroke is one, at the second at which it came; below it your tap. A cross: no tap; an open arrow: one too many.',
  youCounted: (f: { n: number }, say: Say) => `counted ${say.number(f.n)}`,
  noTap: 'no tap',
  tap: (f: { number: number; seconds: string }, say: Say) =>
    `Your tap ${say.number(f.number)}, at ${f.seconds} s`,
  tapExtra: (f: { number: number; seconds: string }, say: Say) =>
    `Your tap ${say.number(f.number)}, at ${f.seconds} s: one too many`,
  axisTaps: 's from your first tap',
  tableYours: 'Yours',
  tableTap: (f: { number: number }, say: Say) => `tap ${say.number(f.number)}`,
  tableExtra: (f: { number: number }, say: Say) => `tap ${say.number(f.number)}, one too many`,
  figureKey:
    'Each stroke is one, at the second at which it came; the shaded stretch is the window. Strokes in it are numbered from the first one on; the arrow points to where your number would have been reached.',
  'strokeIn-pulse': (f: { number: number; seconds: string }, say: Say) =>
    `Beat ${say.number(f.number)} of the window, at ${f.seconds} s`,
  'strokeIn-apex': (f: { number: number; seconds: string }, say: Say) =>
    `Beat ${say.number(f.number)} of the window, at ${f.seconds} s`,
  'strokeIn-breaths': (f: { number: number; seconds: string }, say: Say) =>
    `Breath ${say.number(f.number)} of the window, at ${f.seconds} s`,
  strokeOut: (f: { seconds: string }) => `Outside the window, at ${f.seconds} s`,
  axis: 's from the start of the window',
  table: 'The strokes as numbers',
  tableNumber: 'In the window',
  tableSeconds: 's from its start',

  errorsFigure: 'How near the counts came, over time',
  errorsKey:
    'Written minus what a perfect count of the same window gives. Circle: pulse; square: breaths; filled: accepted, open: not yet.',
  errorAxis: 'a minute too many',
  errorSays: (f: { name: string; text: string }) => `${f.name}: ${f.text}.`,
  errorOf: (f: { what: string; perMinute: number }, say: Say) =>
    `${f.what} ${signed(f.perMinute, say)} a minute`,
  signed: (f: { perMinute: number }, say: Say) => signed(f.perMinute, say),
  columnPulse: 'Pulse, a minute',
  columnApex: 'At the apex, a minute',
  columnBreaths: 'Breaths, a minute',
  wrote: (f: { what: string; written: number }, say: Say) => `${f.what} ${say.rate(f.written)}`,
  off: (f: { text: string }) => `off by ${f.text}`,

  'title-temperature': 'Temperature',
  takeTemperature: 'Take the temperature',
  thermometerShows: (f: { celsius: number; place: 'tongue' | 'ear' }, say: Say) =>
    `The thermometer ${f.place === 'ear' ? 'in the ear' : 'under the tongue'} shows ${say.temperature(f.celsius)}.`,
  temperatureWrong: (f: { minimum: number; maximum: number }, say: Say) =>
    `A number from ${say.temperatureLimit(f.minimum)} to ${say.temperatureLimit(f.maximum)} with at most one decimal.`,
  writeTemperature: 'Write it down',
  putThermometerAway: 'Put the thermometer away',
  celsius: (f: { celsius: number }, say: Say) => say.temperature(f.celsius),
  temperatureWritten: (f: { celsius: number }, say: Say) => `temperature ${say.temperature(f.celsius)}`,
  temperatureYes: (f: { written: number; shown: number }, say: Say) =>
    `Accepted: you wrote ${say.temperature(f.written)}, as the thermometer showed.`,
  temperatureNot: (f: { written: number; shown: number }, say: Say) =>
    `Not accepted yet: you wrote ${say.temperature(f.written)}; the thermometer showed ${say.temperature(f.shown)}.`,

  reported: 'What a good observer reports of this person',
  is: 'You',
  'is-reported': 'reported',
  'is-not-reported': 'not reported',
  'is-not-here': 'could not be reported here',
  'report-both-numbers': 'Both numbers, systolic and diastolic.',
  'report-second-reading': 'A second reading on the same arm, in the same posture, after a minute or more.',
  'report-three-readings': 'Three readings: one alone says little where no two beats are alike.',
  'report-palpated-systolic': 'The systolic by feel, before listening.',
  'report-gap': 'The first sound above the silent gap, written as the systolic, and not the one after it.',
  'report-muffled': 'The number at which the sounds became muffled, beside the first and the last.',
  'report-sounds-to-zero': 'That the sounds went on to zero, as three numbers.',
  'report-paradox-both-numbers':
    'Both numbers of the fall with each breath in: where the first sounds come, and where they come with every beat.',
  'report-strong-weak-by-turns': 'That strong and weak beats came by turns, evenly spaced.',
  'report-by-feel': 'The systolic by feel, written as such, with no diastolic.',
  'report-other-arm': 'Both numbers of each arm, in one posture, so that the higher arm can be seen.',
  'report-standing-readings': 'Readings after one and three minutes of standing, beside those before.',
  'report-home-readings': 'That readings from home are needed to tell.',
  'report-cuff-by-arm': 'A reading with the cuff that this arm asks for.',
  'report-gauge-off':
    'That the needle does not rest at zero, or the cuff leaks: another gauge was asked for in its place.',
  'report-noise-of-place': 'That it was too noisy to hear the softest sounds, and a quiet place.',
  'report-pulse-rate': 'The pulse at the wrist, as a rate.',
  'report-pulse-full-minute': 'The pulse counted for a full minute, at the wrist or at the apex.',
  'report-pulse-irregular': 'That the pulse was irregular.',
  'report-pulse-weak': 'That the pulse was weak.',
  'report-pulse-strong': 'That the pulse was strong.',
  'report-apex-rate': 'The rate at the apex beside that at the wrist, each counted.',
  'report-breaths-rate': 'The breaths, as a rate.',
  'report-breaths-full-minute': 'The breaths counted for a full minute.',
  'report-breaths-irregular': 'That the breathing was irregular.',
  'report-breaths-depth': 'How deep the breaths were.',
  'report-breaths-pattern': 'That the breathing swells, fades and stops by turns, and how long it stops.',
  'report-temperature': 'The temperature.',
  'report-act-now': 'That this cannot wait: somebody was told at once.',
} as const;
