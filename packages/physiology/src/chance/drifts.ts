import { LAG_IN_SPACINGS, toUnitSd } from './drift.js';
import { normalOf } from './normal.js';

const KNOTS = 4;

/**
 * Several courses like `Drift`, moved together: to the last bit what as many of those would give, in columns, which the engine
 * reads faster than objects.
 */
export class Drifts {
  /** What each is at the instant last moved to. */
  readonly values: Float64Array;
  private readonly cells: Float64Array;
  private readonly perSecond: Float64Array;
  private readonly knots: Float64Array;
  private key = 0;
  private lane = 0;

  /** @param timeConstantSeconds the lag over which the correlation of each falls to 1/e */
  constructor(timeConstantSeconds: readonly number[]) {
    this.perSecond = Float64Array.from(timeConstantSeconds, (seconds) => LAG_IN_SPACINGS / seconds);
    this.values = new Float64Array(timeConstantSeconds.length);
    this.cells = new Float64Array(timeConstantSeconds.length).fill(Number.NaN);
    this.knots = new Float64Array(KNOTS * timeConstantSeconds.length);
  }

  /** @param lane of the first; the others have the lanes after it */
  restart(key: number, lane: number): void {
    this.key = key | 0;
    this.lane = lane | 0;
    this.cells.fill(Number.NaN);
  }

  /** To an instant: `values` then holds what each is there. */
  moveTo(seconds: number): void {
    const { values, cells, perSecond, knots } = this;
    for (let i = 0; i < values.length; i++) {
      const u = seconds * (perSecond[i] as number);
      const cell = Math.floor(u);
      if (cell !== cells[i]) this.draw(i, cell);
      const f = u - cell;
      const g = 1 - f;
      const w0 = g * g * g;
      const w1 = 4 - 6 * f * f + 3 * f * f * f;
      const w2 = 4 - 6 * g * g + 3 * g * g * g;
      const w3 = f * f * f;
      const at = KNOTS * i;
      values[i] =
        (w0 * (knots[at] as number) +
          w1 * (knots[at + 1] as number) +
          w2 * (knots[at + 2] as number) +
          w3 * (knots[at + 3] as number)) *
        toUnitSd(f * g);
    }
  }

  private draw(i: number, cell: number): void {
    const { knots, key } = this;
    const lane = this.lane + i;
    const at = KNOTS * i;
    const first = (cell | 0) - 1;
    const isNext = cell === (this.cells[i] as number) + 1;
    knots[at] = isNext ? (knots[at + 1] as number) : normalOf(key, first, lane);
    knots[at + 1] = isNext ? (knots[at + 2] as number) : normalOf(key, first + 1, lane);
    knots[at + 2] = isNext ? (knots[at + 3] as number) : normalOf(key, first + 2, lane);
    knots[at + 3] = normalOf(key, first + 3, lane);
    this.cells[i] = cell;
  }

  copyFrom(other: Drifts): void {
    this.values.set(other.values);
    this.cells.set(other.cells);
    this.knots.set(other.knots);
    this.key = other.key;
    this.lane = other.lane;
  }
}
