import { stretchOf } from '../artery/stretch.js';
import { BreathStream } from '../breathing/breathStream.js';
import { Drift } from '../chance/drift.js';
import { uniformOf } from '../chance/uniform.js';
import type { Circumstances } from '../circumstances/circumstances.js';
import { PersonLevels } from '../circumstances/personLevels.js';
import type { Person } from '../person/person.js';
import { HEART_FIGURES as F } from './figures.js';
import { Interval } from './interval.js';
import { DRIFT_LANE, heartKeys } from './lanes.js';
import { PressureBounds } from './pressureBounds.js';
import { Pressures } from './pressures.js';

// The figures of every beat, looked up once.
const MAYER_HZ = F.mayerHz.value;
const MAYER_WANDER_TURNS = F.mayerWanderTurns.value;

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
  lowestBelowMmHg = 0;
  /** Where the slow wave stands, in turns. */
  slowTurns = 0;
  readonly breath = new BreathStream();
  readonly levels = new PersonLevels();

  private delaySeconds = 0;
  private before = 1;
  private readonly interval = new Interval();
  private readonly pressures = new Pressures();
  private readonly bounds = new PressureBounds();
  private readonly phaseDrift = new Drift();
  private readonly pressureDrift = new Drift();
  /** Whether pressures may be left undone: not where the next foot begins with what this beat left in the arteries. */
  private mayWait = false;
  private isFinished = true;

  restart(person: Person, circumstances: Circumstances, firstInflationSeconds: number | null): void {
    this.breath.restart(person, circumstances);
    this.levels.restart(person, circumstances, firstInflationSeconds);
    const keys = heartKeys(person);
    this.phaseDrift.restart(keys.slow, DRIFT_LANE.phase, F.mayerWanderSeconds.value);
    this.pressureDrift.restart(keys.slow, DRIFT_LANE.pressure, F.slowSeconds.value);
    const usual = 60 / person.scenario.rhythm.ratePerMinute;
    this.interval.restart(person, keys);
    this.pressures.restart(person, keys, this.interval.mean(usual));
    this.bounds.restart(person, keys);
    this.lowestBelowMmHg = this.pressures.lowestBelowMmHg;
    this.mayWait = !this.pressures.reservoir.isUsed;
    this.delaySeconds = person.delaySeconds;
    this.index = -1;
    this.rr = usual;
    this.before = usual;
    this.isPremature = false;
    this.levels.moveTo(person.originSeconds);
    // The first beat falls anywhere within an interval after the origin.
    this.r = person.originSeconds - usual + usual * uniformOf(keys.beat, -1);
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
    const from = this.r;
    const last = this.rr;
    this.index += 1;
    this.phaseDrift.moveTo(from);
    this.slowTurns = MAYER_HZ * from + MAYER_WANDER_TURNS * this.phaseDrift.value;
    const rr = this.interval.after(this, this.levels);
    this.isPremature = this.interval.ectopics.isPremature;
    this.before = last;
    this.rr = rr;
    this.stretch = stretchOf(rr);
    this.r = from + rr;
    this.foot = this.r + this.delaySeconds;
    this.slowTurns += MAYER_HZ * rr;
    // The breath and the pulse rate of this instant are asked for by the next interval.
    this.levels.moveTo(this.foot);
    this.breath.moveTo(this.foot);
    this.isFinished = false;
    if (!this.mayWait) this.finish();
  }

  /** The pressures of the beat at hand, if `begin` left them undone. */
  finish(): void {
    if (this.isFinished) return;
    this.isFinished = true;
    const { pressures, levels } = this;
    pressures.make(this, this.interval.strength(this.index, this.rr, this.before), this.pressureDrift);
    this.systolic = pressures.systolic;
    this.diastolic = pressures.diastolic;
    this.stroke = pressures.stroke;
    this.isFelt = pressures.isFelt;
    this.isWeak = pressures.isWeak;
    this.loudness = pressures.loudness;
    this.levelSystolic = levels.systolic;
    this.levelDiastolic = levels.diastolic;
  }

  /** Whether the systolic of a beat that has not been finished lies under a pressure whatever breath and waves do to it. */
  isSurelyUnder(mmHg: number): boolean {
    return this.bounds.isSurelyUnder(this, this.pressureDrift, mmHg);
  }

  /**
   * Whether the diastolic of a beat that has not been finished surely lies over a pressure, and the systolic over the
   * diastolic by more than `gapMmHg`.
   */
  isSurelyOver(mmHg: number, gapMmHg: number): boolean {
    return this.bounds.isSurelyOver(this, this.pressureDrift, mmHg, gapMmHg);
  }

  /** Bounds of a beat that has not been finished, into `leastSystolic` and `mostDiastolic`; false where there are none. */
  bound(): boolean {
    const { bounds } = this;
    if (!bounds.make(this, this.pressureDrift)) return false;
    this.leastSystolic = bounds.leastSystolic;
    this.mostDiastolic = bounds.mostDiastolic;
    return true;
  }

  /** Whatever the beat at hand was: the same beat again in another stream. */
  copyFrom(other: BeatStream): void {
    const { breath, levels, interval, pressures, bounds, phaseDrift, pressureDrift, ...rest } =
      other as unknown as Record<string, unknown> & Inner;
    Object.assign(this, rest);
    this.breath.copyFrom(breath);
    this.levels.copyFrom(levels);
    this.interval.copyFrom(interval);
    this.pressures.copyFrom(pressures);
    this.bounds.copyFrom(bounds);
    this.phaseDrift.copyFrom(phaseDrift);
    this.pressureDrift.copyFrom(pressureDrift);
  }
}

type Inner = {
  breath: BreathStream;
  levels: PersonLevels;
  interval: Interval;
  pressures: Pressures;
  bounds: PressureBounds;
  phaseDrift: Drift;
  pressureDrift: Drift;
};
