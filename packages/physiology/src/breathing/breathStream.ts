import { normalOf } from '../chance/normal.js';
import { keyOf, uniformOf } from '../chance/uniform.js';
import type { Circumstances } from '../circumstances/circumstances.js';
import { sineOfTurns } from '../exact/circle.js';
import { exp } from '../exact/exponential.js';
import type { Person } from '../person/person.js';
import { sittingLeft } from '../slow/alerting.js';
import { BREATHING_FIGURES as F } from './figures.js';
import type { Breathing, BreathingKind } from './pattern.js';

const LANE = { length: 0, depth: 1, inspiration: 2, still: 3, sigh: 4, cluster: 5, pause: 6 };
const KEPT = Math.sqrt(1 - F.neighbours.value * F.neighbours.value);

/** Spread of length and usual depth of each kind. */
const KINDS: Readonly<Record<BreathingKind, { readonly spread: number; readonly depth: number }>> = {
  rest: { spread: F.restSpread.value, depth: 1 },
  shallow: { spread: F.restSpread.value, depth: F.shallowDepth.value },
  fast: { spread: F.fastSpread.value, depth: F.fastDepth.value },
  'deep-and-fast': { spread: F.deepSpread.value, depth: F.deepDepth.value },
  'cheyne-stokes': { spread: F.clusterSpread.value, depth: 1.4 },
  ataxic: { spread: F.clusterSpread.value, depth: 1 },
  'slow-shallow': { spread: F.slowSpread.value, depth: F.shallowDepth.value },
  wheezing: { spread: F.fastSpread.value, depth: 1 },
  aware: { spread: F.awareSpread.value, depth: 1 },
  paced: { spread: F.pacedSpread.value, depth: 1 },
};

/** The breaths of a person one after the other. Holds the breath at hand in plain numbers; seconds of the visit. */
export class BreathStream {
  index = -1;
  start = 0;
  duration = 1;
  inspiration = 0.4;
  moving = 1;
  depth = 1;
  isSigh = false;

  private key = 0;
  private breathing: Breathing | null = null;
  private kind: BreathingKind = 'rest';
  private spread = 0;
  private usualDepth = 1;
  private perMinute = 14;
  private excessPerMinute = 0;
  private cycleSeconds = 0;
  private restSeconds = 0;
  private last = 0;
  private placeInCluster = 0;
  private clusterSize = 0;
  private owedPause = 0;

  /** To the breath during which the person's origin falls. */
  restart(person: Person, circumstances: Circumstances): void {
    const { breathing } = person.scenario;
    this.breathing = breathing;
    this.key = keyOf(person.beatSeed, 'breath');
    this.usualDepth = KINDS[breathing.kind].depth;
    this.change(circumstances);
    this.excessPerMinute = person.alerting.sittingBreathsPerMinute;
    this.cycleSeconds = breathing.cycleSeconds ?? 0;
    this.index = -1;
    this.last = normalOf(this.key, -1, LANE.length);
    this.placeInCluster = 0;
    this.clusterSize = 0;
    this.owedPause = 0;
    // Somewhere within a cluster, so that a count starts anywhere.
    const before = this.usualSeconds(person.originSeconds) * uniformOf(this.key, -1, LANE.pause);
    this.start = person.originSeconds - before - this.cycleSeconds * uniformOf(this.key, -1, LANE.cluster);
    this.duration = 0;
    this.next();
    while (this.start + this.duration <= person.originSeconds) this.next();
  }

  /** Somebody who talks, or sits down anew, breathes otherwise, from the next breath on. */
  change({ isTalking, restMinutes }: Pick<Circumstances, 'isTalking' | 'restMinutes'>): void {
    const { breathing } = this;
    if (breathing === null) return;
    this.restSeconds = restMinutes * 60;
    this.kind = isTalking && breathing.cycleSeconds === null ? 'aware' : breathing.kind;
    this.spread = KINDS[this.kind].spread;
    this.perMinute = breathing.ratePerMinute * (this.kind === 'aware' ? F.awareRate.value : 1);
  }

  next(): void {
    this.start += this.duration;
    this.index += 1;
    const k = this.index;
    const drawn = normalOf(this.key, k, LANE.length);
    this.last = F.neighbours.value * this.last + KEPT * drawn;
    const usual = this.usualSeconds(this.start);
    // Minus half the variance: so the mean length, and with it the rate, is the one asked for.
    const length = usual * exp(this.spread * this.last - (this.spread * this.spread) / 2);
    this.depth = this.usualDepth;
    if (this.spread >= F.restSpread.value || this.kind === 'fast') {
      const s = F.depthSpread.value;
      this.depth *= exp(s * normalOf(this.key, k, LANE.depth) - (s * s) / 2);
    }
    const mean = this.kind === 'wheezing' ? F.wheezeInspiration.value : F.inspiration.value;
    const share = mean + F.inspirationSd.value * normalOf(this.key, k, LANE.inspiration);
    const still =
      this.kind === 'deep-and-fast' ? 0 : F.longestStill.value * uniformOf(this.key, k, LANE.still);
    this.isSigh =
      (this.kind === 'rest' || this.kind === 'aware') &&
      uniformOf(this.key, k, LANE.sigh) < (F.sighsPerHour.value / 3600) * usual;
    this.moving = length * (1 - still);
    this.duration = length;
    if (this.isSigh) {
      this.depth = this.usualDepth * F.sighDepth.value;
      this.duration += F.sighPause.value * usual;
    }
    this.inspiration = this.moving * (share < 0.15 ? 0.15 : Math.min(share, 0.6));
    if (this.kind === 'cheyne-stokes') this.wax(usual);
    if (this.kind === 'ataxic') this.cluster(usual);
  }

  /** Turns of the breath at an instant within it: 0 to 0.5 in, 0.5 to 1 out, 1 while still. */
  turnsAt(seconds: number): number {
    const t = seconds - this.start;
    if (t <= 0) return 0;
    if (t < this.inspiration) return (0.5 * t) / this.inspiration;
    return t >= this.moving ? 1 : 0.5 + (0.5 * (t - this.inspiration)) / (this.moving - this.inspiration);
  }

  /** On until the breath during which an instant falls. */
  moveTo(seconds: number): void {
    while (this.start + this.duration <= seconds) this.next();
  }

  copyFrom(other: BreathStream): void {
    Object.assign(this, other);
  }

  private usualSeconds(at: number): number {
    return 60 / (this.perMinute + this.excessPerMinute * sittingLeft(this.restSeconds + at));
  }

  /** A cycle of breaths that grow and shrink, and then none. */
  private wax(usual: number): void {
    const waxing = this.cycleSeconds * F.waxingShare.value;
    if (this.placeInCluster >= this.clusterSize) {
      this.clusterSize = Math.max(1, Math.floor(waxing / usual + 0.5));
      this.placeInCluster = 0;
    }
    const length = (this.duration * waxing) / (usual * this.clusterSize);
    const envelope = sineOfTurns((this.placeInCluster + 0.5) / (2 * this.clusterSize));
    this.rescale(length);
    this.depth *= envelope * envelope;
    this.placeInCluster += 1;
    if (this.placeInCluster === this.clusterSize) this.duration += this.cycleSeconds - waxing;
  }

  /** A few equal breaths, and then none for a while that nobody can tell. */
  private cluster(usual: number): void {
    if (this.placeInCluster >= this.clusterSize) {
      const span = F.clusterMost.value - F.clusterLeast.value + 1;
      this.clusterSize =
        F.clusterLeast.value + Math.floor(span * uniformOf(this.key, this.index, LANE.cluster));
      this.placeInCluster = 0;
      const pause = F.stillMostSeconds.value - F.stillLeastSeconds.value;
      this.owedPause = F.stillLeastSeconds.value + pause * uniformOf(this.key, this.index, LANE.pause);
    }
    this.rescale(Math.min(this.duration, usual * 1.2));
    this.placeInCluster += 1;
    if (this.placeInCluster === this.clusterSize) this.duration += this.owedPause;
  }

  private rescale(length: number): void {
    const by = length / this.duration;
    this.duration = length;
    this.moving *= by;
    this.inspiration *= by;
  }
}
