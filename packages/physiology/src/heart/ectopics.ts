import { normalOf } from '../chance/normal.js';
import { uniformOf } from '../chance/uniform.js';
import type { Person } from '../person/person.js';
import { HEART_FIGURES as F } from './figures.js';
import { ECTOPIC_LANE, type HeartKeys } from './lanes.js';
import type { RhythmKind } from './rhythm.js';
import type { BeatBefore, SinusNode } from './sinusNode.js';

/** Beats after a pause in which the sinus node is still unsettled, and in which a failing heart beats strong and weak. */
const TURBULENT_BEATS = 8;
const ALTERNATING_BEATS = 5;
/** No other premature beat comes sooner after one than so many beats. */
const APART_BEATS = 3;
/** Long after the last one. */
const LONG_AGO = 9;

/** Premature beats, the pauses after them, and what the heart does after those. Source: physiology handbook 2.2. */
export class Ectopics {
  isPremature = false;
  /** How early the premature beat at hand came, as a share of an interval. */
  coupling = 1;
  /** Of a beat after a pause: how much stronger. */
  gain = 0;
  /** Beats since the last one. */
  since = LONG_AGO;
  private kind: RhythmKind = 'sinus';
  private key = 0;
  private perMinute = 0;
  private fixedCoupling: number | null = null;
  private isFailing = false;
  private owedSeconds = 0;
  private turbulence = 0;
  private turbulenceLeft = 0;
  private alternating = 0;

  restart({ scenario: { rhythm, traits } }: Person, keys: HeartKeys): void {
    this.kind = rhythm.kind;
    this.key = keys.ectopy;
    this.perMinute = rhythm.ectopicsPerMinute ?? 0;
    this.fixedCoupling = rhythm.coupling;
    this.isFailing = traits.isFailing;
    this.isPremature = false;
    this.gain = 0;
    this.since = LONG_AGO;
    this.owedSeconds = 0;
    this.turbulence = 0;
    this.turbulenceLeft = 0;
    this.alternating = 0;
  }

  /**
   * The interval to a premature beat, or the pause after one; 0 where the sinus node has its turn.
   * @param usual at the rate of the moment, seconds
   */
  interval(before: BeatBefore, node: SinusNode, usual: number): number {
    if (this.owedSeconds > 0) return this.pause(before.index, usual);
    this.since += 1;
    const { kind, key } = this;
    const { index } = before;
    if (!this.isDue(index, usual)) return 0;
    const drawn = F.couplingMean.value + F.couplingSd.value * normalOf(key, index, ECTOPIC_LANE.coupling);
    const low = F.couplingLow.value;
    const high = F.couplingHigh.value;
    const coupling = this.fixedCoupling ?? (drawn < low ? low : Math.min(drawn, high));
    const sinus = kind === 'bigeminy' ? usual : node.interval(before, usual);
    this.isPremature = true;
    this.coupling = coupling;
    const isInterpolated =
      kind !== 'bigeminy' && uniformOf(key, index, ECTOPIC_LANE.interpolated) < F.interpolatedShare.value;
    this.owedSeconds = isInterpolated
      ? sinus * (1 - coupling)
      : kind === 'atrial-ectopics'
        ? sinus + F.atrialResetSeconds.value
        : sinus * (2 - coupling);
    return coupling * sinus;
  }

  private isDue(index: number, usual: number): boolean {
    if (this.kind === 'bigeminy') return true;
    if (this.kind === 'trigeminy') return this.since >= 2;
    return (
      this.since > APART_BEATS &&
      uniformOf(this.key, index, ECTOPIC_LANE.happens) < (this.perMinute * usual) / 60
    );
  }

  private pause(index: number, usual: number): number {
    const pause = this.owedSeconds;
    this.owedSeconds = 0;
    this.since = 0;
    const { isFailing } = this;
    const mean = isFailing ? F.afterPauseGainFailing.value : F.afterPauseGain.value;
    const sd = isFailing ? F.afterPauseGainFailingSd.value : F.afterPauseGainSd.value;
    if (pause > usual && this.kind !== 'bigeminy') {
      this.gain = mean + sd * normalOf(this.key, index, ECTOPIC_LANE.gain);
      this.turbulenceLeft = TURBULENT_BEATS;
      if (isFailing) this.alternating = ALTERNATING_BEATS;
    }
    return pause;
  }

  /** Change of the sinus interval in the beats after a pause, seconds. @param atRest the interval at the rate of rest */
  turbulent(atRest: number): number {
    if (this.turbulenceLeft === 0) {
      this.turbulence = 0;
      return 0;
    }
    const beats = TURBULENT_BEATS - this.turbulenceLeft;
    this.turbulenceLeft -= 1;
    if (beats < 2) {
      const onset = this.isFailing ? F.turbulenceOnsetFailing.value : F.turbulenceOnset.value;
      this.turbulence = -onset * atRest;
    } else {
      this.turbulence += this.isFailing ? F.turbulenceSecondsFailing.value : F.turbulenceSeconds.value;
    }
    return this.turbulence;
  }

  /** Strong and weak in turn after a pause of a failing heart: what it adds to the beat at hand, which is then over. */
  alternation(): number {
    if (this.alternating === 0) return 0;
    const added = this.alternating % 2 === 0 ? 0.1 : -0.1;
    this.alternating -= 1;
    return added;
  }

  copyFrom(other: Ectopics): void {
    Object.assign(this, other);
  }
}
