import { exp } from '../exact/exponential.js';
import type { Action } from '../rig/action.js';
import { TICK_SECONDS } from '../rig/tick.js';
import { Air } from './air.js';
import { CUFF_FIGURES as F } from './figures.js';
import type { Instrument } from './instrument.js';
import { openingOf, outflow } from './valve.js';

type HandAction = Extract<
  Action,
  { kind: 'squeeze' | 'valve' | 'quick-release' | 'steady-fall' | 'steady-rise' | 'finger' }
>;

const COOLING = exp(-TICK_SECONDS / F.heatSeconds.value);
const RELEASING = exp(-TICK_SECONDS / F.releaseSeconds.value);

/** Bulb, valve, leak and the air in the cuff. */
export class Bulb {
  /** Pressure in the cuff. */
  mmHg = 0;
  valveDegrees = 0;
  outflowMlPerSecond = 0;
  private readonly air: Air;
  /** The part of the pressure that is warmth. */
  private heatMmHg = 0;
  /** Air still to come from the squeeze at hand, and how fast. */
  private comingMl = 0;
  private comingMlPerSecond = 0;
  private squeezedAt = -TICKS_LONG_AGO;
  private isReleased = false;
  private steadyRate = 0;
  private steadyTo = 0;
  private steadyFrom = 0;
  private steadySince = 0;
  private isSteady = false;

  private readonly instrument: Instrument;

  constructor(instrument: Instrument, isLoose: boolean) {
    this.instrument = instrument;
    this.air = new Air(instrument.bladder, isLoose);
  }

  get isSqueezing(): boolean {
    return this.comingMl > 0;
  }

  get isRising(): boolean {
    return this.comingMl > 0 || (this.isSteady && this.steadyRate > 0);
  }

  act(action: HandAction, tick: number): void {
    switch (action.kind) {
      case 'squeeze':
        this.isSteady = false;
        this.squeeze(action.share, tick);
        return;
      case 'valve':
        this.isSteady = false;
        this.isReleased = false;
        if (
          Math.abs(action.degrees - this.valveDegrees) >= F.valveStickDegrees.value ||
          action.degrees <= 0
        ) {
          this.valveDegrees = Math.max(0, Math.min(F.valveFullDegrees.value, action.degrees));
        }
        return;
      case 'quick-release':
        this.isSteady = false;
        this.isReleased = true;
        this.comingMl = 0;
        return;
      case 'steady-fall':
      case 'steady-rise':
        this.isSteady = true;
        this.isReleased = false;
        this.comingMl = 0;
        this.heatMmHg = 0;
        this.valveDegrees = 0;
        this.steadyRate = action.kind === 'steady-fall' ? -action.mmHgPerSecond : action.mmHgPerSecond;
        this.steadyTo = action.toMmHg;
        this.steadyFrom = this.mmHg;
        this.steadySince = tick;
        return;
      case 'finger':
        return;
    }
  }

  /** Where the screw stands: to let all air out it is turned wide open. */
  get screwDegrees(): number {
    return this.isReleased ? F.valveFullDegrees.value : this.valveDegrees;
  }

  /** One tick on from this tick. */
  tick(tick: number): void {
    if (this.isSteady) this.keepSteady(tick + 1);
    else if (this.isReleased) this.release();
    else this.flow();
  }

  copyFrom(other: Bulb): void {
    const { air, instrument, ...state } = other as unknown as Record<string, unknown>;
    Object.assign(this, state);
  }

  private squeeze(share: number, tick: number): void {
    const since = (tick - this.squeezedAt) * TICK_SECONDS;
    const filled = Math.min(1, since / F.refillSeconds.value);
    this.squeezedAt = tick;
    const drawn = F.bulbMl.value * Math.max(0, Math.min(1, share, filled));
    this.comingMl += (drawn * F.bulbEfficiency.value * F.airMmHg.value) / (F.airMmHg.value + this.mmHg);
    this.comingMlPerSecond = this.comingMl / F.squeezeSeconds.value;
  }

  private keepSteady(tick: number): void {
    const wanted = this.steadyFrom + this.steadyRate * (tick - this.steadySince) * TICK_SECONDS;
    const isThere = this.steadyRate < 0 ? wanted <= this.steadyTo : wanted >= this.steadyTo;
    this.outflowMlPerSecond =
      this.steadyRate < 0 && !isThere ? -this.steadyRate * this.air.complianceAt(this.mmHg) : 0;
    this.mmHg = Math.max(0, isThere ? this.steadyTo : wanted);
    if (isThere) {
      this.steadyRate = 0;
      this.steadyFrom = this.mmHg;
    }
  }

  private release(): void {
    this.outflowMlPerSecond = (this.mmHg * this.air.complianceAt(this.mmHg)) / F.releaseSeconds.value;
    this.heatMmHg = 0;
    this.mmHg *= RELEASING;
    if (this.mmHg < 0.05) this.mmHg = 0;
  }

  private flow(): void {
    const coming = Math.min(this.comingMl, this.comingMlPerSecond * TICK_SECONDS);
    this.comingMl -= coming;
    if (this.comingMl < 1e-9) this.comingMl = 0;
    const cool = this.mmHg - this.heatMmHg;
    const compliance = this.air.complianceAt(Math.max(cool, 0));
    const rise = coming / compliance;
    this.heatMmHg = (this.heatMmHg + F.heatShare.value * rise) * COOLING;
    const opening = openingOf(this.valveDegrees);
    this.outflowMlPerSecond = outflow(opening, this.mmHg, this.instrument.valveExponent);
    const leak = this.mmHg > 0 ? this.instrument.leakMmHgPerMinute / 60 : 0;
    const next = cool + rise - (this.outflowMlPerSecond / compliance + leak) * TICK_SECONDS;
    // What is more is blown off, through the bulb that gave it.
    this.mmHg = Math.max(0, Math.min(next + this.heatMmHg, F.scaleEndMmHg.value));
    if (next < 0) this.heatMmHg = 0;
  }
}

const TICKS_LONG_AGO = 1_000_000;
