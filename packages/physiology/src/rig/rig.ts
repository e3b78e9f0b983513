import { AtApex } from '../apex/atApex.js';
import type { HeartSound } from '../apex/heartSound.js';
import { contourOf } from '../artery/contour.js';
import { meetingIn } from '../artery/meetingIn.js';
import { heightWithin, pressureWithin } from '../artery/pressureWithin.js';
import type { Breath } from '../breathing/breath.js';
import { BreathStream } from '../breathing/breathStream.js';
import { chestMm } from '../breathing/breaths.js';
import { chestOf } from '../breathing/chest.js';
import type { Circumstances } from '../circumstances/circumstances.js';
import { Bulb } from '../cuff/bulb.js';
import { Gauge } from '../cuff/gauge.js';
import { type Instrument, withAnotherGauge } from '../cuff/instrument.js';
import { swingOf, type Wall, wallOf } from '../cuff/oscillation.js';
import { type Beating, keptBeat } from '../heart/beating.js';
import { BeatStream } from '../heart/beatStream.js';
import type { Person } from '../person/person.js';
import { Arm, SILENT } from '../sound/arm.js';
import { describeSound } from '../sound/describe.js';
import { SOUND_FIGURES } from '../sound/figures.js';
import type { FeltPulse, SoundEvent } from '../sound/soundEvent.js';
import type { Action } from './action.js';
import { circumstancesAfter } from './arranged.js';
import { TICK_SECONDS } from './tick.js';

/** What came about since the last advance, in order of time. */
export type RigEvents = {
  readonly sounds: SoundEvent[];
  readonly felt: FeltPulse[];
  /** Of the heart, while the chest piece lies at the apex. */
  readonly heart: HeartSound[];
};

/** Everything that a picture of the instant shows. */
export type RigSnapshot = {
  readonly tick: number;
  readonly seconds: number;
  readonly cuffMmHg: number;
  readonly needleMmHg: number;
  /** Pressure in the artery of the arm. */
  readonly arterialMmHg: number;
  /** Pulse at the wrist past the cuff: 0 between beats, about 1 at the top of a usual beat at an open wrist. */
  readonly wrist: number;
  /** Movement of the chest, mm. */
  readonly chestMm: number;
  /** Turns of the breath: 0 to 0.5 in, 0.5 to 1 out, 1 still. */
  readonly breathTurns: number;
  readonly valveDegrees: number;
  /** Air on its way out, mL a second: the hiss of the valve. */
  readonly outflowMlPerSecond: number;
  readonly isSqueezing: boolean;
  /** The beat that reached the arm last; -1 before the first. */
  readonly beat: number;
  readonly isListening: boolean;
  /** Whether the chest piece lies at the apex: then it is not on the arm. */
  readonly isAtApex: boolean;
};

/** A person, a cuff, a gauge and hands, stepped tick by tick. Made by `startRig`. */
export class Rig {
  tick = 0;
  private readonly stream = new BeatStream();
  private readonly breath = new BreathStream();
  private readonly arm = new Arm();
  private bulb: Bulb;
  private gauge: Gauge;
  private wall: Wall;
  private circumstances: Circumstances;
  private isListening = true;
  private readonly apex = new AtApex();
  /** Beats whose foot has come and of which it is not settled yet whether they open the artery. */
  private pending: Beating[] = [];
  private current: Beating | null = null;
  /** How strong the pulse of the current beat is at the wrist, and that of the one before. */
  private strength = 1;
  private runs = 0;
  private wasFlat = true;
  private openSince = Number.NaN;

  readonly person: Person;
  private instrument: Instrument;
  /** When a cuff was first pumped up in this visit; null: not yet. */
  firstInflationSeconds: number | null;

  constructor(person: Person, circumstances: Circumstances, instrument: Instrument) {
    this.person = person;
    this.instrument = instrument;
    this.firstInflationSeconds = circumstances.firstInflationSeconds;
    this.circumstances = circumstances;
    this.stream.restart(person, circumstances, null);
    this.breath.restart(person, circumstances);
    this.arm.restart(person, circumstances, instrument);
    this.bulb = new Bulb(instrument, circumstances.isCuffLoose);
    this.gauge = new Gauge(instrument);
    this.wall = wallOf(person.scenario.traits.isStiff, circumstances.isCuffLoose);
    // The visit's clock starts at the person's origin.
    this.tick = Math.floor(person.originSeconds / TICK_SECONDS + 0.5);
  }

  /** On to a tick, doing the actions on the way; one stamped earlier than now is done at once. */
  advance(toTick: number, actions: readonly Action[] = []): RigEvents {
    const events: RigEvents = { sounds: [], felt: [], heart: [] };
    let done = 0;
    while (this.tick < toTick) {
      for (; done < actions.length && (actions[done] as Action).tick <= this.tick; done++)
        this.act(actions[done] as Action);
      this.step(events);
    }
    return events;
  }

  snapshot(): RigSnapshot {
    const seconds = this.tick * TICK_SECONDS;
    this.breath.moveTo(seconds);
    return {
      tick: this.tick,
      seconds,
      cuffMmHg: this.bulb.mmHg,
      needleMmHg: this.gauge.shown,
      arterialMmHg: this.arterial(seconds),
      wrist: this.wrist(seconds),
      chestMm: chestMm(this.person) * chestOf(this.breath, seconds),
      breathTurns: this.breath.turnsAt(seconds),
      valveDegrees: this.bulb.screwDegrees,
      outflowMlPerSecond: this.bulb.outflowMlPerSecond,
      isSqueezing: this.bulb.isSqueezing,
      beat: this.current?.index ?? -1,
      isListening: this.isListening,
      isAtApex: this.apex.isOn,
    };
  }

  /** The beat that reached the arm last; null before the first. */
  get beat(): Pick<Beating, 'index' | 'systolic' | 'diastolic'> | null {
    return this.current;
  }

  /** The breath at hand. */
  get breathing(): Breath {
    const { index, start, duration, inspiration, moving, depth, isSigh } = this.breath;
    return {
      index,
      startSeconds: start,
      durationSeconds: duration,
      inspirationSeconds: inspiration,
      movingSeconds: moving,
      depth,
      isSigh,
    };
  }

  get seconds(): number {
    return this.tick * TICK_SECONDS;
  }

  get cuffMmHg(): number {
    return this.bulb.mmHg;
  }

  get needleMmHg(): number {
    return this.gauge.shown;
  }

  /** The same rig once more; both go on alone. */
  copy(): Rig {
    const other = new Rig(this.person, this.circumstances, this.instrument);
    other.tick = this.tick;
    other.stream.copyFrom(this.stream);
    other.breath.copyFrom(this.breath);
    other.arm.copyFrom(this.arm);
    other.bulb.copyFrom(this.bulb);
    other.gauge.copyFrom(this.gauge);
    other.isListening = this.isListening;
    other.apex.copyFrom(this.apex);
    other.pending = [...this.pending];
    other.current = this.current;
    other.strength = this.strength;
    other.runs = this.runs;
    other.wasFlat = this.wasFlat;
    other.openSince = this.openSince;
    other.firstInflationSeconds = this.firstInflationSeconds;
    return other;
  }

  /** The beats from this instant on, as they will come where nothing is changed: a copy that goes on alone. */
  beatsNow(): BeatStream {
    const beats = new BeatStream();
    beats.copyFrom(this.stream);
    return beats;
  }

  /** Inflations begun so far. */
  get inflations(): number {
    return this.runs;
  }

  private act(action: Action): void {
    switch (action.kind) {
      case 'chest-piece':
        this.isListening = action.offMm !== null;
        this.apex.isOn = false;
        this.change(action);
        return;
      case 'apex':
        // There is one chest piece: at the apex it is not on the arm, and taken from there it is in the hand.
        this.apex.isOn = action.isOn;
        this.isListening = false;
        return;
      case 'arm':
      case 'talk':
      case 'arrange':
        this.change(action);
        return;
      case 'cuff':
        this.wrap({ ...this.instrument, bladder: action.bladder });
        return;
      case 'gauge':
        this.wrap(withAnotherGauge(this.instrument));
        this.gauge = new Gauge(this.instrument);
        return;
      default:
        this.bulb.act(action, this.tick);
        if (this.wasFlat && this.bulb.isRising) this.inflate();
    }
  }

  private change(action: Action): void {
    const wasLoose = this.circumstances.isCuffLoose;
    this.circumstances = circumstancesAfter(this.circumstances, action);
    if (this.circumstances.isCuffLoose !== wasLoose) this.wrap(this.instrument);
    this.arm.change(this.circumstances, this.instrument);
    this.stream.levels.change(this.circumstances);
    this.breath.change(this.circumstances);
  }

  private wrap(instrument: Instrument): void {
    this.instrument = instrument;
    const { valveDegrees } = this.bulb;
    this.bulb = new Bulb(this.instrument, this.circumstances.isCuffLoose);
    this.wall = wallOf(this.person.scenario.traits.isStiff, this.circumstances.isCuffLoose);
    this.bulb.valveDegrees = valveDegrees;
    this.wasFlat = true;
    this.arm.change(this.circumstances, this.instrument);
  }

  /** Pumping up from flat begins a run. */
  private inflate(): void {
    this.arm.beginRun(this.runs);
    this.stream.levels.inflateAt(this.seconds);
    this.firstInflationSeconds ??= this.seconds;
    this.runs += 1;
    this.wasFlat = false;
    this.openSince = Number.NaN;
  }

  private step(events: RigEvents): void {
    const before = this.bulb.mmHg;
    this.bulb.tick(this.tick);
    this.tick += 1;
    const seconds = this.tick * TICK_SECONDS;
    const cuff = this.bulb.mmHg;
    if (cuff < FLAT_MMHG && !this.bulb.isRising) this.wasFlat = true;
    this.listen(events, seconds);
    while (this.stream.foot <= seconds) {
      this.current = keptBeat(this.stream);
      this.pending.push(this.current);
      this.stream.next();
      this.listen(events, seconds);
    }
    if (this.pending.length > 0) this.settle(events, seconds, before, cuff);
    this.gauge.tick(cuff + this.swing(seconds, cuff));
  }

  private listen({ heart }: RigEvents, seconds: number): void {
    this.apex.upTo(seconds, this.current, this.stream, this.person, this.arm.soundKey, heart);
  }

  /** Which of the waiting beats have opened the artery within this tick, and which never will. */
  private settle(events: RigEvents, seconds: number, before: number, cuff: number): void {
    const waiting: Beating[] = [];
    for (const beat of this.pending) {
      const at = this.openingWithin(beat, seconds, before, cuff);
      if (at >= 0)
        this.opened(events, beat, at, before + ((at - seconds) / TICK_SECONDS + 1) * (cuff - before));
      else if (seconds <= beat.foot + this.arm.longestOpening(beat)) waiting.push(beat);
      else this.staysShut(beat);
    }
    this.pending = waiting;
  }

  /** The cuff is over the beat's systolic: whatever was heard on the way up does not count any more. */
  private staysShut(beat: Beating): void {
    this.openSince = Number.NaN;
    if (beat === this.current) this.strength = 0;
  }

  /** The instant within the last tick at which a beat has climbed to the cuff's pressure; -1 where it has not. */
  private openingWithin(beat: Beating, seconds: number, before: number, cuff: number): number {
    const after = this.arm.opensAfter(beat, this.arm.outside(cuff));
    if (!(beat.foot + after <= seconds)) return -1;
    const climb = (at: number) => {
      const then = before + ((at - seconds) / TICK_SECONDS + 1) * (cuff - before);
      return beat.foot + this.arm.opensAfter(beat, this.arm.outside(then));
    };
    // Past the top of the pulse it is too late, however low the cuff is by now.
    const top = beat.foot + this.arm.longestOpening(beat);
    if (top < seconds && !Number.isFinite(climb(top))) return -1;
    // The same steps as in the batch face, on the straight line between the two ticks.
    let at = beat.foot + after;
    for (let step = 0; step < SETTLING_STEPS; step++) {
      const once = climb(at);
      const twice = climb(once);
      // Over the top of the pulse at one of the two: the cuff came under it only just in time.
      if (!Number.isFinite(twice)) break;
      if (!(Math.abs(once - at) > SETTLED_SECONDS)) return Math.min(at, seconds);
      const bend = twice - 2 * once + at;
      at = bend === 0 ? twice : at - ((once - at) * (once - at)) / bend;
    }
    return meetingIn(beat.foot, Math.min(top, seconds), climb);
  }

  private opened(events: RigEvents, beat: Beating, at: number, cuff: number): void {
    const outside = this.arm.outside(cuff);
    const level = this.arm.levelDb(beat, outside);
    if (level !== SILENT && outside < beat.systolic && outside > beat.diastolic) {
      // The clock begins with the fall, as that of the batch face does.
      if (Number.isNaN(this.openSince)) this.openSince = this.bulb.isRising ? Number.NaN : at;
      else if (at - this.openSince > SOUND_FIGURES.congestedAfterSeconds.value) this.arm.congest();
    }
    if (level !== SILENT && this.isListening && cuff > FLAT_MMHG) {
      const phase = this.arm.phaseOf(beat, outside);
      events.sounds.push(describeSound(this.person, this.arm.soundKey, beat.index, at, cuff, phase, level));
    }
    const isFelt = this.arm.isFelt(beat, outside);
    const past = (beat.systolic - outside) / (beat.systolic - beat.diastolic);
    const strength = Math.max(0, Math.min(1, past)) * beat.stroke;
    if (beat === this.current) this.strength = strength;
    events.felt.push({
      atSeconds: at + SOUND_FIGURES.wristAfterSeconds.value,
      beat: beat.index,
      strength,
      isFelt,
    });
  }

  /** The needle swings about what is in the cuff: that is the middle of it. Source: physiology handbook 6.4. */
  private swing(seconds: number, cuff: number): number {
    const beat = this.current;
    if (beat === null || cuff <= FLAT_MMHG) return 0;
    const { openingMmHg, closingMmHg } = this.person;
    const levels = { systolic: beat.systolic + openingMmHg, diastolic: beat.diastolic - closingMmHg };
    return swingOf(this.wall, this.arterial(seconds), levels, this.arm.outside(cuff));
  }

  private arterial(seconds: number): number {
    const { openingMmHg, closingMmHg, scenario } = this.person;
    const beat = this.current;
    const next = this.stream;
    if (beat === null) return next.diastolic - closingMmHg;
    return pressureWithin(
      contourOf(scenario.waveShape, 'brachial'),
      seconds - beat.foot,
      next.foot - beat.foot,
      beat.stretch,
      beat.diastolic - closingMmHg,
      beat.systolic + openingMmHg,
      next.diastolic - closingMmHg,
    );
  }

  private wrist(seconds: number): number {
    const beat = this.current;
    if (beat === null) return 0;
    const since = seconds - beat.foot - SOUND_FIGURES.wristAfterSeconds.value;
    if (since <= 0) return 0;
    const contour = contourOf(this.person.scenario.waveShape, 'radial');
    return this.strength * heightWithin(contour, since, this.stream.foot - beat.foot, beat.stretch);
  }
}

/** Under this pressure a cuff is flat: nothing is heard through it, and pumping up again is a new run. */
export const FLAT_MMHG = 4;
const SETTLING_STEPS = 8;
const SETTLED_SECONDS = 1e-9;

/** A rig at the start of the visit: cuff on, empty, chest piece where the circumstances have it. */
export function startRig(person: Person, circumstances: Circumstances, instrument: Instrument): Rig {
  return new Rig(person, circumstances, instrument);
}
