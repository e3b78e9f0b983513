import type { Drift } from '../chance/drift.js';
import { MOST_SD, normalBound } from '../chance/normal.js';
import type { Person } from '../person/person.js';
import { HEART_FIGURES as F } from './figures.js';
import { type HeartKeys, LANE } from './lanes.js';
import type { BeatAtHand } from './pressures.js';

/** More than all roundings of a sum of pressures. */
const ROUNDING_MMHG = 1e-6;
const DEEPEST_BREATH = 2;
const BREATH_DIASTOLIC_SHARE = F.breathDiastolicShare.value;
const SLOW_DIASTOLIC_SHARE = F.slowDiastolicShare.value;

/**
 * What can be said of the pressures of a beat before they are made, from its levels: of most beats of a let-down that is
 * enough. Only of a rhythm without weak beats and without memory.
 */
export class PressureBounds {
  /** No less, and no more: see `make`. */
  leastSystolic = Number.NaN;
  mostDiastolic = Number.NaN;
  private hasAny = false;
  private key = 0;
  /** Of the breath, and how far the slow wave can move a systolic either way with all roundings, mmHg. */
  private swing = Number.NaN;
  private isParadox = false;
  private waveReach = Number.NaN;
  private slowSd = Number.NaN;
  private systolicSd = Number.NaN;
  private diastolicSd = Number.NaN;

  restart(person: Person, keys: HeartKeys): void {
    this.key = keys.beat;
    this.hasAny = person.scenario.rhythm.kind === 'sinus';
    this.swing = Math.abs(person.breathingSwingMmHg);
    this.isParadox = person.breathingSwingMmHg > F.paradoxMmHg.value;
    this.waveReach = Math.abs(person.slowWaveMmHg) + ROUNDING_MMHG;
    this.slowSd = person.slowSdMmHg;
    this.systolicSd = Math.abs(person.beatSdMmHg);
    this.diastolicSd = Math.abs(person.beatDiastolicSdMmHg);
  }

  /** Whether the systolic lies under a pressure whatever breath and waves do to it. */
  isSurelyUnder(beat: BeatAtHand, drift: Drift, mmHg: number): boolean {
    const { levels } = beat;
    if (!this.hasAny || mmHg <= levels.systolic) return false;
    drift.moveTo(beat.foot);
    const slow = this.slowSd * drift.value;
    const chance = this.systolicSd * normalBound(this.key, beat.index, LANE.systolic);
    return mmHg > levels.systolic + slow + this.breathReach(beat) + this.waveReach + chance;
  }

  /** Whether the diastolic surely lies over a pressure, and the systolic over the diastolic by more than `gapMmHg`. */
  isSurelyOver(beat: BeatAtHand, drift: Drift, mmHg: number, gapMmHg: number): boolean {
    const { levels } = beat;
    if (!this.hasAny || mmHg >= levels.diastolic) return false;
    drift.moveTo(beat.foot);
    const slow = this.slowSd * drift.value;
    const breath = this.breathReach(beat);
    const above = breath + this.waveReach + this.systolicSd * MOST_SD;
    const chance = this.diastolicSd * normalBound(this.key, beat.index, LANE.diastolic);
    const about =
      BREATH_DIASTOLIC_SHARE * breath + SLOW_DIASTOLIC_SHARE * this.waveReach + ROUNDING_MMHG + chance;
    const middle = levels.diastolic + SLOW_DIASTOLIC_SHARE * slow;
    const systolic = levels.systolic + slow - above;
    return mmHg < middle - about && systolic - gapMmHg > middle + about;
  }

  /** Bounds into `leastSystolic` and `mostDiastolic`; false where there are none. */
  make(beat: BeatAtHand, drift: Drift): boolean {
    if (!this.hasAny) return false;
    const { levels, index } = beat;
    drift.moveTo(beat.foot);
    const slow = this.slowSd * drift.value;
    const breath = this.breathReach(beat);
    const systolic = this.systolicSd * normalBound(this.key, index, LANE.systolic);
    this.leastSystolic = levels.systolic + slow - breath - this.waveReach - systolic;
    const diastolic = this.diastolicSd * normalBound(this.key, index, LANE.diastolic);
    const about = BREATH_DIASTOLIC_SHARE * breath + SLOW_DIASTOLIC_SHARE * this.waveReach + ROUNDING_MMHG;
    this.mostDiastolic = levels.diastolic + SLOW_DIASTOLIC_SHARE * slow + about + diastolic;
    return true;
  }

  /** How far the breath at hand can move a systolic from its level either way, mmHg. */
  private breathReach({ breath }: BeatAtHand): number {
    return this.isParadox ? this.swing : 0.5 * this.swing * Math.min(breath.depth, DEEPEST_BREATH);
  }

  copyFrom(other: PressureBounds): void {
    Object.assign(this, other);
  }
}
