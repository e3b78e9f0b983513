import { keyOf } from '../chance/uniform.js';
import type { Circumstances } from '../circumstances/circumstances.js';
import { type Beating, keptBeat } from '../heart/beating.js';
import { BeatStream } from '../heart/beatStream.js';
import type { Person } from '../person/person.js';
import { firstSound, firstSoundSeconds, type HeartSound, secondSound } from './heartSound.js';

/** The heart sounds that fall in [fromSeconds, toSeconds), in order of time: what a chest piece at the apex hears then. */
export function heartSounds(
  person: Person,
  circumstances: Circumstances,
  fromSeconds: number,
  toSeconds: number,
): HeartSound[] {
  const stream = new BeatStream();
  stream.restart(person, circumstances, null);
  const soundKey = keyOf(person.beatSeed, 'ksound');
  const found: HeartSound[] = [];
  const add = (one: HeartSound) => {
    if (one.atSeconds >= fromSeconds && one.atSeconds < toSeconds) found.push(one);
  };
  let before: Beating | null = null;
  while (before === null || firstSoundSeconds(before.r) < toSeconds) {
    if (before !== null) add(secondSound(before, stream.r, person, soundKey));
    add(firstSound(stream, person, soundKey));
    before = keptBeat(stream);
    stream.next();
  }
  return found;
}
