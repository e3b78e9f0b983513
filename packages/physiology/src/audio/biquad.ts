import { cosineOfTurns, sineOfTurns } from '../exact/circle.js';
import { gainOfDb } from './level.js';

/** Q of a filter whose passband is as flat as can be, 1 / sqrt 2. */
export const FLAT = Math.SQRT1_2;
/** A state smaller than this is silence; without it a dying filter counts in slow numbers. */
const SILENCE = 1e-25;

/**
 * A filter of second order. Designs: R. Bristow-Johnson, Cookbook formulae for audio EQ biquad filter coefficients,
 * as published by the W3C (Working Group Note of 2021); own sine and exponential, so the same on every machine.
 */
export class Biquad {
  private b0 = 1;
  private b1 = 0;
  private b2 = 0;
  private a1 = 0;
  private a2 = 0;
  private z1 = 0;
  private z2 = 0;

  static lowPass(rate: number, hz: number, quality = FLAT): Biquad {
    const { cos, alpha } = shape(rate, hz, quality);
    return new Biquad().set((1 - cos) / 2, 1 - cos, (1 - cos) / 2, 1 + alpha, -2 * cos, 1 - alpha);
  }

  static highPass(rate: number, hz: number, quality = FLAT): Biquad {
    const { cos, alpha } = shape(rate, hz, quality);
    return new Biquad().set((1 + cos) / 2, -1 - cos, (1 + cos) / 2, 1 + alpha, -2 * cos, 1 - alpha);
  }

  /** Passes its centre as it is. */
  static bandPass(rate: number, hz: number, quality: number): Biquad {
    return new Biquad().tuneBand(rate, hz, quality);
  }

  static peak(rate: number, hz: number, quality: number, db: number): Biquad {
    const { cos, alpha } = shape(rate, hz, quality);
    const a = gainOfDb(db / 2);
    return new Biquad().set(1 + alpha * a, -2 * cos, 1 - alpha * a, 1 + alpha / a, -2 * cos, 1 - alpha / a);
  }

  static lowShelf(rate: number, hz: number, db: number): Biquad {
    const { cos, alpha } = shape(rate, hz, FLAT);
    const a = gainOfDb(db / 2);
    const root = 2 * Math.sqrt(a) * alpha;
    return new Biquad().set(
      a * (a + 1 - (a - 1) * cos + root),
      2 * a * (a - 1 - (a + 1) * cos),
      a * (a + 1 - (a - 1) * cos - root),
      a + 1 + (a - 1) * cos + root,
      -2 * (a - 1 + (a + 1) * cos),
      a + 1 + (a - 1) * cos - root,
    );
  }

  /** Turns a band-pass to another centre while it runs. */
  tuneBand(rate: number, hz: number, quality: number): this {
    const { cos, alpha } = shape(rate, hz, quality);
    return this.set(alpha, 0, -alpha, 1 + alpha, -2 * cos, 1 - alpha);
  }

  private set(b0: number, b1: number, b2: number, a0: number, a1: number, a2: number): this {
    this.b0 = b0 / a0;
    this.b1 = b1 / a0;
    this.b2 = b2 / a0;
    this.a1 = a1 / a0;
    this.a2 = a2 / a0;
    return this;
  }

  next(x: number): number {
    const y = this.b0 * x + this.z1;
    this.z1 = this.b1 * x - this.a1 * y + this.z2;
    this.z2 = this.b2 * x - this.a2 * y;
    return y;
  }

  /** Filters in place. */
  run(samples: Float64Array): void {
    const { b0, b1, b2, a1, a2 } = this;
    let { z1, z2 } = this;
    for (let i = 0; i < samples.length; i++) {
      const x = samples[i] as number;
      const y = b0 * x + z1;
      z1 = b1 * x - a1 * y + z2;
      z2 = b2 * x - a2 * y;
      if (z1 < SILENCE && z1 > -SILENCE) z1 = 0;
      samples[i] = y;
    }
    this.z1 = z1;
    this.z2 = z2;
  }
}

function shape(rate: number, hz: number, quality: number): { cos: number; alpha: number } {
  const turns = hz / rate;
  return { cos: cosineOfTurns(turns), alpha: sineOfTurns(turns) / (2 * quality) };
}
