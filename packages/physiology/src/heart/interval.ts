import { normalOf } from '../chance/normal.js';
import { uniformOf } from '../chance/uniform.js';
import type { PersonLevels } from '../circumstances/personLevels.js';
import { power } from '../exact/exponential.js';
import type { Person } from '../person/person.js';
import { Ectopics } from './ectopics.js';
import { FibrillationBeats, WEAKEST } from './fibrillationBeats.js';
import { HEART_FIGURES as F } from './figures.js';
import { ECTOPIC_LANE, type HeartKeys, LANE } from './lanes.js';
import type { RhythmKind } from './rhythm.js';
import { type BeatBefore, SinusNode } from './sinusNode.js';
import { couplingPlace } from './strength.js';

const WENCKEBACH = [1, 0.94, 0.9, 1.76] as const;
/** A pause of the sinus node, and the beats about a premature one, follow no limit from beat to beat. */
const UNLIMITED_BEATS = 3;
const LEAST_SECONDS = F.leastSeconds.value;

/** From beat to beat by the person's rhythm: the interval, and how strong the beat at its end is. */
export class Interval {
  readonly ectopics = new Ectopics();
  readonly fibrillation = new FibrillationBeats();
  private readonly node = new SinusNode();
  private kind: RhythmKind = 'sinus';
  private rate = 70;
  private beatKey = 0;
  private ectopyKey = 0;
  /** Of a rhythm with a pattern: how far in it. */
  private step = 0;
  private nextPause = 0;

  restart(person: Person, keys: HeartKeys): void {
    const { rhythm } = person.scenario;
    this.kind = rhythm.kind;
    this.rate = rhythm.ratePerMinute;
    this.beatKey = keys.beat;
    this.ectopyKey = keys.ectopy;
    this.step = 0;
    this.node.restart(person, keys);
    this.ectopics.restart(person, keys);
    this.fibrillation.restart(person, keys);
    this.nextPause = person.originSeconds + this.pauseWait(-1);
  }

  /** Of this rhythm on the whole, seconds. @param usual at the rate of rest */
  mean(usual: number): number {
    if (this.kind !== 'wenckebach') return usual;
    return (usual * WENCKEBACH.reduce((sum, part) => sum + part, 0)) / WENCKEBACH.length;
  }

  /** The interval that follows the beat before, seconds. Premature beats and their pauses are decided here. */
  after(before: BeatBefore, { pulseExcess }: PersonLevels): number {
    const usual = 60 / (this.rate + pulseExcess);
    const rr =
      this.kind === 'sinus'
        ? this.node.limited(this.node.interval(before, usual), before.rr)
        : this.ofRhythm(before, usual);
    return Math.max(rr, LEAST_SECONDS);
  }

  private ofRhythm(before: BeatBefore, usual: number): number {
    const { node, ectopics, fibrillation } = this;
    const { index, r } = before;
    ectopics.isPremature = false;
    ectopics.gain = 0;
    switch (this.kind) {
      case 'atrial-fibrillation':
        return fibrillation.law === null ? 60 / this.rate : fibrillation.interval(fibrillation.law, r, index);
      case 'heart-block':
        return (60 / this.rate) * (1 + F.blockSpread.value * normalOf(this.beatKey, index, LANE.interval));
      case 'wenckebach': {
        const place = this.step % WENCKEBACH.length;
        this.step += 1;
        if (place === 3) ectopics.gain = F.longPauseGain.value;
        return node.interval(before, usual) * (WENCKEBACH[place] ?? 1);
      }
      case 'sinus-pauses':
        if (r >= this.nextPause) {
          this.nextPause = r + this.pauseWait(index);
          ectopics.gain = F.longPauseGain.value;
          const span = F.pauseHigh.value - F.pauseLow.value;
          return F.pauseLow.value + span * uniformOf(this.ectopyKey, index, ECTOPIC_LANE.length);
        }
        break;
      case 'bigeminy':
      case 'trigeminy':
      case 'ventricular-ectopics':
      case 'atrial-ectopics': {
        const premature = ectopics.interval(before, node, usual);
        if (premature > 0) return premature;
        break;
      }
    }
    const rr = node.interval(before, usual) + ectopics.turbulent(60 / this.rate);
    return ectopics.since < UNLIMITED_BEATS || this.kind === 'sinus-pauses'
      ? node.unlimited(rr)
      : node.limited(rr, before.rr);
  }

  private pauseWait(index: number): number {
    const span = F.pauseEveryHigh.value - F.pauseEveryLow.value;
    return F.pauseEveryLow.value + span * uniformOf(this.ectopyKey, index, ECTOPIC_LANE.every);
  }

  /** Strength of the beat at hand beside the usual one, by its interval and the one before. */
  strength(index: number, rr: number, before: number): number {
    const { ectopics, fibrillation } = this;
    if (fibrillation.law !== null) return fibrillation.strength(fibrillation.law, index, rr, before);
    if (ectopics.isPremature)
      return Math.max(WEAKEST, power(couplingPlace(ectopics.coupling), F.prematurePower.value));
    return 1 + ectopics.gain + ectopics.alternation();
  }

  copyFrom(other: Interval): void {
    this.kind = other.kind;
    this.rate = other.rate;
    this.beatKey = other.beatKey;
    this.ectopyKey = other.ectopyKey;
    this.step = other.step;
    this.nextPause = other.nextPause;
    this.node.copyFrom(other.node);
    this.ectopics.copyFrom(other.ectopics);
    this.fibrillation.copyFrom(other.fibrillation);
  }
}
