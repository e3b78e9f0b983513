import type { Circumstances } from '../circumstances/circumstances.js';
import { type Beating, keptBeat } from '../heart/beating.js';
import { BeatStream } from '../heart/beatStream.js';
import type { Person } from '../person/person.js';
import { SOUND_FIGURES } from '../sound/figures.js';
import { contourOf } from './contour.js';
import { heightWithin, pressureWithin } from './pressureWithin.js';
import type { ArterySite } from './waveShape.js';

/** How much later than at the elbow the pulse comes by. */
const lateAt = (site: ArterySite) => (site === 'radial' ? SOUND_FIGURES.wristAfterSeconds.value : 0);

/**
 * Pressure inside an artery, mmHg, at `perSecond` points a second from an instant on: the pulse as a needle in the
 * artery would draw it. The pulse of the wrist comes later and has its own contour; the cuff plays no part.
 */
export function arterialTrace(
  person: Person,
  circumstances: Circumstances,
  fromSeconds: number,
  toSeconds: number,
  perSecond: number,
  site: ArterySite = 'brachial',
): Float64Array {
  const points = new Float64Array(Math.max(0, Math.floor((toSeconds - fromSeconds) * perSecond + 1e-9) + 1));
  const contour = contourOf(person.scenario.waveShape, site);
  const { openingMmHg, closingMmHg } = person;
  eachPoint(
    person,
    circumstances,
    fromSeconds - lateAt(site),
    points.length,
    perSecond,
    (i, since, beat, next) => {
      points[i] = pressureWithin(
        contour,
        since,
        next.foot - beat.foot,
        beat.stretch,
        beat.diastolic - closingMmHg,
        beat.systolic + openingMmHg,
        next.diastolic - closingMmHg,
      );
    },
  );
  return points;
}

/** Pressure inside an artery at an instant, mmHg. */
export function arterialPressure(
  person: Person,
  circumstances: Circumstances,
  atSeconds: number,
  site: ArterySite = 'brachial',
): number {
  return arterialTrace(person, circumstances, atSeconds, atSeconds, 1, site)[0] ?? Number.NaN;
}

/**
 * What a finger on an open wrist feels at an instant: 0 between beats, about 1 at the top of a usual beat; 0 for a beat
 * too weak to be felt.
 */
export function wristPulse(person: Person, circumstances: Circumstances, atSeconds: number): number {
  const contour = contourOf(person.scenario.waveShape, 'radial');
  let felt = 0;
  eachPoint(person, circumstances, atSeconds - lateAt('radial'), 1, 1, (_, since, beat, next) => {
    if (beat.isFelt) felt = beat.stroke * heightWithin(contour, since, next.foot - beat.foot, beat.stretch);
  });
  return felt;
}

/** Calls back for each point with the time since the foot of its beat, that beat and the next one. */
function eachPoint(
  person: Person,
  circumstances: Circumstances,
  from: number,
  count: number,
  perSecond: number,
  at: (i: number, since: number, beat: Beating, next: Beating) => void,
): void {
  const next = new BeatStream();
  next.restart(person, circumstances, null);
  let beat = { ...keptBeat(next), foot: next.foot - next.rr };
  for (let i = 0; i < count; i++) {
    const seconds = from + i / perSecond;
    while (next.foot <= seconds) {
      beat = keptBeat(next);
      next.next();
    }
    at(i, Math.max(0, seconds - beat.foot), beat, next);
  }
}
