import { BreathStream } from '../breathing/breathStream.js';
import type { Circumstances } from '../circumstances/circumstances.js';
import { cuffEffects, preparationEffects, soundEffects } from '../circumstances/effects.js';
import { standingAt } from '../circumstances/standing.js';
import type { Instrument } from '../cuff/instrument.js';
import { instrumentFor } from '../cuff/instrumentFor.js';
import { BeatStream } from '../heart/beatStream.js';
import { HEART_FIGURES } from '../heart/figures.js';
import type { Person } from '../person/person.js';
import { firstReadingCourse, sittingLeft, whiteCoatCourse, whiteCoatShare } from '../slow/alerting.js';
import { SLOW_FIGURES } from '../slow/figures.js';
import type { Effect, Truth } from './truth.js';

/** Over how long the truth is a mean, seconds. */
const WINDOW = 60;
const PARADOX_DIASTOLIC = HEART_FIGURES.breathDiastolicShare.value;

/** What a person really has at an instant, and all that moves a reading with this instrument away from rest. */
export function truth(
  person: Person,
  circumstances: Circumstances,
  atSeconds: number,
  instrument: Instrument = instrumentFor(person.scenario),
): Truth {
  const stream = new BeatStream();
  stream.restart(person, circumstances, null);
  const swing = person.breathingSwingMmHg;
  const overBreath = swing > HEART_FIGURES.paradoxMmHg.value ? swing / 2 : 0;
  const from = atSeconds - WINDOW / 2;
  let n = 0;
  let strong = 0;
  let felt = 0;
  let systolic = 0;
  let diastolic = 0;
  let first = 0;
  let last = 0;
  for (; stream.foot < atSeconds + WINDOW / 2; stream.next()) {
    if (stream.foot < from) continue;
    if (n === 0) first = stream.foot - stream.rr;
    n += 1;
    last = stream.foot;
    if (stream.isFelt) felt += 1;
    if (stream.isWeak) continue;
    strong += 1;
    systolic += stream.systolic + overBreath;
    diastolic += stream.diastolic + PARADOX_DIASTOLIC * overBreath;
  }
  const longRun = { systolic: systolic / strong, diastolic: diastolic / strong };
  const span = last - first;
  const { muffledAboveMmHg, openingMmHg, closingMmHg } = person;
  return {
    atSeconds,
    rest: person.rest,
    longRun,
    arterial: { systolic: longRun.systolic + openingMmHg, diastolic: longRun.diastolic - closingMmHg },
    muffled: muffledAboveMmHg === null ? null : longRun.diastolic + muffledAboveMmHg,
    pulsePerMinute: (60 * n) / span,
    wristPerMinute: (60 * felt) / span,
    breathsPerMinute: breathsAbout(person, circumstances, atSeconds),
    effects: effectsAt(person, circumstances, atSeconds, instrument),
  };
}

function breathsAbout(person: Person, circumstances: Circumstances, atSeconds: number): number {
  const breath = new BreathStream();
  breath.restart(person, circumstances);
  breath.moveTo(Math.max(person.originSeconds, atSeconds - WINDOW / 2));
  const from = breath.start;
  let n = 0;
  while (breath.start < atSeconds + WINDOW / 2) {
    breath.next();
    n += 1;
  }
  return (60 * n) / (breath.start - from);
}

function effectsAt(
  person: Person,
  circumstances: Circumstances,
  seconds: number,
  instrument: Instrument,
): Effect[] {
  return [
    ...courseEffects(person, circumstances, seconds),
    ...preparationEffects(person, circumstances),
    ...cuffEffects(person, circumstances, instrument),
    ...soundEffects(circumstances),
  ].sort((a, b) => Math.abs(b.systolic) - Math.abs(a.systolic));
}

/** Effects that come and go over the visit. */
function courseEffects(person: Person, circumstances: Circumstances, seconds: number): Effect[] {
  const { sittingMmHg, firstReadingMmHg, whiteCoatMmHg } = person.alerting;
  const sitting = sittingMmHg * sittingLeft(circumstances.restMinutes * 60 + seconds);
  const inflated = circumstances.firstInflationSeconds ?? Number.POSITIVE_INFINITY;
  const first = seconds >= inflated ? firstReadingMmHg * firstReadingCourse(seconds - inflated) : 0;
  const coat =
    whiteCoatMmHg *
    whiteCoatShare(circumstances.measuredBy) *
    whiteCoatCourse(circumstances.observerMinutes * 60 + seconds);
  const found: Effect[] = [];
  const add = (code: Effect['code'], systolic: number, diastolic: number) => {
    if (systolic !== 0 || diastolic !== 0) found.push({ code, actsOn: 'person', systolic, diastolic });
  };
  add('sitting-down', sitting, SLOW_FIGURES.sittingDiastolicShare.value * sitting);
  add('first-reading', first, SLOW_FIGURES.firstDiastolicShare.value * first);
  add('white-coat', coat, SLOW_FIGURES.coatDiastolicShare.value * coat);
  const { standing } = person.scenario;
  if (standing !== null && circumstances.posture === 'standing') {
    const minutes = circumstances.standingMinutes + seconds / 60;
    const { rest } = person;
    const { oneMinute, threeMinutes } = standing;
    add(
      'standing-up',
      standingAt(minutes, rest.systolic, oneMinute.systolic, threeMinutes.systolic) - rest.systolic,
      standingAt(minutes, rest.diastolic, oneMinute.diastolic, threeMinutes.diastolic) - rest.diastolic,
    );
  }
  return found;
}
