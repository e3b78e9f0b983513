import { meetingIn } from '../artery/meetingIn.js';
import type { BeatStream } from '../heart/beatStream.js';
import { FLAT_MMHG } from '../rig/rig.js';
import type { Arm } from '../sound/arm.js';
import type { Fall } from './fall.js';

const SETTLING_STEPS = 8;
const SETTLED_SECONDS = 1e-9;

/**
 * Where in a beat the climbing pulse and the falling cuff meet. What is found is left in fields and not handed back: a
 * number with a point that goes from call to call is an object to the engine, and there are a thousand of them in a run.
 */
export class Meeting {
  /** The instant, the cuff then, and what of it presses on the artery. */
  atSeconds = Number.NaN;
  cuffMmHg = Number.NaN;
  outside = Number.NaN;

  /** Whether the beat at hand does not come through: the cuff shuts the artery still when the pulse is at its top. */
  isShut(beat: BeatStream, arm: Arm, fall: Fall): boolean {
    const outside = arm.outside(fall.cuffAt(beat.foot + arm.longestOpening(beat)));
    // Most of the beats above the first sound can be told without their pressures.
    if (beat.isSurelyUnder(outside - arm.heardSystolic)) return true;
    beat.finish();
    return outside > beat.systolic + arm.heardSystolic;
  }

  /**
   * Whether the beat at hand surely comes through from its foot on, the cuff under its diastolic: most beats after the last
   * sound can be told so without their pressures. Then it has been found, at the foot.
   */
  isOpenAll(beat: BeatStream, arm: Arm, fall: Fall): boolean {
    const { foot } = beat;
    const cuff = fall.cuffAt(foot);
    const outside = arm.outside(cuff);
    const gap = 2 + Math.max(0, arm.heardDiastolic - arm.heardSystolic);
    if (!beat.isSurelyOver(outside - arm.heardDiastolic, gap)) return false;
    this.atSeconds = foot;
    this.cuffMmHg = cuff;
    this.outside = outside;
    return true;
  }

  /**
   * Whether the beat at hand surely sounds, loud enough for an ear and not muffled, and how late at the latest (then in
   * `atSeconds`): most beats between the first sounds and the last can be told so without their pressures.
   */
  isSurelyHeard(beat: BeatStream, arm: Arm, fall: Fall, thresholdDb: number): boolean {
    const { foot } = beat;
    const latest = foot + arm.longestOpening(beat);
    const cuff = fall.cuffAt(latest);
    if (cuff <= FLAT_MMHG || !beat.bound()) return false;
    this.atSeconds = latest;
    return arm.isSurelyHeard(beat, arm.outside(cuff), arm.outside(fall.cuffAt(foot)), thresholdDb);
  }

  /** For a beat that comes through. */
  find(beat: BeatStream, arm: Arm, fall: Fall): void {
    const { foot } = beat;
    let after = Math.min(arm.opensAfter(beat, arm.outside(fall.cuffAt(foot))), arm.longestOpening(beat));
    // The pressure falls while the pulse climbs: by Steffensen's steps on a falling function.
    for (let step = 0; after > 0; step++) {
      // A fall so fast that the steps jump to and fro over the foot.
      if (step === SETTLING_STEPS) {
        after = this.lateIn(beat, arm, fall);
        break;
      }
      const once = arm.opensAfter(beat, arm.outside(fall.cuffAt(foot + after)));
      const move = once - after;
      if (move < SETTLED_SECONDS && move > -SETTLED_SECONDS) break;
      const twice = arm.opensAfter(beat, arm.outside(fall.cuffAt(foot + once)));
      // Over the top of the pulse: the cuff comes under it only just in time.
      if (twice === Number.POSITIVE_INFINITY) {
        after = this.lateIn(beat, arm, fall);
        break;
      }
      const bend = twice - once - move;
      after = bend === 0 ? twice : after - (move * move) / bend;
    }
    const at = foot + after;
    const cuff = fall.cuffAt(at);
    this.atSeconds = at;
    this.cuffMmHg = cuff;
    this.outside = arm.outside(cuff);
  }

  private lateIn(beat: BeatStream, arm: Arm, fall: Fall): number {
    const climb = (after: number) => arm.opensAfter(beat, arm.outside(fall.cuffAt(beat.foot + after)));
    return meetingIn(0, arm.longestOpening(beat), climb);
  }
}
