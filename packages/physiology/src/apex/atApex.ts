import type { Beating } from '../heart/beating.js';
import type { Person } from '../person/person.js';
import {
  firstSound,
  firstSoundSeconds,
  type HeartSound,
  secondSound,
  secondSoundSeconds,
} from './heartSound.js';

/** Follows the heart sounds of a visit tick by tick, each once, listened to or not. */
export class AtApex {
  isOn = false;
  private lastFirst = -1;
  private lastSecond = -1;

  /**
   * The sounds that have come by now of the beat whose pulse reached the arm last, and of the one that is on its way; the
   * first sound of a beat comes before its pulse is at the arm, and the second before that of the next one is.
   */
  upTo(
    seconds: number,
    arrived: Beating | null,
    coming: Beating,
    person: Person,
    soundKey: number,
    into: HeartSound[],
  ): void {
    const add = (one: HeartSound) => {
      if (this.isOn && one.atSeconds >= person.originSeconds) into.push(one);
    };
    if (
      arrived !== null &&
      arrived.index > this.lastSecond &&
      secondSoundSeconds(arrived, coming.r, person) <= seconds
    ) {
      this.lastSecond = arrived.index;
      add(secondSound(arrived, coming.r, person, soundKey));
    }
    if (coming.index > this.lastFirst && firstSoundSeconds(coming.r) <= seconds) {
      this.lastFirst = coming.index;
      add(firstSound(coming, person, soundKey));
    }
  }

  copyFrom({ isOn, lastFirst, lastSecond }: AtApex): void {
    Object.assign(this, { isOn, lastFirst, lastSecond });
  }
}
