import type { LetDownPlan } from './plan.js';

/** A fall made ready: the pressure at any instant, and the instant at which it is down. */
export class Fall {
  endSeconds = 0;
  private start = 0;
  private peak = 0;
  private rate = 0;
  private count = 1;
  private readonly from = new Float64Array(MOST_STRETCHES);
  private readonly top = new Float64Array(MOST_STRETCHES);
  private readonly rates = new Float64Array(MOST_STRETCHES);

  restart(plan: LetDownPlan): void {
    this.start = plan.startSeconds;
    this.peak = plan.peakMmHg;
    if (typeof plan.fall === 'number') {
      this.count = 1;
      this.rate = plan.fall;
      this.endSeconds = this.start + this.peak / this.rate;
      return;
    }
    let at = this.start;
    let mmHg = this.peak;
    this.count = Math.min(plan.fall.length, MOST_STRETCHES);
    for (let i = 0; i < this.count; i++) {
      const stretch = plan.fall[i] ?? { mmHgPerSecond: 1, toMmHg: 0 };
      this.from[i] = at;
      this.top[i] = mmHg;
      this.rates[i] = stretch.mmHgPerSecond;
      const to = i === this.count - 1 ? 0 : Math.min(mmHg, stretch.toMmHg);
      at += (mmHg - to) / stretch.mmHgPerSecond;
      mmHg = to;
    }
    this.endSeconds = at;
  }

  /** mmHg per second at an instant. */
  rateAt(seconds: number): number {
    if (this.count === 1 && this.rate > 0) return this.rate;
    return this.rates[this.stretchAt(seconds)] as number;
  }

  cuffAt(seconds: number): number {
    if (seconds <= this.start) return this.peak;
    if (seconds >= this.endSeconds) return 0;
    if (this.count === 1 && this.rate > 0) return this.peak - this.rate * (seconds - this.start);
    const i = this.stretchAt(seconds);
    return (this.top[i] as number) - (this.rates[i] as number) * (seconds - (this.from[i] as number));
  }

  private stretchAt(seconds: number): number {
    let i = this.count - 1;
    while (i > 0 && seconds < (this.from[i] as number)) i -= 1;
    return i;
  }
}

const MOST_STRETCHES = 32;

/** Pressure in the cuff of a plan at an instant, mmHg: the peak before it begins, 0 after it is down. */
export function cuffOf(plan: LetDownPlan, seconds: number): number {
  const fall = new Fall();
  fall.restart(plan);
  return fall.cuffAt(seconds);
}
