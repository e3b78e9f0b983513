import type { Say } from '../../say.js';

/** How high above the loss of the pulse the cuff goes, and how long the arm rests before it goes up again, by the protocol. */
type Margin = { marginMmHg: number };
type Waits = { afterFeelingSeconds: number; afterReadingSeconds: number };

const TIMES = { one: 'time', other: 'times' };
/** The numbers of one thing that was not as it should be, by their names. */
type Figures = Readonly<Record<string, number>>;

function at(f: Figures, key: string, say: Say): string {
  return say.number(f[key] ?? Number.NaN);
}

function seconds(f: Figures, key: string, say: Say): string {
  return `${at(f, key, say)} s`;
}

/** What was not done as it should be in an exercise, and what to do instead. */
export const debriefFaults = {
  'fault-too-little-rest': 'Too little rest before',
  'fault-talking': 'Talking during the reading',
  'fault-legs-crossed': 'Legs crossed',
  'fault-back-unsupported': 'Back not supported',
  'fault-full-bladder': 'Full bladder',
  'fault-caffeine': 'Coffee or tea shortly before',
  'fault-nicotine': 'Smoked shortly before',
  'fault-cold': 'In the cold',
  'fault-arm-unsupported': 'Arm not supported',
  'fault-arm-height': 'Cuff not at the height of the heart',
  'fault-cuff-loose': 'Cuff wrapped loosely',
  'fault-over-sleeve': 'Cuff over clothing',
  'fault-tight-sleeve': 'Sleeve rolled up tightly above the cuff',
  'fault-pressed-hard': 'Chest piece pressed hard',
  'fault-under-cuff': 'Chest piece under the cuff',
  'fault-chest-piece-off': 'Chest piece beside the artery',
  'fault-pumped-again': 'Pumped up again on the way down',
  'fault-beginner-fingers': 'The pulse felt with unpractised fingers',
  'fault-cuff-size': 'Cuff of the wrong size',
  'fault-gauge-off': 'Gauge that shows wrong',
  'fault-hose-leaks': 'Hose or cuff that leaks',
  'fault-too-fast': 'Let down too fast',
  'fault-too-slow': 'Let down too slowly',
  'fault-margin-small': 'Pumped too little above where the pulse was felt to go',
  'fault-not-felt-first': 'Not felt first where the pulse goes, and pumped too little',
  'fault-began-in-sounds': 'Sounds were there from the first beat on',
  'fault-chest-piece-away': 'Not listening the whole way',
  'fault-read-late': 'Needle read late',
  'fault-silent-gap':
    'Fell into the silent gap: the first sound after the silence was taken for the first of all',
  'fault-misheard': 'Another sound taken for the first or the last',
  'fault-digit-habit': 'Not written to the nearest mark',
  'fault-on-no-sound': 'Marked where there was no sound',
  'fault-misread-needle': 'Another number written than the needle showed',
  'fault-parallax': 'Needle looked at from the side',
  'fault-off-the-sound': 'Number away from the sound, and not marked in time',
  'fault-not-heard': 'Faint sounds that did not reach this ear',
  'fault-noise': 'Noise of the place',

  'do-rest-five-minutes': 'Let the person sit quietly for five minutes first.',
  'do-ask-for-silence': 'Ask for silence, and keep it yourself.',
  'do-feet-flat': 'Ask for both feet flat on the floor.',
  'do-support-back': 'Let the back lean on the chair.',
  'do-empty-bladder-first': 'Offer the toilet first.',
  'do-wait-after-caffeine': 'Wait half an hour after coffee or tea.',
  'do-wait-after-smoking': 'Wait half an hour after smoking.',
  'do-warm-room': 'Measure in a warm room.',
  'do-support-arm': 'Rest the arm on something.',
  'do-arm-at-heart': 'Bring the middle of the cuff to the height of the heart.',
  'do-wrap-snugly': 'Wrap the cuff so that a finger or two just fit under it.',
  'do-bare-arm': 'Bare the arm.',
  'do-take-sleeve-off': 'Take the sleeve off rather than rolling it up.',
  'do-press-lightly': 'Let the chest piece lie lightly, all of its rim on the skin.',
  'do-beside-the-cuff': 'Place the chest piece below the edge of the cuff.',
  'do-over-the-artery': 'Feel for the artery and place the chest piece over it.',
  'do-empty-and-wait': (f: Waits, say: Say) =>
    `Let all the air out and wait ${say.short(f.afterReadingSeconds)} s before pumping up again.`,
  'do-measure-the-arm': 'Measure the arm and choose the cuff by it.',
  'do-check-the-gauge':
    'Look at the zero of the gauge before you begin: take another in place of one that is off, and have that one checked.',
  'do-check-the-hose':
    'With the valve shut, see whether the needle stays where it is; else take another cuff and hose, and have this one mended.',
  'do-look-straight-on': 'Bring the gauge to your eye and look at it straight on.',
  'do-two-to-three-a-second':
    'Let the cuff down by 2 to 3 mmHg a second, and where the pulse is slow or irregular by no more than 2 mmHg for each beat.',
  'do-feel-and-add-thirty': (f: Margin, say: Say) =>
    `Feel where the pulse goes, and pump ${say.short(f.marginMmHg)} mmHg above that.`,
  'do-feel-lightly': 'Feel with two or three warm fingertips, lightly, and wait for the beat.',
  'do-feel-first': (f: Margin, say: Say) =>
    `Feel at the wrist where the pulse goes, let all the air out, wait a little, and pump ${say.short(f.marginMmHg)} mmHg above that.`,
  'do-let-out-and-higher': (f: Margin, say: Say) =>
    `Where sounds come at once, let all the air out, wait, and pump ${say.short(f.marginMmHg)} mmHg higher.`,
  'do-wait-for-the-sound':
    'Go by the sound and not by the swing of the needle: the first of two that follow each other, and the last that you hear.',
  'do-listen-from-above':
    'Listen from above where the pulse was felt to go, which you pumped high enough for, and keep the first sound that you hear there: those that come back after a silence are not the first.',
  'do-feel-and-listen-from-above': (f: Margin, say: Say) =>
    `Feel where the pulse goes, pump ${say.short(f.marginMmHg)} mmHg above that, listen from there, and keep the first sound: those that come back after a silence are not the first.`,
  'do-no-time-for-that': 'Nothing: with somebody who cannot wait there was no time for that.',
  'do-read-the-scale': 'Look straight at the gauge, and read the mark under the needle twice.',
  'do-mark-in-time': 'Mark each sound as you hear it.',
  'do-keep-listening': 'Keep the chest piece on from before the first sound until well after the last.',
  'do-eye-on-the-needle': 'Keep the eye on the needle, and take its place at the sound itself.',
  'do-first-of-two-last-of-all':
    'Take the first of two sounds that follow each other, and the very last one.',
  'do-nearest-mark': 'Write the nearest mark of the gauge, whatever digit it ends in.',
  'do-amplify-or-feel':
    'Use an amplified stethoscope or your hearing aid, which is no fault, or take the systolic by feel.',
  'do-amplify-too':
    'With the hearing aid in, use an amplified stethoscope too, which is no fault, or take the systolic by feel.',
  'do-aid-too': 'Wear your hearing aid too if you have one, which is no fault, or take the systolic by feel.',
  'do-feel-instead': 'Take the systolic by feel, and say that you did.',
  'do-measure-first':
    'Put the cuff on, pump it up and listen or feel while it goes down; a number that was not measured is not written.',
  'do-sound-on':
    'Turn the sound on before you pump up, or have the sounds shown; what was not heard is not written.',
  'do-keep-fingers-on':
    'Lay your fingers on the wrist before you pump up, and keep them there until the pulse has come back; what was not felt is not written.',
  'do-quiet-place': 'Find a quieter place, or take the systolic by feel and say so.',

  conduct: 'What else was not as it should be',
  'conduct-not-told': 'Something here had to be told at once, and you said that it can wait',
  'conduct-muffled-not-written':
    'The sounds went on far below, and the number at which they became muffled was not written',
  'conduct-nothing-measured':
    'Nothing was measured: no cuff was pumped up and let down, and numbers were written all the same',
  'conduct-nothing-in-ears': 'No sound was on and none was shown, and numbers were written all the same',
  'conduct-nothing-felt': 'No pulse had come back under your fingers, and a number was written all the same',
  'conduct-nothing-to-hear': 'In this fall nobody could have heard a sound',
  'conduct-felt-not-first': 'Nobody felt first where the pulse goes; this time it cost nothing',
  'conduct-arm-not-rested': (f: Figures, say: Say) =>
    `The cuff went up again after ${seconds(f, 'waitedSeconds', say)}, where ${seconds(f, 'neededSeconds', say)} of rest are due; it had been up ${say.counted(f.inflations ?? 0, TIMES)} before`,
  'conduct-held-on-the-way': (f: Figures, say: Say) =>
    `The cuff was held at ${at(f, 'mmHg', say)} mmHg for ${seconds(f, 'heldSeconds', say)} in the middle of the sounds`,
  'conduct-pumped-too-high': (f: Figures, say: Say) =>
    `Pumped up to ${at(f, 'mmHg', say)} mmHg${(f.times ?? 1) > 1 ? ` (as high ${say.counted(f.times ?? 1, TIMES)})` : ''}, where ${at(f, 'neededMmHg', say)} was enough`,
  'conduct-pulse-miscounted': (f: Figures, say: Say) =>
    `Pulse: you counted ${at(f, 'n', say)} in ${seconds(f, 'windowSeconds', say)}, and there were ${at(f, 'there', say)}`,
  'conduct-pulse-window-short': (f: Figures, say: Say) =>
    `Pulse counted for ${seconds(f, 'windowSeconds', say)}, where ${seconds(f, 'neededSeconds', say)} are due`,
  'conduct-apex-not-counted': (f: Figures, say: Say) =>
    `The heart beat ${at(f, 'deficitPerMinute', say)} times a minute more than the wrist felt, and nobody listened at the apex`,
  'conduct-apex-miscounted': (f: Figures, say: Say) =>
    `At the apex you counted ${at(f, 'n', say)} in ${seconds(f, 'windowSeconds', say)}, and there were ${at(f, 'there', say)}`,
  'conduct-apex-window-short': (f: Figures, say: Say) =>
    `Counted at the apex for ${seconds(f, 'windowSeconds', say)}, where ${seconds(f, 'neededSeconds', say)} are due`,
  'conduct-breaths-miscounted': (f: Figures, say: Say) =>
    `Breaths: you counted ${at(f, 'n', say)} in ${seconds(f, 'windowSeconds', say)}, and there were ${at(f, 'there', say)}`,
  'conduct-breaths-window-short': (f: Figures, say: Say) =>
    `Breaths counted for ${seconds(f, 'windowSeconds', say)}, where ${seconds(f, 'neededSeconds', say)} are due`,
  'conduct-pulse-rhythm-not-said': 'The pulse was irregular, and that was not noted',
  'conduct-breaths-rhythm-not-said': 'The breathing was irregular, and that was not noted',
  'conduct-not-marked':
    'When each sound was heard was not marked, so what was ear, eye or memory cannot be told apart',
  'conduct-first-not-marked':
    'Only your last sound was marked in time, and your diastolic is judged by that mark; your systolic was typed without one, so of it what was ear, eye or memory cannot be told apart',
  'conduct-last-not-marked':
    'Only your first sound was marked in time, and your systolic is judged by that mark; your diastolic was typed without one, so of it what was ear, eye or memory cannot be told apart',
  'do-tell-at-once': 'Tell somebody at once, by your own local procedure.',
  'do-three-numbers': 'Where the sounds go on, write three numbers: first, muffled, last.',
  'do-by-feel': 'Take the systolic by feel, and say so.',
  'do-rest-the-arm': (f: Waits, say: Say) =>
    `Let all the air out and let the arm rest: ${say.short(f.afterFeelingSeconds)} s after feeling, ${say.short(f.afterReadingSeconds)} s after a reading.`,
  'do-never-stop': 'Let the cuff down evenly, without stopping: blood held in the arm changes the sounds.',
  'do-no-higher': (f: Margin, say: Say) =>
    `Pump in steps and stop ${say.short(f.marginMmHg)} mmHg above where the pulse goes: higher hurts.`,
  'do-count-every-beat': 'Keep the finger still, and count every beat until the window ends.',
  'do-count-longer-pulse':
    'Count for longer: half a minute at least, a full one where the pulse is slow, fast or uneven.',
  'do-count-at-apex':
    'Where the pulse is uneven listen at the apex too, for a full minute, and report both numbers and what lies between them.',
  'do-count-each-pair': 'Count each pair of sounds as one beat, until the window ends.',
  'do-count-full-minute': 'At the apex count a full minute.',
  'do-count-whole-breaths': 'Count each rise of the chest once, until the window ends.',
  'do-say-irregular': 'Note beside the rate that it was irregular.',
  'do-count-longer-breaths': 'Count the breaths for a full minute.',
  'lesson-by-feel': 'Take the systolic by feel, and write it as such.',
  'lesson-pulse-full-minute': 'Count the pulse for a full minute.',
  'lesson-breaths-full-minute': 'Count the breaths for a full minute.',
  'lesson-apex-rate': 'Count at the apex too, for a full minute, and write both rates.',
  'lesson-pulse-irregular': 'Say that the pulse is irregular.',
  'lesson-breaths-irregular': 'Say that the breathing is irregular.',
  'lesson-pulse-weak': 'Say that the pulse is weak.',
  'lesson-pulse-strong': 'Say that the pulse is strong.',
  'lesson-three-readings': 'Take three readings: one says little where no two beats are alike.',
  'lesson-standing-readings': 'Measure again after one and three minutes on the feet.',
  'lesson-other-arm': 'Measure the other arm too.',
  'lesson-noise-of-place': 'Find a quieter place, or take the systolic by feel and say so.',
  'lesson-pulse-rate': 'Count the pulse.',
  'lesson-breaths-rate': 'Count the breaths.',
  'lesson-temperature': 'Take the temperature.',
} as const;
