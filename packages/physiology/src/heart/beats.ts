import type { Circumstances } from '../circumstances/circumstances.js';
import type { Person } from '../person/person.js';
import type { Beat } from './beat.js';
import { BeatStream } from './beatStream.js';

/** The beats whose pulse reaches the arm in [fromSeconds, toSeconds). */
export function beats(
  person: Person,
  circumstances: Circumstances,
  fromSeconds: number,
  toSeconds: number,
): Beat[] {
  const stream = new BeatStream();
  stream.restart(person, circumstances, null);
  const found: Beat[] = [];
  for (; stream.foot < toSeconds; stream.next())
    if (stream.foot >= fromSeconds) found.push(beatOf(stream, person));
  return found;
}

/** The beat at hand of a stream, as an object. */
export function beatOf(stream: BeatStream, person: Person): Beat {
  return {
    index: stream.index,
    rSeconds: stream.r,
    footSeconds: stream.foot,
    rrSeconds: stream.rr,
    systolic: stream.systolic,
    diastolic: stream.diastolic,
    arterialSystolic: stream.systolic + person.openingMmHg,
    arterialDiastolic: stream.diastolic - person.closingMmHg,
    strokeFactor: stream.stroke,
    isPremature: stream.isPremature,
    isFelt: stream.isFelt,
  };
}
