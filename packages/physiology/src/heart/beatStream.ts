import { stretchOf } from '../artery/stretch.js';
import { BreathStream } from '../breathing/breathStream.js';
import { Drift } from '../chance/drift.js';
import { Drifts } from '../chance/drifts.js';
import { MOST_SD, normalBound, normalOf } from '../chance/normal.js';
import { keyOf, uniformOf } from '../chance/uniform.js';
import type { Circumstances } from '../circumstances/circumstances.js';
import { PersonLevels } from '../circumstances/personLevels.js';
import { sinesOfTurns } from '../exact/circle.js';
import { log, power } from '../exact/exponential.js';
import type { Person } from '../person/person.js';
import { type FibrillationLaw, fibrillationLaw } from './fibrillation.js';
import { HEART_FIGURES as F } from './figures.js';
import type { RhythmKind } from './rhythm.js';
import { fibrillationRunOffRate, leftAfter, runOffRate } from './runOff.js';
import { couplingPlace, filling } from './strength.js';
import { VARIATION_TARGETS } from './variation.js';

const LANE = { systolic: 0, diastolic: 1, stroke: 2, atria: 3, interval: 4 };
const ECTOPIC_LANE = {
  happens: 0,
  coupling: 1,
  interpolated: 2,
  gain: 3,
  turbulence: 4,
  every: 5,
  length: 6,
  atria: 7,
};
const DRIFT_LANE = { phase: 0, pressure: 1, interval: 2 };
/** Time constants of the slow part of the heart period, and how its variance is shared. */
const DRIFT_SECONDS = [5, 15, 45, 135, 405] as const;
/** Which of them moves the intervals of atrial fibrillation. */
const FIBRILLATION_DRIFT = 1;
const DRIFT_WEIGHTS = {
  even: [1, 1, 1, 1, 1],
  failing: [1, 1.7, 3, 5, 8],
} as const;
/**
 * Shares of the variance of each time constant that show within five minutes, the span of the targets: 1 minus the mean
 * correlation of the drift with itself over 300 s.
 */
const SEEN_IN_FIVE_MINUTES = [0.971, 0.915, 0.759, 0.406, 0.082] as const;
const WENCKEBACH = [1, 0.94, 0.9, 1.76] as const;
/** Far beyond five SD of everything that lowers a diastolic in a regular rhythm, and after the longest pause. */
const LOWEST_BELOW_MMHG = 16;
const LOWEST_BELOW_AFTER_PAUSE_MMHG = 80;
/** Breath and slow wave at an instant: turns, then their sines. A quarter turn makes a cosine. */
const WAVES = new Float64Array(2);
const BREATH = 0;
const SLOW = 1;
const QUARTER = 0.25;
/** More than all roundings of a sum of pressures. */
const ROUNDING_MMHG = 1e-6;
// The figures of every beat, looked up once.
const MAYER_HZ = F.mayerHz.value;
const MAYER_WANDER_TURNS = F.mayerWanderTurns.value;
const SLOW_WAVE_LAG_TURNS = MAYER_HZ * F.slowWaveLagSeconds.value;
const BREATH_SHAPE = F.breathShape.value;
const BREATH_DIASTOLIC_SHARE = F.breathDiastolicShare.value;
const SLOW_DIASTOLIC_SHARE = F.slowDiastolicShare.value;
const PARADOX_MMHG = F.paradoxMmHg.value;
const LARGEST_STEP = F.largestStep.value;
const SHORTEST_SECONDS = F.shortestSeconds.value;
const LEAST_SECONDS = F.leastSeconds.value;
const FELT_SHARE = F.feltShare.value;
/** Kinds whose pressures follow from the intervals through the run-off of the arteries. */
const BY_RUN_OFF: ReadonlySet<RhythmKind> = new Set<RhythmKind>([
  'ventricular-ectopics',
  'atrial-ectopics',
  'trigeminy',
  'atrial-fibrillation',
  'wenckebach',
  'sinus-pauses',
]);

/**
 * The beats of a person one after the other: heart period, strength, pressures. Holds the beat at hand in plain
 * numbers, so that a batch makes no objects. The one model behind every face. Order of work: physiology handbook 1.4.
 */
export class BeatStream {
  /** See `Beat` for these. */
  index = -1;
  r = 0;
  foot = 0;
  rr = 1;
  /** How much longer its contour is than the one of the book. */
  stretch = 1;
  systolic = 0;
  diastolic = 0;
  stroke = 1;
  isPremature = false;
  isFelt = true;
  /** One of the weak beats of a pattern, which nobody means by the person's pressure. */
  isWeak = false;
  /** Change of loudness that comes with the beat's filling, dB. */
  loudness = 0;
  /** Levels about which this beat varies. */
  levelSystolic = 0;
  levelDiastolic = 0;
  /** No less, and no more: see `bound`. */
  leastSystolic = Number.NaN;
  mostDiastolic = Number.NaN;
  /** No diastolic falls further below its level than this. */
  lowestBelowMmHg = LOWEST_BELOW_MMHG;
  readonly breath = new BreathStream();
  readonly levels = new PersonLevels();

  private person: Person | null = null;
  private kind: RhythmKind = 'sinus';
  private rate = 70;
  /** No sinus interval is shorter, seconds. */
  private shortest = 0;
  private beatKey = 0;
  private fibrillationKey = 0;
  private ectopyKey = 0;
  private before = 1;
  private readonly phaseDrift = new Drift();
  private readonly pressureDrift = new Drift();
  private readonly intervalDrifts = new Drifts(DRIFT_SECONDS);
  private readonly fibrillationDrift = new Drift();
  private readonly weights = new Float64Array(DRIFT_SECONDS.length);
  private depthFactor = 1;
  private varies = false;
  /** Whether pressures may be left undone: not where the next foot begins with what this beat left in the arteries. */
  private mayWait = false;
  private isFinished = true;
  private slowTurns = 0;
  /** Whether bounds of a beat's pressures can be told from its levels: in a rhythm without weak beats and without memory. */
  private isBounded = false;
  /** Of the breath, and how far the slow wave can move a systolic either way with all roundings, mmHg. */
  private swing = Number.NaN;
  private isParadox = false;
  private waveReach = Number.NaN;
  private byRunOff = false;
  private runOff = 1;
  /** Deviation of the foot from its level, by run-off. */
  private footOff = 0;
  private topOff = 0;
  private law: FibrillationLaw | null = null;
  private pulsePressure = 40;
  /** What comes next in a rhythm with a pattern. */
  private step = 0;
  private owedSeconds = 0;
  private gain = 0;
  private turbulence = 0;
  private turbulenceLeft = 0;
  private sinceEctopic = 0;
  private nextPause = 0;
  private alternating = 0;

  restart(person: Person, circumstances: Circumstances, firstInflationSeconds: number | null): void {
    const { rhythm } = person.scenario;
    this.person = person;
    this.kind = rhythm.kind;
    this.rate = rhythm.ratePerMinute;
    this.beatKey = keyOf(person.beatSeed, 'beat');
    this.fibrillationKey = keyOf(person.beatSeed, 'af');
    this.ectopyKey = keyOf(person.beatSeed, 'ectopy');
    this.breath.restart(person, circumstances);
    this.levels.restart(person, circumstances, firstInflationSeconds);
    const slowKey = keyOf(person.seed, 'bpv');
    this.varies = person.heart.driftSeconds > 0 || person.heart.independentSeconds > 0;
    this.phaseDrift.restart(slowKey, DRIFT_LANE.phase, F.mayerWanderSeconds.value);
    this.pressureDrift.restart(slowKey, DRIFT_LANE.pressure, F.slowSeconds.value);
    const targets = VARIATION_TARGETS[rhythm.variation];
    const weights = DRIFT_WEIGHTS[targets.drift];
    const seen = weights.reduce((sum: number, w, i) => sum + w * (SEEN_IN_FIVE_MINUTES[i] ?? 0), 0);
    this.intervalDrifts.restart(slowKey, DRIFT_LANE.interval);
    const fibrillation = DRIFT_LANE.interval + FIBRILLATION_DRIFT;
    this.fibrillationDrift.restart(slowKey, fibrillation, DRIFT_SECONDS[FIBRILLATION_DRIFT]);
    for (let i = 0; i < DRIFT_SECONDS.length; i++) {
      this.weights[i] = person.heart.driftSeconds * Math.sqrt((weights[i] ?? 0) / seen);
    }
    const floor = F.depthFromPerMinute.value;
    this.depthFactor =
      Math.max(floor, 60 * targets.breathHz) / Math.max(floor, person.scenario.breathing.ratePerMinute);
    const usual = 60 / this.rate;
    this.shortest = Math.min(SHORTEST_SECONDS, F.sinusLeastShare.value * usual);
    const { systolic, diastolic } = person.rest;
    this.pulsePressure = systolic - diastolic;
    this.byRunOff = BY_RUN_OFF.has(this.kind);
    this.lowestBelowMmHg = this.byRunOff
      ? LOWEST_BELOW_AFTER_PAUSE_MMHG
      : LOWEST_BELOW_MMHG + person.breathingSwingMmHg;
    this.law = this.kind === 'atrial-fibrillation' ? fibrillationLaw(this.rate) : null;
    if (this.byRunOff) {
      this.runOff =
        this.law === null
          ? runOffRate(systolic, diastolic, this.meanInterval(usual))
          : fibrillationRunOffRate(systolic, diastolic, this.law);
    }
    this.footOff = 0;
    this.topOff = 0;
    this.index = -1;
    this.rr = usual;
    this.before = usual;
    this.step = 0;
    this.owedSeconds = 0;
    this.gain = 0;
    this.turbulence = 0;
    this.turbulenceLeft = 0;
    this.sinceEctopic = 9;
    this.alternating = 0;
    this.isPremature = false;
    this.nextPause = person.originSeconds + this.pauseWait(-1);
    this.levels.moveTo(person.originSeconds);
    this.mayWait = !this.byRunOff;
    this.isBounded = this.kind === 'sinus';
    this.swing = Math.abs(person.breathingSwingMmHg);
    this.isParadox = person.breathingSwingMmHg > PARADOX_MMHG;
    this.waveReach = Math.abs(person.slowWaveMmHg) + ROUNDING_MMHG;
    // The first beat falls anywhere within an interval after the origin.
    this.r = person.originSeconds - usual + usual * uniformOf(this.beatKey, -1);
    this.next();
  }

  /** On to the next beat. */
  next(): void {
    this.begin();
    this.finish();
  }

  /**
   * On to the next beat, its pressures and what goes with them left undone where no later beat hangs on them: of most
   * beats of a let-down nobody asks. Time, interval and levels are right; `finish` does the rest.
   */
  begin(): void {
    const person = this.person;
    if (person === null) return;
    const from = this.r;
    const last = this.rr;
    this.index += 1;
    this.phaseDrift.moveTo(from);
    this.slowTurns = MAYER_HZ * from + MAYER_WANDER_TURNS * this.phaseDrift.value;
    const rr = Math.max(
      this.kind === 'sinus' ? this.limited(this.sinus(person)) : this.interval(person),
      LEAST_SECONDS,
    );
    this.before = last;
    this.rr = rr;
    this.stretch = stretchOf(rr);
    this.r = from + rr;
    this.foot = this.r + person.delaySeconds;
    this.slowTurns += MAYER_HZ * rr;
    // The breath and the pulse rate of this instant are asked for by the next interval.
    this.levels.moveTo(this.foot);
    this.breath.moveTo(this.foot);
    this.isFinished = false;
    if (!this.mayWait) this.finish();
  }

  /** The pressures of the beat at hand, if `begin` left them undone. */
  finish(): void {
    const person = this.person;
    if (this.isFinished || person === null) return;
    this.isFinished = true;
    this.pressures(person);
  }

  /** Whether the systolic of a beat that has not been finished lies under a pressure whatever breath and waves do to it. */
  isSurelyUnder(mmHg: number): boolean {
    if (!this.isBounded || mmHg <= this.levels.systolic) return false;
    const person = this.person as Person;
    this.pressureDrift.moveTo(this.foot);
    const slow = person.slowSdMmHg * this.pressureDrift.value;
    const chance = Math.abs(person.beatSdMmHg) * this.chanceWithin(LANE.systolic);
    return mmHg > this.levels.systolic + slow + this.breathReach() + this.waveReach + chance;
  }

  /**
   * Whether the diastolic of a beat that has not been finished surely lies over a pressure, and the systolic over the
   * diastolic by more than `gapMmHg`.
   */
  isSurelyOver(mmHg: number, gapMmHg: number): boolean {
    const { levels } = this;
    if (!this.isBounded || mmHg >= levels.diastolic) return false;
    const person = this.person as Person;
    this.pressureDrift.moveTo(this.foot);
    const slow = person.slowSdMmHg * this.pressureDrift.value;
    const breath = this.breathReach();
    const above = breath + this.waveReach + Math.abs(person.beatSdMmHg) * MOST_SD;
    const chance = Math.abs(person.beatDiastolicSdMmHg) * this.chanceWithin(LANE.diastolic);
    const about =
      BREATH_DIASTOLIC_SHARE * breath + SLOW_DIASTOLIC_SHARE * this.waveReach + ROUNDING_MMHG + chance;
    const middle = levels.diastolic + SLOW_DIASTOLIC_SHARE * slow;
    const systolic = levels.systolic + slow - above;
    return mmHg < middle - about && systolic - gapMmHg > middle + about;
  }

  /** Bounds of a beat that has not been finished, into `leastSystolic` and `mostDiastolic`; false where there are none. */
  bound(): boolean {
    if (!this.isBounded) return false;
    const person = this.person as Person;
    const { levels } = this;
    this.pressureDrift.moveTo(this.foot);
    const slow = person.slowSdMmHg * this.pressureDrift.value;
    const breath = this.breathReach();
    const systolic = Math.abs(person.beatSdMmHg) * this.chanceWithin(LANE.systolic);
    this.leastSystolic = levels.systolic + slow - breath - this.waveReach - systolic;
    const diastolic = Math.abs(person.beatDiastolicSdMmHg) * this.chanceWithin(LANE.diastolic);
    const about = BREATH_DIASTOLIC_SHARE * breath + SLOW_DIASTOLIC_SHARE * this.waveReach + ROUNDING_MMHG;
    this.mostDiastolic = levels.diastolic + SLOW_DIASTOLIC_SHARE * slow + about + diastolic;
    return true;
  }

  /** How far the breath at hand can move a systolic from its level either way, mmHg. */
  private breathReach(): number {
    return this.isParadox ? this.swing : 0.5 * this.swing * Math.min(this.breath.depth, 2);
  }

  /** A bound of the normal number of a lane, without making it. */
  private chanceWithin(lane: number): number {
    return normalBound(this.beatKey, this.index, lane);
  }

  /** Whatever the beat at hand was: the same beat again in another stream. */
  copyFrom(other: BeatStream): void {
    const { breath, levels, phaseDrift, pressureDrift, intervalDrifts, fibrillationDrift, weights, ...rest } =
      other as unknown as Record<string, unknown> & Inner;
    Object.assign(this, rest);
    this.breath.copyFrom(breath);
    this.levels.copyFrom(levels);
    this.phaseDrift.copyFrom(phaseDrift);
    this.pressureDrift.copyFrom(pressureDrift);
    this.intervalDrifts.copyFrom(intervalDrifts);
    this.fibrillationDrift.copyFrom(fibrillationDrift);
    this.weights.set(weights);
  }

  private meanInterval(usual: number): number {
    if (this.kind !== 'wenckebach') return usual;
    return (usual * WENCKEBACH.reduce((sum, part) => sum + part, 0)) / WENCKEBACH.length;
  }

  /** The interval that follows the beat before, which is still in `r` and `rr`. Premature beats and their pauses are decided here. */
  private interval(person: Person): number {
    this.isPremature = false;
    this.gain = 0;
    switch (this.kind) {
      case 'atrial-fibrillation':
        return this.fibrillating();
      case 'heart-block':
        return (
          (60 / this.rate) * (1 + F.blockSpread.value * normalOf(this.beatKey, this.index, LANE.interval))
        );
      case 'wenckebach': {
        const place = this.step % WENCKEBACH.length;
        this.step += 1;
        if (place === 3) this.gain = F.longPauseGain.value;
        return this.sinus(person) * (WENCKEBACH[place] ?? 1);
      }
      case 'sinus-pauses':
        if (this.r >= this.nextPause) {
          this.nextPause = this.r + this.pauseWait(this.index);
          this.gain = F.longPauseGain.value;
          const span = F.pauseHigh.value - F.pauseLow.value;
          return F.pauseLow.value + span * uniformOf(this.ectopyKey, this.index, ECTOPIC_LANE.length);
        }
        break;
      case 'bigeminy':
      case 'trigeminy':
      case 'ventricular-ectopics':
      case 'atrial-ectopics': {
        const premature = this.premature(person);
        if (premature > 0) return premature;
        break;
      }
    }
    return this.limited(this.sinus(person) + this.turbulent());
  }

  private limited(rr: number): number {
    const last = this.rr;
    if (this.sinceEctopic < 3 || this.kind === 'sinus-pauses') return Math.max(rr, this.shortest);
    const step = LARGEST_STEP * last;
    const limited = rr > last + step ? last + step : Math.max(rr, last - step);
    return Math.max(limited, this.shortest);
  }

  /** The sinus node: breath, slow wave and drift about the rate of the moment. The breath at hand is that of the last foot. */
  private sinus(person: Person): number {
    const usual = 60 / (this.rate + this.levels.pulseExcess);
    if (!this.varies) return usual;
    const { heart } = person;
    const { breath, weights, intervalDrifts } = this;
    let rr = usual;
    WAVES[BREATH] = breath.turnsAt(this.r) + QUARTER;
    WAVES[SLOW] = this.slowTurns;
    sinesOfTurns(WAVES);
    // Shorter while breathing in: shortest at its end.
    const depth = Math.min(breath.depth, 2.5);
    rr += BREATH_SHAPE * heart.breathSeconds * this.depthFactor * depth * (WAVES[BREATH] as number);
    rr += heart.slowSeconds * (WAVES[SLOW] as number);
    intervalDrifts.moveTo(this.r);
    const { values } = intervalDrifts;
    for (let i = 0; i < values.length; i++) rr += (weights[i] as number) * (values[i] as number);
    if (heart.independentSeconds > 0)
      rr += heart.independentSeconds * normalOf(this.beatKey, this.index, LANE.interval);
    return Math.max(rr, this.shortest);
  }

  private fibrillating(): number {
    const law = this.law;
    if (law === null) return 60 / this.rate;
    const drift = this.fibrillationDrift;
    drift.moveTo(this.r);
    const slow = law.slowMean + law.slowSd * drift.value;
    const rr = slow - log(uniformOf(this.fibrillationKey, this.index)) / law.tailPerSecond;
    return Math.max(rr, F.fibrillationFloorSeconds.value);
  }

  /** The interval to a premature beat, or the pause after one; 0 where the sinus node has its turn. */
  private premature(person: Person): number {
    const { rhythm, traits } = person.scenario;
    const usual = 60 / (this.rate + this.levels.pulseExcess);
    if (this.owedSeconds > 0) {
      const pause = this.owedSeconds;
      this.owedSeconds = 0;
      this.sinceEctopic = 0;
      const failing = traits.isFailing;
      const mean = failing ? F.afterPauseGainFailing.value : F.afterPauseGain.value;
      const sd = failing ? F.afterPauseGainFailingSd.value : F.afterPauseGainSd.value;
      if (pause > usual && this.kind !== 'bigeminy') {
        this.gain = mean + sd * normalOf(this.ectopyKey, this.index, ECTOPIC_LANE.gain);
        this.turbulenceLeft = 8;
        if (failing) this.alternating = 5;
      }
      return pause;
    }
    this.sinceEctopic += 1;
    this.step += 1;
    const isDue =
      this.kind === 'bigeminy'
        ? true
        : this.kind === 'trigeminy'
          ? this.sinceEctopic >= 2
          : this.sinceEctopic > 3 &&
            uniformOf(this.ectopyKey, this.index, ECTOPIC_LANE.happens) <
              ((rhythm.ectopicsPerMinute ?? 0) * usual) / 60;
    if (!isDue) return 0;
    const drawn =
      F.couplingMean.value + F.couplingSd.value * normalOf(this.ectopyKey, this.index, ECTOPIC_LANE.coupling);
    const low = F.couplingLow.value;
    const high = F.couplingHigh.value;
    const coupling = rhythm.coupling ?? (drawn < low ? low : Math.min(drawn, high));
    const sinus = this.kind === 'bigeminy' ? usual : this.sinus(person);
    this.isPremature = true;
    this.coupling = coupling;
    const isInterpolated =
      this.kind !== 'bigeminy' &&
      uniformOf(this.ectopyKey, this.index, ECTOPIC_LANE.interpolated) < F.interpolatedShare.value;
    this.owedSeconds = isInterpolated
      ? sinus * (1 - coupling)
      : this.kind === 'atrial-ectopics'
        ? sinus + F.atrialResetSeconds.value
        : sinus * (2 - coupling);
    return coupling * sinus;
  }

  private coupling = 1;

  /** Change of the sinus interval in the beats after a pause. */
  private turbulent(): number {
    if (this.turbulenceLeft === 0) {
      this.turbulence = 0;
      return 0;
    }
    const isFailing = this.person?.scenario.traits.isFailing ?? false;
    const beats = 8 - this.turbulenceLeft;
    this.turbulenceLeft -= 1;
    if (beats < 2) {
      const onset = isFailing ? F.turbulenceOnsetFailing.value : F.turbulenceOnset.value;
      this.turbulence = -onset * (60 / this.rate);
    } else {
      this.turbulence += isFailing ? F.turbulenceSecondsFailing.value : F.turbulenceSeconds.value;
    }
    return this.turbulence;
  }

  private pauseWait(index: number): number {
    const span = F.pauseEveryHigh.value - F.pauseEveryLow.value;
    return F.pauseEveryLow.value + span * uniformOf(this.ectopyKey, index, ECTOPIC_LANE.every);
  }

  /** Strength of the beat at hand beside the usual one. */
  private strength(): number {
    if (this.law !== null) {
      const fill = filling(this.rr, this.law.fillingFrom) / this.law.meanFilling;
      const older = 1 - F.beforeLastWeight.value * (this.before / this.law.meanSeconds - 1);
      const noise = 1 + F.strokeNoise.value * normalOf(this.beatKey, this.index, LANE.stroke);
      const stroke = fill * older * noise;
      return Math.max(stroke, 0.02);
    }
    if (this.isPremature) return Math.max(0.02, power(couplingPlace(this.coupling), F.prematurePower.value));
    let stroke = 1 + this.gain;
    if (this.alternating > 0) {
      stroke += this.alternating % 2 === 0 ? 0.1 : -0.1;
      this.alternating -= 1;
    }
    return stroke;
  }

  private pressures(person: Person): void {
    const at = this.foot;
    const k = this.index;
    this.stroke = this.strength();
    this.loudness = 0;
    this.isWeak = this.isPremature;
    const level = this.levels;
    WAVES[BREATH] = this.breath.turnsAt(at) + QUARTER;
    WAVES[SLOW] = this.slowTurns - SLOW_WAVE_LAG_TURNS;
    sinesOfTurns(WAVES);
    const inBreath = WAVES[BREATH] as number;
    const depth = Math.min(this.breath.depth, 2);
    // Lowest late in breathing in. A usual swing goes about the level, so that this is the mean over a breath; in a
    // paradox the level is that of breathing out, at which sounds begin.
    const swing = person.breathingSwingMmHg;
    const isParadox = swing > PARADOX_MMHG;
    const breath = 0.5 * swing * (isParadox ? inBreath - 1 : depth * inBreath);
    this.pressureDrift.moveTo(at);
    const slow =
      -person.slowWaveMmHg * (WAVES[SLOW] as number) + person.slowSdMmHg * this.pressureDrift.value;
    let systolic =
      level.systolic + breath + slow + person.beatSdMmHg * normalOf(this.beatKey, k, LANE.systolic);
    let diastolic =
      level.diastolic +
      BREATH_DIASTOLIC_SHARE * breath +
      SLOW_DIASTOLIC_SHARE * slow +
      person.beatDiastolicSdMmHg * normalOf(this.beatKey, k, LANE.diastolic);
    if (this.byRunOff) {
      this.runOffTo(this.rr);
      systolic += this.topOff;
      diastolic += this.footOff;
    }
    const { rhythm } = person.scenario;
    switch (this.kind) {
      case 'bigeminy':
        if (this.isPremature) {
          const pulse = this.pulsePressure * this.stroke;
          const top = rhythm.weakSystolic;
          systolic +=
            top === null ? (this.stroke - 1) * 0.6 * this.pulsePressure : top - person.rest.systolic;
          diastolic = systolic - pulse;
        }
        break;
      case 'alternans': {
        const whole = rhythm.alternansMmHg ?? 0;
        this.isWeak = k % 2 !== 0;
        if (this.isWeak) {
          systolic -= whole;
          this.stroke = 1 - whole / this.pulsePressure;
        }
        diastolic += F.alternansDiastolicShare.value * (this.isWeak ? -whole : whole);
        break;
      }
      case 'heart-block': {
        const atria = 2 * uniformOf(this.beatKey, k, LANE.atria) - 1;
        systolic += F.blockSwingMmHg.value * atria;
        this.loudness = F.blockSwingDb.value * atria;
        break;
      }
    }
    this.systolic = systolic;
    this.diastolic = Math.min(diastolic, systolic - 1);
    this.levelSystolic = level.systolic;
    this.levelDiastolic = level.diastolic;
    this.isFelt = this.isFeltAt(person);
  }

  /** Weaker than the threshold of the finger, or lost among stronger neighbours. */
  private isFeltAt(person: Person): boolean {
    const pulse = this.pulsePressure * this.stroke;
    return pulse > person.feelingMmHg && this.stroke > FELT_SHARE;
  }

  /** The arteries run off over an interval, and the stroke adds to what is left. */
  private runOffTo(interval: number): void {
    const { systolic, diastolic } = (this.person as Person).rest;
    const to = F.runOffToMmHg.value;
    const top = systolic + this.topOff;
    const foot = to + (top - to) * leftAfter(interval, this.runOff);
    this.footOff = foot - diastolic;
    this.topOff = foot + this.pulsePressure * this.stroke - systolic;
  }
}

type Inner = {
  breath: BreathStream;
  levels: PersonLevels;
  phaseDrift: Drift;
  pressureDrift: Drift;
  intervalDrifts: Drifts;
  fibrillationDrift: Drift;
  weights: Float64Array;
};
