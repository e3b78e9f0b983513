import type { BreathStream } from '../breathing/breathStream.js';
import type { Drift } from '../chance/drift.js';
import { normalOf } from '../chance/normal.js';
import { uniformOf } from '../chance/uniform.js';
import type { PersonLevels } from '../circumstances/personLevels.js';
import type { Person } from '../person/person.js';
import { HEART_FIGURES as F } from './figures.js';
import { type HeartKeys, LANE } from './lanes.js';
import { Reservoir } from './reservoir.js';
import type { RhythmKind } from './rhythm.js';
import { BREATH, SLOW, wavesAt } from './waves.js';

/** Far beyond five SD of everything that lowers a diastolic in a regular rhythm, and after the longest pause. */
const LOWEST_BELOW_MMHG = 16;
const LOWEST_BELOW_AFTER_PAUSE_MMHG = 80;
const DEEPEST_BREATH = 2;
/** How much of a pulse pressure a weak beat of a pattern falls short at its top, where the scenario does not say. */
const WEAK_TOP_SHARE = 0.6;
const LEAST_PULSE_MMHG = 1;
// The figures of every beat, looked up once.
const SLOW_WAVE_LAG_TURNS = F.mayerHz.value * F.slowWaveLagSeconds.value;
const BREATH_DIASTOLIC_SHARE = F.breathDiastolicShare.value;
const SLOW_DIASTOLIC_SHARE = F.slowDiastolicShare.value;
const PARADOX_MMHG = F.paradoxMmHg.value;
const FELT_SHARE = F.feltShare.value;

/** A beat whose pressures are asked for. */
export type BeatAtHand = {
  readonly index: number;
  readonly foot: number;
  readonly rr: number;
  readonly isPremature: boolean;
  readonly breath: BreathStream;
  readonly levels: PersonLevels;
  readonly slowTurns: number;
};

/** Systolic and diastolic of a beat: its level, breath, slow wave, chance, and what the rhythm makes of it. Source: physiology handbook 2.2 to 2.5, 3.1, 3.3. */
export class Pressures {
  systolic = 0;
  diastolic = 0;
  /** Beside the usual one; a pattern may change it. */
  stroke = 1;
  /** One of the weak beats of a pattern, which nobody means by the person's pressure. */
  isWeak = false;
  isFelt = true;
  /** Change of loudness that comes with the beat's filling, dB. */
  loudness = 0;
  /** No diastolic falls further below its level than this. */
  lowestBelowMmHg = LOWEST_BELOW_MMHG;
  readonly reservoir = new Reservoir();
  private person: Person | null = null;
  private kind: RhythmKind = 'sinus';
  private key = 0;
  private pulsePressure = 40;

  restart(person: Person, keys: HeartKeys, meanInterval: number): void {
    const { rest, scenario } = person;
    this.person = person;
    this.kind = scenario.rhythm.kind;
    this.key = keys.beat;
    this.pulsePressure = rest.systolic - rest.diastolic;
    this.reservoir.restart(person, meanInterval);
    this.lowestBelowMmHg = this.reservoir.isUsed
      ? LOWEST_BELOW_AFTER_PAUSE_MMHG
      : LOWEST_BELOW_MMHG + person.breathingSwingMmHg;
  }

  /** Of the beat at hand, with the strength that its filling gave it. @param drift the slow course of the pressures */
  make(beat: BeatAtHand, stroke: number, drift: Drift): void {
    const person = this.person;
    if (person === null) return;
    const { index, foot, breath, levels } = beat;
    this.stroke = stroke;
    this.loudness = 0;
    this.isWeak = beat.isPremature;
    const waves = wavesAt(breath.turnsAt(foot), beat.slowTurns - SLOW_WAVE_LAG_TURNS);
    const inBreath = waves[BREATH] as number;
    const depth = Math.min(breath.depth, DEEPEST_BREATH);
    // Lowest late in breathing in. A usual swing goes about the level, so that this is the mean over a breath; in a
    // paradox the level is that of breathing out, at which sounds begin.
    const swing = person.breathingSwingMmHg;
    const isParadox = swing > PARADOX_MMHG;
    const breathed = 0.5 * swing * (isParadox ? inBreath - 1 : depth * inBreath);
    drift.moveTo(foot);
    const slow = -person.slowWaveMmHg * (waves[SLOW] as number) + person.slowSdMmHg * drift.value;
    this.systolic =
      levels.systolic + breathed + slow + person.beatSdMmHg * normalOf(this.key, index, LANE.systolic);
    this.diastolic =
      levels.diastolic +
      BREATH_DIASTOLIC_SHARE * breathed +
      SLOW_DIASTOLIC_SHARE * slow +
      person.beatDiastolicSdMmHg * normalOf(this.key, index, LANE.diastolic);
    if (this.kind !== 'sinus') this.byRhythm(person, beat);
    this.diastolic = Math.min(this.diastolic, this.systolic - LEAST_PULSE_MMHG);
    // Weaker than the threshold of the finger, or lost among stronger neighbours.
    this.isFelt = this.pulsePressure * this.stroke > person.feelingMmHg && this.stroke > FELT_SHARE;
  }

  private byRhythm({ rest, scenario: { rhythm } }: Person, { index, rr, isPremature }: BeatAtHand): void {
    const { reservoir } = this;
    if (reservoir.isUsed) {
      reservoir.runOff(rr, this.pulsePressure * this.stroke);
      this.systolic += reservoir.topOff;
      this.diastolic += reservoir.footOff;
    }
    switch (this.kind) {
      case 'bigeminy':
        if (isPremature) {
          const pulse = this.pulsePressure * this.stroke;
          const top = rhythm.weakSystolic;
          this.systolic +=
            top === null ? (this.stroke - 1) * WEAK_TOP_SHARE * this.pulsePressure : top - rest.systolic;
          this.diastolic = this.systolic - pulse;
        }
        break;
      case 'alternans': {
        const whole = rhythm.alternansMmHg ?? 0;
        this.isWeak = index % 2 !== 0;
        if (this.isWeak) {
          this.systolic -= whole;
          this.stroke = 1 - whole / this.pulsePressure;
        }
        this.diastolic += F.alternansDiastolicShare.value * (this.isWeak ? -whole : whole);
        break;
      }
      case 'heart-block': {
        const atria = 2 * uniformOf(this.key, index, LANE.atria) - 1;
        this.systolic += F.blockSwingMmHg.value * atria;
        this.loudness = F.blockSwingDb.value * atria;
        break;
      }
    }
  }

  copyFrom(other: Pressures): void {
    const { reservoir, ...rest } = other;
    Object.assign(this, rest);
    this.reservoir.copyFrom(reservoir);
  }
}
