import type { BreathStream } from '../breathing/breathStream.js';
import { Drifts } from '../chance/drifts.js';
import { normalOf } from '../chance/normal.js';
import type { Person } from '../person/person.js';
import { HEART_FIGURES as F } from './figures.js';
import { DRIFT_LANE, type HeartKeys, LANE } from './lanes.js';
import { VARIATION_TARGETS } from './variation.js';
import { BREATH, SLOW, wavesAt } from './waves.js';

/** Time constants of the slow part of the heart period, and how its variance is shared. */
export const DRIFT_SECONDS = [5, 15, 45, 135, 405] as const;
const DRIFT_WEIGHTS = {
  even: [1, 1, 1, 1, 1],
  failing: [1, 1.7, 3, 5, 8],
} as const;
/**
 * Shares of the variance of each time constant that show within five minutes, the span of the targets: 1 minus the mean
 * correlation of the drift with itself over 300 s.
 */
const SEEN_IN_FIVE_MINUTES = [0.971, 0.915, 0.759, 0.406, 0.082] as const;
const DEEPEST_BREATH = 2.5;
// The figures of every beat, looked up once.
const BREATH_SHAPE = F.breathShape.value;
const LARGEST_STEP = F.largestStep.value;
const SHORTEST_SECONDS = F.shortestSeconds.value;

/** The last beat as the next interval is asked for: its R wave, its interval, the breath of its foot, where the slow wave stands. */
export type BeatBefore = {
  /** Of the beat that comes. */
  readonly index: number;
  readonly r: number;
  readonly rr: number;
  readonly breath: BreathStream;
  readonly slowTurns: number;
};

/** The sinus node: breath, slow wave and drift about the rate of the moment. Source: physiology handbook 2.1. */
export class SinusNode {
  private varies = false;
  /** No interval is shorter, seconds. */
  private shortest = 0;
  private key = 0;
  private breathSeconds = 0;
  private slowSeconds = 0;
  private independentSeconds = 0;
  private readonly drifts = new Drifts(DRIFT_SECONDS);
  private readonly weights = new Float64Array(DRIFT_SECONDS.length);

  restart({ scenario, heart }: Person, keys: HeartKeys): void {
    const { rhythm } = scenario;
    this.key = keys.beat;
    this.varies = heart.driftSeconds > 0 || heart.independentSeconds > 0;
    this.slowSeconds = heart.slowSeconds;
    this.independentSeconds = heart.independentSeconds;
    const targets = VARIATION_TARGETS[rhythm.variation];
    const weights = DRIFT_WEIGHTS[targets.drift];
    const seen = weights.reduce((sum: number, w, i) => sum + w * (SEEN_IN_FIVE_MINUTES[i] ?? 0), 0);
    this.drifts.restart(keys.slow, DRIFT_LANE.interval);
    for (let i = 0; i < DRIFT_SECONDS.length; i++)
      this.weights[i] = heart.driftSeconds * Math.sqrt((weights[i] ?? 0) / seen);
    const floor = F.depthFromPerMinute.value;
    const depthFactor =
      Math.max(floor, 60 * targets.breathHz) / Math.max(floor, scenario.breathing.ratePerMinute);
    this.breathSeconds = BREATH_SHAPE * heart.breathSeconds * depthFactor;
    this.shortest = Math.min(SHORTEST_SECONDS, F.sinusLeastShare.value * (60 / rhythm.ratePerMinute));
  }

  /**
   * The interval that follows a beat, seconds.
   * @param usual at the rate of the moment, seconds
   */
  interval({ r, index, breath, slowTurns }: BeatBefore, usual: number): number {
    if (!this.varies) return usual;
    const { drifts, weights } = this;
    let rr = usual;
    const waves = wavesAt(breath.turnsAt(r), slowTurns);
    // Shorter while breathing in: shortest at its end.
    const depth = Math.min(breath.depth, DEEPEST_BREATH);
    rr += this.breathSeconds * depth * (waves[BREATH] as number);
    rr += this.slowSeconds * (waves[SLOW] as number);
    drifts.moveTo(r);
    const { values } = drifts;
    for (let i = 0; i < values.length; i++) rr += (weights[i] as number) * (values[i] as number);
    if (this.independentSeconds > 0) rr += this.independentSeconds * normalOf(this.key, index, LANE.interval);
    return Math.max(rr, this.shortest);
  }

  /** No interval differs more from the last one than a sinus node does. Source: physiology handbook 2.1. */
  limited(rr: number, last: number): number {
    const step = LARGEST_STEP * last;
    const limited = rr > last + step ? last + step : Math.max(rr, last - step);
    return Math.max(limited, this.shortest);
  }

  /** The same where it may: after a premature beat or a pause. */
  unlimited(rr: number): number {
    return Math.max(rr, this.shortest);
  }

  copyFrom(other: SinusNode): void {
    this.varies = other.varies;
    this.shortest = other.shortest;
    this.key = other.key;
    this.breathSeconds = other.breathSeconds;
    this.slowSeconds = other.slowSeconds;
    this.independentSeconds = other.independentSeconds;
    this.drifts.copyFrom(other.drifts);
    this.weights.set(other.weights);
  }
}
