import { exp } from '../exact/exponential.js';
import { TICK_SECONDS } from '../rig/tick.js';
import { CUFF_FIGURES as F } from './figures.js';
import type { Instrument } from './instrument.js';

const ANEROID_STEP = 1 - exp(-TICK_SECONDS / F.aneroidLagSeconds.value);
/** A column swings: twice the damping over its angular frequency is its lag on a steady fall. */
const COLUMN_RATE = (2 * F.columnDamping.value) / F.columnLagSeconds.value;

/** The needle or column: lag, overshoot, zero, scale and friction, and the pin at the end of the scale. */
export class Gauge {
  /** What is shown. */
  shown: number;
  private inside = 0;
  private speed = 0;
  private readonly instrument: Instrument;

  constructor(instrument: Instrument) {
    this.instrument = instrument;
    this.shown = instrument.zeroOffsetMmHg;
  }

  /** One tick on, with this pressure in the cuff. */
  tick(mmHg: number): void {
    if (this.instrument.gauge === 'aneroid') this.inside += (mmHg - this.inside) * ANEROID_STEP;
    else {
      this.speed +=
        TICK_SECONDS *
        COLUMN_RATE *
        (COLUMN_RATE * (mmHg - this.inside) - 2 * F.columnDamping.value * this.speed);
      this.inside += TICK_SECONDS * this.speed;
    }
    const free = gaugeFor(this.instrument, this.inside);
    const off = free - this.shown;
    if (off > this.instrument.frictionMmHg || off < -this.instrument.frictionMmHg)
      this.shown = Math.min(free, F.scaleEndMmHg.value);
  }

  copyFrom(other: Gauge): void {
    this.shown = other.shown;
    this.inside = other.inside;
    this.speed = other.speed;
  }
}

/** What an instrument shows for a pressure, once it has settled, if its scale went on for ever. */
export function gaugeFor(instrument: Instrument, mmHg: number): number {
  return mmHg * (1 + instrument.scaleError) + instrument.zeroOffsetMmHg;
}

/** How far a gauge is behind, in seconds of a steady fall. */
export function gaugeLagSeconds(instrument: Instrument): number {
  return instrument.gauge === 'aneroid' ? F.aneroidLagSeconds.value : F.columnLagSeconds.value;
}
