import { Drift } from '../chance/drift.js';
import { normalOf } from '../chance/normal.js';
import { uniformOf } from '../chance/uniform.js';
import { log } from '../exact/exponential.js';
import type { Person } from '../person/person.js';
import { type FibrillationLaw, fibrillationLaw } from './fibrillation.js';
import { HEART_FIGURES as F } from './figures.js';
import { DRIFT_LANE, type HeartKeys, LANE } from './lanes.js';
import { DRIFT_SECONDS } from './sinusNode.js';
import { filling } from './strength.js';

/** Which of the slow parts of the heart period moves the intervals. */
const DRIFT = 1;
/** No beat is weaker. */
export const WEAKEST = 0.02;

/** The beats of atrial fibrillation: each interval for itself about a slow course, each beat as strong as it was filled. Source: physiology handbook 2.3. */
export class FibrillationBeats {
  /** Null: another rhythm. */
  law: FibrillationLaw | null = null;
  private key = 0;
  private beatKey = 0;
  private readonly drift = new Drift();

  restart({ scenario: { rhythm } }: Person, keys: HeartKeys): void {
    const { kind, ratePerMinute } = rhythm;
    this.law = kind === 'atrial-fibrillation' ? fibrillationLaw(ratePerMinute) : null;
    if (this.law === null) return;
    this.key = keys.fibrillation;
    this.beatKey = keys.beat;
    this.drift.restart(keys.slow, DRIFT_LANE.interval + DRIFT, DRIFT_SECONDS[DRIFT]);
  }

  interval(law: FibrillationLaw, r: number, index: number): number {
    this.drift.moveTo(r);
    const slow = law.slowMean + law.slowSd * this.drift.value;
    const rr = slow - log(uniformOf(this.key, index)) / law.tailPerSecond;
    return Math.max(rr, F.fibrillationFloorSeconds.value);
  }

  /** Beside the usual one, by the interval before the beat and the one before that. */
  strength(law: FibrillationLaw, index: number, rr: number, before: number): number {
    const fill = filling(rr, law.fillingFrom) / law.meanFilling;
    const older = 1 - F.beforeLastWeight.value * (before / law.meanSeconds - 1);
    const noise = 1 + F.strokeNoise.value * normalOf(this.beatKey, index, LANE.stroke);
    return Math.max(fill * older * noise, WEAKEST);
  }

  copyFrom(other: FibrillationBeats): void {
    this.law = other.law;
    this.key = other.key;
    this.beatKey = other.beatKey;
    this.drift.copyFrom(other.drift);
  }
}
