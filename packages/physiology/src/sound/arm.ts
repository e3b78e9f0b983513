import { type Contour, contourOf } from '../artery/contour.js';
import { normalBound, normalOf } from '../chance/normal.js';
import { keyOf, uniformOf } from '../chance/uniform.js';
import type { Circumstances } from '../circumstances/circumstances.js';
import { cuffEffects, soundEffects, sumOf } from '../circumstances/effects.js';
import { CIRCUMSTANCE_FIGURES } from '../circumstances/figures.js';
import type { Instrument } from '../cuff/instrument.js';
import { exp } from '../exact/exponential.js';
import type { Beating } from '../heart/beating.js';
import type { BeatStream } from '../heart/beatStream.js';
import { feelingOf } from '../person/feelingOf.js';
import type { Person } from '../person/person.js';
import type { Levels, Scenario } from '../scenario/scenario.js';
import { SOUND_FIGURES as F } from './figures.js';
import type { Phase } from './soundEvent.js';

export const SOUND_LANE = { level: 0, centre: 1, duration: 2, swish: 3 };
const TAIL_LANE = 4;
// The figures of every sound, looked up once.
const CLOSING_SCALE = F.closingScaleMmHg.value;
const OPENING_SCALE = F.openingScaleMmHg.value;
const STRONG_BEAT_DB = F.strongBeatDb.value;
const SWISH_DB = F.swishDb.value;
const TAIL_DB = F.tailDb.value;
const SWISH_FROM = F.swishFrom.value;
const CRISP_FROM = F.crispFrom.value;
/** Well within the sounds: so far under the systolic and over the diastolic, and what of a sound's loudness is left there. */
const WELL_BELOW_MMHG = 3;
const WELL_ABOVE_MMHG = 4;
const LEAST_SHAPE =
  (1 - exp(-WELL_BELOW_MMHG / OPENING_SCALE)) * (1 - exp(-WELL_ABOVE_MMHG / CLOSING_SCALE)) - 1e-9;
/** No sound at all. */
export const SILENT = Number.NEGATIVE_INFINITY;

/**
 * The artery under the cuff and the ear over it: what a cuff pressure means for a beat. Both faces ask it; plain
 * numbers in and out. Source: physiology handbook 7, 8, 10, 12.
 */
export class Arm {
  /** Added to systolic and diastolic of a beat for what is heard of it. */
  heardSystolic = 0;
  heardDiastolic = 0;
  gainDb = 0;
  soundKey = 0;
  private offset = 0;
  private slope = 1;
  private peakDb = 40;
  private spreadDb = 0;
  private muffledAbove = Number.NEGATIVE_INFINITY;
  private hasSwish = true;
  private hasCrisp = true;
  private gapTopBelow = 0;
  private gapWidth = 0;
  private feeling = 0;
  private tailTo = Number.POSITIVE_INFINITY;
  private tailMmHg = 1;
  private hasTail = false;
  private person: Person | null = null;
  /** Whose effects were added up last, and their sums: a batch asks for the same ones over and over. */
  private circumstances: Circumstances | null = null;
  private instrument: Instrument | null = null;
  private summed: Scenario | null = null;
  private cuff: Levels = { systolic: 0, diastolic: 0 };
  private heard: Levels = { systolic: 0, diastolic: 0 };
  private circumstanceDb = 0;
  private contour: Contour = contourOf('middle', 'brachial');
  private isCongested = false;
  private isPressed = false;
  private run = 0;

  restart(person: Person, circumstances: Circumstances, instrument: Instrument, run = 0): void {
    this.person = person;
    this.soundKey = keyOf(person.beatSeed, 'ksound');
    this.peakDb = person.soundDb;
    this.spreadDb = person.soundSdDb;
    this.hasSwish = person.hasSwish;
    this.hasCrisp = person.hasCrisp;
    this.contour = contourOf(person.scenario.waveShape, 'brachial');
    this.isCongested = false;
    this.run = run;
    this.change(circumstances, instrument);
  }

  /** Other circumstances from now on. */
  change(circumstances: Circumstances, instrument: Instrument): void {
    const person = this.person;
    if (person === null) return;
    const { systolic, diastolic } = person.rest;
    if (
      circumstances !== this.circumstances ||
      instrument !== this.instrument ||
      person.scenario !== this.summed
    ) {
      this.circumstances = circumstances;
      this.instrument = instrument;
      this.summed = person.scenario;
      this.cuff = sumOf(cuffEffects(person, circumstances, instrument));
      this.heard = sumOf(soundEffects(circumstances));
      this.circumstanceDb = gainOf(circumstances);
    }
    // The cuff presses as if it were less by the bias: a straight line through both levels.
    const { cuff } = this;
    this.slope = (systolic - diastolic) / (systolic - diastolic + cuff.systolic - cuff.diastolic);
    this.offset = diastolic - this.slope * (diastolic + cuff.diastolic);
    this.heardSystolic = this.heard.systolic;
    this.heardDiastolic = this.heard.diastolic;
    this.gainDb = this.circumstanceDb;
    this.muffledAbove = person.muffledAboveMmHg ?? Number.NEGATIVE_INFINITY;
    if (circumstances.wasReinflated) this.muffledAbove += CIRCUMSTANCE_FIGURES.congestedMuffledMmHg.value;
    this.feeling = feelingOf(person, circumstances);
    const { gap } = person;
    this.gapTopBelow = gap === null ? 0 : systolic - gap.topMmHg;
    this.gapWidth =
      gap === null
        ? 0
        : (gap.topMmHg - gap.bottomMmHg) * (circumstances.wasArmRaised ? F.gapRaisedShare.value : 1);
    this.isPressed = circumstances.chestPiece === 'pressed-hard';
    this.applyTail();
    if (this.isCongested) this.addCongestion();
  }

  /** Whether muffled sounds may go on below the diastolic. */
  get mayGoOn(): boolean {
    return this.hasTail;
  }

  /** A new inflation, the `run`-th of the visit from 0: whether sounds go on to the end this time. */
  beginRun(run: number): void {
    this.run = run;
    if (this.isCongested) {
      this.isCongested = false;
      this.addCongestion(-1);
    }
    this.applyTail();
  }

  /** Over a minute within the sounds. */
  congest(): void {
    if (this.isCongested) return;
    this.isCongested = true;
    this.addCongestion();
  }

  private addCongestion(times = 1): void {
    this.heardDiastolic += times * CIRCUMSTANCE_FIGURES.congestedDiastolic.value;
    this.gainDb += times * CIRCUMSTANCE_FIGURES.congestedDb.value;
    this.muffledAbove += times * CIRCUMSTANCE_FIGURES.congestedMuffledMmHg.value;
  }

  private applyTail(): void {
    const scenario = this.person?.scenario;
    if (scenario === undefined) return;
    const to = scenario.soundsToMmHg;
    const goesOn =
      to !== null && uniformOf(this.soundKey, -1 - this.run, TAIL_LANE) < scenario.soundsToChance;
    this.hasTail = goesOn || this.isPressed;
    this.tailTo = goesOn ? to : Number.NEGATIVE_INFINITY;
    this.tailMmHg = goesOn ? F.tailMmHg.value : F.pressedTailMmHg.value;
  }

  /** The pressure that acts on the artery at a pressure in the cuff. */
  outside(cuffMmHg: number): number {
    return this.offset + this.slope * cuffMmHg;
  }

  /** Seconds after the foot at which the pulse has climbed to an outside pressure; infinite when it never does. */
  opensAfter(beat: Beating, outside: number): number {
    const top = beat.systolic + this.heardSystolic;
    if (outside > top) return Number.POSITIVE_INFINITY;
    const foot = beat.diastolic + this.heardDiastolic;
    const height = foot >= top - 1 ? 1 : (outside - foot) / (top - foot);
    return this.contour.riseTo(height) * beat.stretch;
  }

  /** Longest that a beat can take to open the artery, seconds after the foot. */
  longestOpening(beat: Beating): number {
    return this.contour.peakSeconds * beat.stretch;
  }

  /** Loudness of the sound of a beat at an outside pressure, dB; `SILENT` where there is none. */
  levelDb(beat: Beating, outside: number): number {
    const below = beat.systolic + this.heardSystolic - outside;
    if (below < 0) return SILENT;
    const above = outside - beat.diastolic - this.heardDiastolic;
    if (above <= 0 && (!this.hasTail || outside < this.tailTo)) return SILENT;
    const extra =
      this.gainDb + beat.loudness + this.spreadDb * normalOf(this.soundKey, beat.index, SOUND_LANE.level);
    if (above <= 0) {
      return TAIL_DB * exp(above / this.tailMmHg) + extra;
    }
    let closing = 1 - exp(-above / CLOSING_SCALE);
    // Where sounds go on they are never fainter over the diastolic than just under it.
    if (this.hasTail && closing * this.peakDb < TAIL_DB) closing = TAIL_DB / this.peakDb;
    const shape = (1 - exp(-below / OPENING_SCALE)) * closing;
    const strong = STRONG_BEAT_DB * (beat.systolic - beat.levelSystolic);
    let level = this.peakDb * shape + strong * shape + extra;
    if (this.gapWidth > 0) level += this.gapDb(beat, outside);
    if (this.hasSwish && this.phaseOf(beat, outside) === 2) level += SWISH_DB;
    return level;
  }

  /**
   * Whether the sound of a beat of which only bounds are known, met somewhere between two outside pressures, is surely one of
   * these: neither muffled nor fainter than a threshold.
   */
  isSurelyHeard(beat: BeatStream, low: number, high: number, thresholdDb: number): boolean {
    if (this.gapWidth > 0 || low > high) return false;
    const below = beat.leastSystolic + this.heardSystolic - high;
    const above = low - beat.mostDiastolic - this.heardDiastolic;
    if (below < WELL_BELOW_MMHG || above < WELL_ABOVE_MMHG || above <= this.muffledAbove) return false;
    const least = this.peakDb + STRONG_BEAT_DB * (beat.leastSystolic - beat.levels.systolic);
    const chance = Math.abs(this.spreadDb) * normalBound(this.soundKey, beat.index, SOUND_LANE.level);
    return least > 0 && least * LEAST_SHAPE + this.gainDb - chance + Math.min(0, SWISH_DB) > thresholdDb;
  }

  private gapDb(beat: Beating, outside: number): number {
    const top = beat.systolic - this.gapTopBelow;
    const bottom = top - this.gapWidth;
    if (outside <= top && outside >= bottom) return F.gapDb.value;
    const away = outside > top ? outside - top : bottom - outside;
    return away >= F.gapRampMmHg.value ? 0 : F.gapRampDb.value * (1 - away / F.gapRampMmHg.value);
  }

  /** Phase of the sound of a beat at an outside pressure. */
  phaseOf(beat: Beating, outside: number): Phase {
    const foot = beat.diastolic + this.heardDiastolic;
    const above = outside - foot;
    if (above <= this.muffledAbove || above <= 0) return 4;
    const place = above / (beat.systolic + this.heardSystolic - foot);
    if (place > SWISH_FROM) return 1;
    if (place > CRISP_FROM) return this.hasSwish ? 2 : 1;
    return this.hasCrisp ? 3 : 1;
  }

  /** Whether a finger at the wrist feels a beat past an outside pressure. */
  isFelt(beat: Beating, outside: number): boolean {
    return beat.isFelt && beat.systolic - outside >= this.feeling;
  }

  copyFrom(other: Arm): void {
    Object.assign(this, other);
  }
}

function gainOf(circumstances: Circumstances): number {
  const f = CIRCUMSTANCE_FIGURES;
  return (
    f.offArteryDbPerMm.value * circumstances.chestPieceOffMm +
    (circumstances.hasTightSleeve ? f.sleeveDb.value : 0) +
    (circumstances.isOverSleeve ? f.overSleeveDb.value : 0) +
    (circumstances.chestPiece === 'under-cuff' ? f.underCuffDb.value : 0) +
    (circumstances.wasReinflated ? f.congestedDb.value : 0)
  );
}
