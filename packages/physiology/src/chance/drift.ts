import { normalOf } from './normal.js';

/**
 * A slow wandering with mean 0 and SD 1 that can be asked at any instant without its past: normal numbers at knots
 * `spacing` apart, joined by cubic B-splines and scaled so that the SD is 1 everywhere. Its correlation with itself
 * falls to 1/e over about 1.2 spacings. It stands in for the autoregressive processes of physiology handbook 2.1 and
 * 3.1, which would have to be stepped from the start of the visit.
 */
export class Drift {
  /** What it is at the instant last moved to: left here, for a number that is handed back is an object to the engine. */
  value = Number.NaN;
  private cell = Number.NaN;
  private a = Number.NaN;
  private b = Number.NaN;
  private c = Number.NaN;
  private d = Number.NaN;
  private key = 0;
  private lane = 0;
  private perSecond = 1;

  /** @param timeConstantSeconds the lag over which its correlation falls to 1/e */
  restart(key: number, lane: number, timeConstantSeconds: number): void {
    this.key = key | 0;
    this.lane = lane;
    this.perSecond = LAG_IN_SPACINGS / timeConstantSeconds;
    this.cell = Number.NaN;
  }

  /** To an instant: `value` then holds what it is there. */
  moveTo(seconds: number): void {
    const u = seconds * this.perSecond;
    const cell = Math.floor(u);
    if (cell !== this.cell) this.draw(cell);
    const f = u - cell;
    const g = 1 - f;
    const w0 = g * g * g;
    const w1 = 4 - 6 * f * f + 3 * f * f * f;
    const w2 = 4 - 6 * g * g + 3 * g * g * g;
    const w3 = f * f * f;
    this.value = (w0 * this.a + w1 * this.b + w2 * this.c + w3 * this.d) * toUnitSd(f * g);
  }

  private draw(cell: number): void {
    const isNext = cell === this.cell + 1;
    const at = cell | 0;
    this.a = isNext ? this.b : normalOf(this.key, at - 1, this.lane);
    this.b = isNext ? this.c : normalOf(this.key, at, this.lane);
    this.c = isNext ? this.d : normalOf(this.key, at + 1, this.lane);
    this.d = normalOf(this.key, at + 2, this.lane);
    this.cell = cell;
  }

  copyFrom(other: Drift): void {
    this.value = other.value;
    this.cell = other.cell;
    this.a = other.a;
    this.b = other.b;
    this.c = other.c;
    this.d = other.d;
    this.key = other.key;
    this.lane = other.lane;
    this.perSecond = other.perSecond;
  }
}

/** Spacings over which the correlation of the spline falls to 1/e, averaged over where one starts. */
export const LAG_IN_SPACINGS = 1.19;

/**
 * What a sum of four normal numbers by the weights of the spline is multiplied by, so that its SD is 1: one over the root
 * of the sum of their squares, within 0.01 percent. Fitted for this project.
 *
 * @param evenness f (1 - f) of the part f of a spacing: the weights are even about its middle
 */
export function toUnitSd(evenness: number): number {
  return 0.235681 + evenness * (0.00145669 + evenness * (0.0959654 + evenness * 0.23472996));
}
