import type { Say } from '../../say.js';
import { debriefFaults } from './debriefFaults.js';

const EXERCISES = { one: 'exercise', other: 'exercises' };
const READINGS = { one: 'reading', other: 'readings' };
const SOUNDS = { one: 'sound', other: 'sounds' };

type MmHg = { mmHg: number };
type Parts = { part: string };
/** Whether a difference is more than nothing as it is shown, with one decimal. */
function isAny(mmHg: number): boolean {
  return Math.abs(mmHg) >= 0.05;
}

/** A difference with its sign and one decimal; what rounds to nothing has none. */
function signed(mmHg: number, say: Say, decimals = 1): string {
  const size = Math.abs(mmHg);
  if (size < 0.5 / 10 ** decimals) return say.number(0, decimals);
  return `${mmHg > 0 ? '+' : '−'}${say.number(size, decimals)}`;
}

/** What came of an exercise with a simulated person, and the exercises of one person side by side. */
export const debrief = {
  feltNoFinger:
    'No finger lay on the wrist while the cuff came down: this number was not felt. By feel it is the pressure at which the pulse comes back under the fingers.',
  feltNothing: 'The pulse had not come back under the fingers: this number was not felt.',
  feltAt: (f: { mmHg: number }, say: Say) =>
    `The first pulse that the fingers could feel came back with ${say.number(Math.round(f.mmHg))} mmHg in the cuff.`,
  title: 'Debrief',
  titleOf: (f: { name: string }) => `Debrief: ${f.name}`,
  missing: 'There is no exercise of this id here.',
  unreadable: 'This exercise was kept by a newer program and cannot be played again by this one.',
  otherModel: (f: { model: number; now: number }, say: Say) =>
    `This was practised with model ${say.number(f.model)} of the simulated person. This program has model ${say.number(f.now)}, in which beats and sounds fall elsewhere, so it cannot be judged any more.`,
  wroteSays: (f: { text: string }) => `You wrote ${f.text} mmHg.`,
  listTitle: 'Exercises so far',
  listBack: 'All exercises',
  older: 'Older ones',
  noneJudged:
    'None of these can be judged by this program: they were practised with an earlier model of the people.',
  listNone: 'No exercise has been kept yet.',
  listOf: 'Whose exercises',
  made: (f: { name: string; when: string }) => `${f.name}, ${f.when}`,
  openOne: 'Open',
  by: (f: { name: string; when: string }) => `By ${f.name}, ${f.when}`,
  invented: 'An invented person',

  judgedByVersion: 'Judged by the protocol that was in force when this was kept:',
  judgedByNone: 'Judged by the general rules: when this was kept no protocol was chosen here.',
  judgedByNow:
    'This was kept before the protocol of its day was kept with it: judged by what is in force here now.',
  judgedByNotHere:
    'The protocol that this was kept under is not among those of this place: judged by what is in force here now.',
  judgedByNotReached:
    'The protocol that this was kept under could not be fetched: judged by what is in force here now, until it can.',

  round: 'Your readings as a round',
  roundBy: (f: { rule: string }) => `Averaged by the rule of the protocol: ${f.rule}.`,
  roundByGeneral: (f: { rule: string }) =>
    `No protocol was chosen, so they are averaged by the general rule: ${f.rule}.`,
  roundReading: (f: { number: number }, say: Say) => `Reading ${say.number(f.number)}`,
  roundColumn: 'Reading',
  roundWrote: 'You wrote',
  roundHad: 'To be had then',
  roundTruth: 'True on average',
  roundAverage: 'Average',
  isAveraged: 'in the average',
  'notAveraged-rule': 'not in the average by this rule',
  'notAveraged-other-arm': 'not in the average: the other arm',
  'notAveraged-other-posture': 'not in the average: sat otherwise',
  'notAveraged-other-site': 'not in the average: another place',
  'notAveraged-no-diastolic': 'not in the average: no diastolic',
  'notAveraged-standing': 'not in the average: on the feet',
  'notAveraged-laid-down': 'not in the average: after being laid down from their feet',
  averageOf: (f: { numbers: string; count: number }, say: Say) =>
    `of ${say.form(f.count, { one: 'reading', other: 'readings' })} ${f.numbers}`,
  acceptedBoth: 'yes',
  acceptedOne: (f: Parts) => `${f.part} only`,
  averageOff: (f: { systolic: number; diastolic: number }, say: Say) =>
    `Your average lies ${signed(f.systolic, say)}/${signed(f.diastolic, say)} mmHg from the best that was to be had of the same readings.`,
  averageYes: (f: { withinMmHg: number }, say: Say) =>
    `Accepted: both numbers within ${say.short(f.withinMmHg)} mmHg.`,
  averageOne: (f: { withinMmHg: number; part: string; other: string }, say: Say) =>
    `Half accepted: the ${f.part} within ${say.short(f.withinMmHg)} mmHg, the ${f.other} not.`,
  averageNot: (f: { withinMmHg: number }, say: Say) =>
    `Not accepted yet: both numbers further than ${say.short(f.withinMmHg)} mmHg.`,
  averageNothing: 'Of one of these readings nothing was to be had, so the average is not judged.',
  averageTruth: (f: { systolic: number; diastolic: number }, say: Say) =>
    `From what is true on average it lies ${signed(f.systolic, say)}/${signed(f.diastolic, say)} mmHg.`,
  averageNone: 'By this rule there is no average of these readings.',
  roundNeeds: 'What the rule asks for',
  roundWhich: 'Look at one reading',

  reading: 'Your reading',
  number: 'Number',
  wrote: 'You wrote',
  truth: 'True on average',
  had: 'To be had then',
  error: 'Yours minus that',
  asTheyWere: 'To be heard as they were',
  ofReading: 'Yours minus that: hand, ear and eye',
  hadPrepared: 'To be had then, prepared by the book',
  ofPreparing: 'As they were minus that: preparing',
  errorInAll: 'Yours minus it: both together',
  asTheyWereHint:
    'To be heard as they were: what the book’s hand, ear and eye would have written at that very moment with the person, the cuff, the gauge and the place as you left them.',
  readRightSays: (f: { part: string; asTheyWere: number; had: number; ofPreparing: number }, say: Say) =>
    `The ${f.part} you read right: ${say.number(f.asTheyWere)} was to be heard as things were. What was not prepared made it ${say.number(Math.abs(f.ofPreparing))} mmHg too ${f.ofPreparing > 0 ? 'high' : 'low'}: prepared by the book, ${say.number(f.had)} was to be had.`,
  cancelledSays: (f: { part: string; ofReading: number; ofPreparing: number }, say: Say) =>
    `The ${f.part} lies near by luck: hand, ear and eye moved it by ${signed(f.ofReading, say, 0)} mmHg, what was not prepared by ${signed(f.ofPreparing, say, 0)}.`,
  bothPartsSays: (f: { part: string; ofReading: number; ofPreparing: number }, say: Say) =>
    `Of the ${f.part}, ${signed(f.ofReading, say, 0)} mmHg are of hand, ear and eye, and ${signed(f.ofPreparing, say, 0)} of what was not prepared.`,
  accepted: 'Accepted',
  isAccepted: 'yes',
  isNotAccepted: 'not yet',
  isFar: 'read right, but far from what is true on average',
  notWritten: 'not written',
  truthHint:
    'To be had then: what the book’s hand and an eye on the needle would have written at that very moment, from the same heartbeats, with the person, the cuff and the place prepared by the book, to the nearest mark. You are judged by it. True on average: what a perfect listener would have heard over the minute about your reading, with the person prepared by the book.',
  spreadSays: (f: { text: string }) =>
    `So much the heart itself varies: twenty falls by the book, begun within five seconds of yours, would have given ${f.text}.`,
  spreadOf: (f: { part: string; lowMmHg: number; highMmHg: number }, say: Say) =>
    `${f.part} ${say.number(f.lowMmHg)} to ${say.number(f.highMmHg)}`,
  systolic: 'systolic',
  diastolic: 'diastolic',
  wristRow: 'pulse at the wrist',
  heartRow: 'beats of the heart',
  deficitRow: 'beats that do not arrive',
  muffledRow: 'diastolic, where muffled',
  muffledPart: 'diastolic where the sounds became muffled',
  muffledHint:
    'The sounds went on far below, so the diastolic is the number at which they became muffled. What each fault cost is worked out for that, too.',
  goneOnSays:
    'The sounds went on far below the diastolic, and no muffling was to be heard: here the last sound says little. Repeat with the chest piece lying lightly, and say beside the number that the sounds went on.',
  bothAccepted: (f: { withinMmHg: number }, say: Say) =>
    `Accepted: both numbers lie within ${say.short(f.withinMmHg)} mmHg of what was to be had at that moment.`,
  oneAccepted: (f: { withinMmHg: number; part: string; other: string }, say: Say) =>
    `Half accepted: the ${f.part} lies within ${say.short(f.withinMmHg)} mmHg of what was to be had at that moment, the ${f.other} does not.`,
  oneAlone: (f: { withinMmHg: number; part: string; other: string }, say: Say) =>
    `Accepted: the ${f.part} lies within ${say.short(f.withinMmHg)} mmHg of what was to be had at that moment; no ${f.other} was written.`,
  oneAloneNot: (f: { withinMmHg: number; part: string; other: string }, say: Say) =>
    `Not accepted yet: the ${f.part} lies further than ${say.short(f.withinMmHg)} mmHg from what was to be had at that moment; no ${f.other} was written.`,
  noneAccepted: (f: { withinMmHg: number }, say: Say) =>
    `Not accepted yet: both numbers lie further than ${say.short(f.withinMmHg)} mmHg from what was to be had at that moment.`,
  eachAccepted: (f: { withinMmHg: number; part: string }, say: Say) =>
    `Accepted: the ${f.part} lies within ${say.short(f.withinMmHg)} mmHg of what was to be had at that moment.`,
  eachNot: (f: { withinMmHg: number; part: string }, say: Say) =>
    `Not accepted yet: the ${f.part} lies further than ${say.short(f.withinMmHg)} mmHg from what was to be had at that moment.`,
  eachFar: (f: { part: string; mmHg: number }, say: Say) =>
    `Read as it was to be heard, and still not right for this person: the ${f.part} lies ${say.number(Math.abs(f.mmHg))} mmHg ${f.mmHg > 0 ? 'above' : 'below'} what is true on average.`,
  'within-irregular': (f: { withinMmHg: number; usualMmHg: number }, say: Say) =>
    `The limit is ${say.short(f.withinMmHg)} mmHg for this person, and not the usual ${say.short(f.usualMmHg)}: no two beats are alike, so that one letting down says less.`,
  'within-faint': (f: { withinMmHg: number; usualMmHg: number }, say: Say) =>
    `The limit is ${say.short(f.withinMmHg)} mmHg for this person, and not the usual ${say.short(f.usualMmHg)}: the sounds are so faint, or come and go so with the breath, that nobody finds their ends more closely.`,
  'within-own': (f: { withinMmHg: number; usualMmHg: number }, say: Say) =>
    `The limit is ${say.short(f.withinMmHg)} mmHg for this person, and not the usual ${say.short(f.usualMmHg)}: whoever wrote this person down chose it.`,
  chanceSays: (f: { part: string; mmHg: number }, say: Say) =>
    `The ${f.part} that was to be had lay ${say.number(Math.abs(f.mmHg))} mmHg ${f.mmHg > 0 ? 'above' : 'below'} what is true on average: beats differ by themselves, and that is not your hand. A second reading shows it.`,
  chanceBreathSays: (f: { mmHg: number }, say: Say) =>
    `The systolic that was to be had lay ${say.number(Math.abs(f.mmHg))} mmHg ${f.mmHg > 0 ? 'above' : 'below'} what is true on average: with each breath in it falls far, and a cuff that comes down at the usual speed meets it or misses it. Let down far more slowly, and say where the first sounds come and where they come with every beat.`,
  feelSays: (f: { mmHg: number }, say: Say) =>
    `By feel ${say.number(Math.abs(f.mmHg))} mmHg ${f.mmHg > 0 ? 'more' : 'less'} was to be had than by ear: a finger feels the pulse a little after the first sound.`,
  luckSays: (f: { part: string; mmHg: number }, say: Say) =>
    `The ${f.part} that you wrote lies near what is true on average, but by luck: at that moment ${say.number(f.mmHg)} was to be had.`,
  unmeasured:
    'Not accepted, whatever the numbers are: nothing was measured. No cuff was pumped up and let down from which they could come.',
  unheard:
    'Not accepted, whatever the numbers are: nothing was to be heard in this letting down from which they could come.',
  unfelt:
    'Not accepted, whatever the number is: no pulse came back under a finger in this letting down from which it could come.',
  noReading: 'No pressure was written.',
  nothingAtAll: 'Nothing was written, so there is nothing to judge.',
  flagSeen: (f: Parts) => `You said that something here cannot wait. So it is: ${f.part}.`,
  flagMissed: (f: Parts) =>
    `Something here could not wait, and it was not said: ${f.part}. Act on such a sign before anything else, by your own local procedure.`,
  flagUnknowable: (f: Parts) =>
    `To be found here was ${f.part}, which has to be told at once. With the number that you wrote nobody could know of it: the reading comes first.`,
  flagNoneSaid:
    'You said that something here cannot wait. This person was made without such a sign; to ask once too often is no fault.',
  flagNoneNeeded: 'You said that nothing here has to be told at once. So it is.',
  flagNotAsked: (f: Parts) => `Something here cannot wait: ${f.part}.`,
  'severe-pressure': 'a severe pressure',
  'severe-in-pregnancy': 'a severe pressure in pregnancy',
  shock: 'a pattern consistent with shock',
  paradox: 'a systolic that falls far with each breath in',
  'pressure-with-slow-pulse': 'a high pressure with a slow pulse and uneven breathing',
  'slow-breathing': 'very slow breathing',
  'fast-breathing': 'deep and fast breathing',
  'very-slow-pulse': 'a very slow pulse',
  'very-fast-pulse': 'a very fast pulse',
  'fever-with-fast-pulse': 'fever with a fast pulse',

  oneThing: 'One thing to do differently',
  oneThingSays: (
    f: {
      instead: string;
      fault: string;
      systolic: number | null;
      diastolic: number | null;
      /** What everything else moved back of each; null: nothing to speak of. */
      systolicBack: number | null;
      diastolicBack: number | null;
    },
    say: Say,
  ) => {
    const moved = [
      ...(f.systolic === null ? [] : [{ whose: 'your systolic', mmHg: f.systolic, back: f.systolicBack }]),
      ...(f.diastolic === null
        ? []
        : [{ whose: 'your diastolic', mmHg: f.diastolic, back: f.diastolicBack }]),
    ];
    const any = moved.filter(({ mmHg }) => isAny(mmHg));
    if (any.length === 0) return `${f.instead} ${f.fault}: this time it moved neither number.`;
    return `${f.instead} ${f.fault}: that moved ${any.map(({ whose, mmHg, back }) => `${whose} by ${signed(mmHg, say)} mmHg${back === null ? '' : ` (everything else together moved it back by ${signed(back, say)})`}`).join(' and ')}.`;
  },
  oneThingWhy: (f: { instead: string; what: string }) => `${f.instead} ${f.what}.`,
  lessonSays: (f: { text: string }) => `${f.text} That is what this person is there to teach.`,
  lessonUnwell: (f: { text: string }) =>
    `While help comes, by your own local procedure: ${f.text} Whoever is told of it asks for that next.`,
  gapWas: (f: { firstMmHg: number; topMmHg: number; backMmHg: number }, say: Say) =>
    `The sounds began at ${say.number(f.firstMmHg)}, fell silent below ${say.number(f.topMmHg)} and came back at ${say.number(f.backMmHg)} mmHg.`,
  gapFelt: (f: MmHg, say: Say) =>
    `You had felt the pulse up to ${say.number(f.mmHg)} mmHg: a first sound far below that is a reason to listen again.`,
  'nothing-excused':
    'What moved this reading there was no time to mend: with somebody who cannot wait, the help comes first. Nothing else that was found would have moved it more than a gauge can show.',
  'nothing-unexplained':
    'This reading is off, and no single thing that was done tells why. Look at what moved your numbers below, and take it again.',
  'nothing-small': 'Nothing that was done wrong moved this reading by more than a gauge can show.',
  'nothing-none': 'Nothing was done wrong in this reading, as far as can be told.',
  sameAgain: 'Do it the same way again.',
  reportsMore: 'What a good observer reports of this person besides stands at the end.',

  costs: 'What moved your numbers',
  costsHint:
    'How much higher (plus) or lower (minus) each of these made your number. Found by playing the same visit again with each of them put right; what several do together is shared out fairly between them.',
  fault: 'What',
  systolicCost: 'Your systolic, mmHg',
  diastolicCost: 'Your diastolic, mmHg',
  instead: 'Instead',
  cost: (f: { mmHg: number | null }, say: Say) => (f.mmHg === null ? 'no number' : signed(f.mmHg, say)),
  noNumber:
    'No number: with some of these faults there was nothing left to hear, so their cost cannot be shared out.',
  noNumberUnmeasured:
    'No number: nothing was measured, so there is no reading of which a part could be owed to any of these.',
  noNumberUnheard:
    'No number: nothing was heard, so there is no reading of which a part could be owed to any of these.',
  noNumberUnfelt:
    'No number: nothing was felt, so there is no reading of which a part could be owed to any of these.',
  left: 'the rest',
  leftHint: 'nobody’s fault: an ordinary reaction, rounding, and the beats that were met',
  leftUnknown: 'not known: the sounds were not marked in time',
  leftFirstUnknown:
    'systolic: not known, it was typed without a mark; diastolic: nobody’s fault, an ordinary reaction, rounding, and the beats that were met',
  leftLastUnknown:
    'systolic: nobody’s fault, an ordinary reaction, rounding, and the beats that were met; diastolic: not known, it was typed without a mark',
  total: 'yours minus what was to be had',
  costsSum:
    'Each line is the average of twenty falls begun within five seconds of yours; the rest is what this one fall made different.',
  noFaults: 'Nothing that was done wrong moved them.',
  letDownSays: (f: { seconds: number; mmHgPerSecond: number }, say: Say) =>
    `${say.number(f.mmHgPerSecond, 1)} mmHg a second from where the sounds begin to where they end, ${say.number(f.seconds)} s in all`,
  letDownHeld: (f: { afterSeconds: number }, say: Say) =>
    `over ${say.number(f.afterSeconds)} s blood gathers in the arm: the sounds become softer, and the last one comes at a higher number`,

  ...debriefFaults,

  noGapHere:
    'In this person nothing had gone silent. At the bedside nobody can know that, and so another reading from higher up is asked for.',

  figure: 'The letting down, as it was',
  figureKey:
    'Falling line: pressure in the cuff. Each stem is a sound, as high as it was loud: full circle phase I, open circle II, full square III, open square IV; a small open dot is too faint for a normal ear. Triangles: your numbers, down for systolic, up for diastolic. Dashed: what is true on average.',
  figureSays: (f: { sounds: number; first: number; last: number }, say: Say) =>
    `${say.counted(f.sounds, SOUNDS)} that a normal ear hears, the first at ${say.number(f.first)} mmHg in the cuff, the last at ${say.number(f.last)}.`,
  figureSilent: 'No sound that a normal ear hears.',
  referenceSays: (f: { systolic: number; diastolic: number }, say: Say) =>
    `True: ${say.number(f.systolic)}/${say.number(f.diastolic)} mmHg.`,
  gapSays: (f: { topMmHg: number; bottomMmHg: number }, say: Say) =>
    `Silent gap between ${say.number(f.topMmHg)} and ${say.number(f.bottomMmHg)} mmHg.`,
  markedSays: (f: MmHg & { what: string }, say: Say) => `You marked: ${f.what} ${say.number(f.mmHg)} mmHg.`,
  soundSays: (
    f: { seconds: string; cuff: number; phase: string; isAudible: boolean; db: number },
    say: Say,
  ) =>
    `${f.seconds} s: sound of phase ${f.phase}, ${say.number(f.cuff)} mmHg in the cuff, ${f.isAudible ? `${say.number(f.db)} dB above what a normal ear just hears` : 'too faint for a normal ear'}.`,
  momentSays: (f: MmHg & { what: string; seconds: string | null }, say: Say) =>
    f.seconds === null
      ? `Your ${f.what}: ${say.number(f.mmHg)} mmHg, without a time.`
      : `${f.seconds} s: your ${f.what}, ${say.number(f.mmHg)} mmHg.`,
  momentShort: (f: MmHg & { what: string }, say: Say) => `${f.what} ${say.number(f.mmHg)}`,
  'first sound': 'first sound',
  muffled: 'muffled',
  'last sound': 'last sound',
  'pulse back': 'pulse back',
  cuffAxis: 'In the cuff, mmHg',
  secondsAxis: 'Seconds since the cuff began to fall',
  truthShort: (f: MmHg, say: Say) => `true ${say.number(f.mmHg)}`,
  raisedSays: 'The arm was raised before pumping: the silent gap is shorter for it.',
  gapShort: 'silent gap',
  pulseStrip: 'pulse in the arm, without a scale',
  tableCaption: 'Every sound and every mark, in order of time',
  table: 'Every sound as a table',
  tableSeconds: 'Seconds',
  tableCuff: 'Cuff, mmHg',
  tableWhat: 'What',
  tableLoud: 'Loudness, dB',
  phase: (f: { phase: string }) => `sound, phase ${f.phase}`,
  tooFaint: 'too faint',
  yourMark: (f: { what: string }) => `your ${f.what}`,

  ledger: 'Where the difference came from',
  ledgerHint:
    'Another way to take the same difference apart, for whoever wants it: from what is true on average to what you wrote, as this one letting down went. Its numbers are others than those of the table above, which are the average of twenty falls and begin at what was to be had; for what to do differently go by that table.',
  ledgerFold: 'The same difference step by step, in this one letting down',
  ledgerNoNumber:
    'The table above has no number where this has steps: in this one letting down something was heard, and in some of the twenty about it, with the same faults, nothing was.',
  ledgerFigure: (f: { component: string }) => `From what was true to what you wrote: ${f.component}`,
  ledgerSays: (f: { component: string; truth: number; entered: number; error: number }, say: Say) =>
    `${f.component}: true ${say.number(f.truth, 1)}, written ${say.number(f.entered)}, difference ${signed(f.error, say)} mmHg.`,
  stepSays: (f: MmHg & { label: string }, say: Say) => `${f.label}: ${signed(f.mmHg, say)} mmHg.`,
  stepColumn: 'Step',
  mmHgColumn: 'mmHg',
  truthRow: 'was true',
  enteredRow: 'you wrote',
  signed: (f: MmHg, say: Say) => signed(f.mmHg, say),
  signedWhole: (f: MmHg, say: Say) => signed(f.mmHg, say, 0),
  'part-physiology': 'this beat, not the usual',
  'part-sampling': 'where the cuff was at the beat',
  'part-sampling-low': 'cuff begun too low',
  'part-misheard': 'another sound taken',
  'part-gap': 'the sound after the silence taken',
  'part-imagined': 'marked where there was no sound',
  'part-lag': 'needle read later',
  'part-gauge': 'gauge beside the cuff',
  'part-digit': 'written beside the needle',
  'part-unsplit': 'ear, eye and pen',
  'effect-sitting-down': 'not yet at rest',
  'effect-first-reading': 'first time pumped up',
  'effect-white-coat': 'who measured',
  'effect-standing-up': 'standing',
  'effect-other-arm': 'the other arm',
  'effect-talking': 'talking',
  'effect-legs-crossed': 'legs crossed',
  'effect-back-unsupported': 'back not supported',
  'effect-full-bladder': 'full bladder',
  'effect-caffeine': 'coffee or tea',
  'effect-nicotine': 'smoking',
  'effect-cold': 'cold',
  'effect-arm-muscles': 'arm not supported',
  'effect-arm-height': 'height of the cuff',
  'effect-cuff-size': 'size of the cuff',
  'effect-cuff-loose': 'loose cuff',
  'effect-tight-sleeve': 'tight sleeve',
  'effect-pressed-hard': 'chest piece pressed',
  'effect-under-cuff': 'chest piece under cuff',
  'effect-congestion': 'blood held in the arm',

  replay: 'Hear it again',
  replayHint: 'With headphones or a good loudspeaker; begin low. The noise of the place is in it, too.',
  replayFrom: 'From where in the letting down',
  replayAt: (f: { seconds: string; mmHg: number }, say: Say) =>
    `${f.seconds} s, ${say.number(f.mmHg)} mmHg in the cuff`,
  replayPlay: 'Play',
  replayStop: 'Stop',
  replayFirst: 'Just before the first sound',
  replayMark: (f: { what: string }) => `Just before your ${f.what}`,
  loudness: 'Loudness',
  loudnessSays: (f: { share: number }, say: Say) => say.percent(f.share),
  tooLoud: 'This is loud. Turn it down before you put headphones on.',

  others: 'Pulse and breathing',
  pulseSays: (f: { entered: number; truth: number; felt: number }, say: Say) =>
    Math.round(f.truth) === Math.round(f.felt)
      ? `Pulse: you wrote ${say.rate(f.entered)} a minute; over the minute about it there were ${say.number(f.truth)}.`
      : `Pulse: you wrote ${say.rate(f.entered)} a minute; over the minute about it the heart beat ${say.number(f.truth)} times, ${say.number(f.felt)} of them to be felt at the wrist.`,
  deficitSays: (f: { entered: number; truth: number }, say: Say) =>
    `Beats that do not arrive: ${say.number(f.entered)} a minute by your numbers, ${say.number(f.truth)} in truth. One person counts one after the other, so the two may differ for that alone.`,
  bedsideSays: 'What the bedside says of this run',
  shown: 'The sounds were shown on the screen, not heard: this says nothing of hearing.',
  aidNoSound: 'There was no sound on this device, so this says nothing of hearing.',
  aidLoudspeaker:
    'Heard from a loudspeaker instead of headphones: soft sounds may have been lost, so this says little of hearing.',
  aidHelped: 'Heard with a hearing aid or an amplified stethoscope: that is an adjustment and no fault.',

  artery: 'What the cuff cannot see',
  arterySays: (f: { systolic: number; diastolic: number }, say: Say) =>
    `Inside the artery the pressure was ${say.number(f.systolic)}/${say.number(f.diastolic)} mmHg on average. No cuff shows that, and your reading is not held against it. In 74 studies with 3,073 people the systolic by cuff lay 5.7 mmHg lower and the diastolic 5.5 mmHg higher than in the artery, on average; where arteries are very stiff, differences of 30 to 50 are not uncommon.`,

  errorsFigure: 'Differences over time',
  errorsTable: 'These differences as a table',
  errorsKey:
    'Yours minus what was to be had at that moment. Point down: systolic. Point up: diastolic. Above the line: written too high. Grey band: accepted; an open mark lies outside it. A cross: nothing was written.',
  errorsSays: (f: { exercises: number }, say: Say) =>
    `${say.counted(f.exercises, EXERCISES)}, in the order in which they were made.`,
  errorSays: (
    f: { name: string; systolic: number | null; diastolic: number | null; withinMmHg: number },
    say: Say,
  ) =>
    f.systolic === null && f.diastolic === null
      ? `${f.name}: nothing written.`
      : `${f.name}: systolic ${f.systolic === null ? 'not written' : signed(f.systolic, say)}, diastolic ${f.diastolic === null ? 'not written' : signed(f.diastolic, say)} mmHg; accepted within ${say.short(f.withinMmHg)}.`,
  errorAxis: 'Yours minus to be had, mmHg',
  exerciseColumn: 'Exercise',
  systolicError: 'Systolic, mmHg',
  diastolicError: 'Diastolic, mmHg',
  bandColumn: 'Accepted',
  band: (f: { isAccepted: boolean | null; withinMmHg: number }, say: Say) =>
    f.isAccepted === null
      ? 'nothing written'
      : `${f.isAccepted ? 'yes' : 'no'}, limit ${say.short(f.withinMmHg)} mmHg`,
  errorOfAverage: (f: { readings: number }, say: Say) => `average of ${say.counted(f.readings, READINGS)},`,
  errorOfLast: (f: { readings: number }, say: Say) => `last of ${say.counted(f.readings, READINGS)},`,
  errorNumber: (f: { number: number }, say: Say) => say.number(f.number),
  errorShort: (f: { systolic: number | null; diastolic: number | null }, say: Say) =>
    `off by ${f.systolic === null ? '–' : signed(f.systolic, say, 0)}/${f.diastolic === null ? '–' : signed(f.diastolic, say, 0)}`,
} as const;
