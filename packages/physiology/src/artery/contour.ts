import { exp } from '../exact/exponential.js';
import type { ArterySite, WaveShape } from './waveShape.js';

/** A Gaussian bump: height, middle in seconds after the foot, width in seconds, at a beat of 0.857 s. */
type Bump = readonly [height: number, middle: number, width: number];
type Bumps = readonly [Bump, Bump, Bump];

/** The interval that the bumps below are tuned at, seconds. */
export const CONTOUR_INTERVAL = 0.857;

const COLLAPSING: Bumps = [
  [1, 0.13, 0.04],
  [0.45, 0.22, 0.045],
  [0.14, 0.4, 0.11],
];
const SLOW_RISING: Bumps = [
  [0.55, 0.19, 0.075],
  [0.85, 0.29, 0.095],
  [0.3, 0.47, 0.13],
];
const VASODILATED: Bumps = [
  [1, 0.13, 0.042],
  [0.25, 0.23, 0.05],
  [0.3, 0.43, 0.09],
];
const CONSTRICTED: Bumps = [
  [1, 0.14, 0.045],
  [0.45, 0.23, 0.05],
  [0.2, 0.38, 0.11],
];

/** Contours as three Gaussians. Source: physiology handbook 3.2 (form: Liu 2013; the numbers are choices of the book). */
export const CONTOURS: Readonly<Record<ArterySite, Readonly<Record<WaveShape, Bumps>>>> = {
  brachial: {
    young: [
      [1, 0.145, 0.05],
      [0.52, 0.265, 0.055],
      [0.5, 0.44, 0.135],
    ],
    middle: [
      [0.95, 0.145, 0.05],
      [0.74, 0.255, 0.058],
      [0.46, 0.43, 0.135],
    ],
    old: [
      [0.8, 0.145, 0.052],
      [0.98, 0.245, 0.066],
      [0.42, 0.42, 0.14],
    ],
    collapsing: COLLAPSING,
    'slow-rising': SLOW_RISING,
    vasodilated: VASODILATED,
    constricted: CONSTRICTED,
  },
  radial: {
    young: [
      [1, 0.15, 0.048],
      [0.34, 0.27, 0.05],
      [0.46, 0.45, 0.13],
    ],
    middle: [
      [1, 0.15, 0.05],
      [0.52, 0.265, 0.052],
      [0.42, 0.44, 0.13],
    ],
    old: [
      [1, 0.15, 0.052],
      [0.78, 0.255, 0.058],
      [0.36, 0.43, 0.13],
    ],
    collapsing: COLLAPSING,
    'slow-rising': SLOW_RISING,
    vasodilated: VASODILATED,
    constricted: CONSTRICTED,
  },
};

const SAMPLES = 1024;
const RISE_STEPS = 128;

/** A contour ready to be looked up: 0 at the foot, 1 at the top, one beat of 0.857 s long. */
export class Contour {
  /** Seconds from the foot to the top. */
  readonly peakSeconds: number;
  /** Mean over the beat: the form factor. */
  readonly mean: number;
  /** Steepest rise, pulse pressures a second. */
  readonly steepest: number;
  private readonly samples = new Float64Array(SAMPLES + 1);
  private readonly rise = new Float64Array(RISE_STEPS + 2);

  constructor(bumps: Bumps) {
    const step = CONTOUR_INTERVAL / SAMPLES;
    const raw = new Float64Array(SAMPLES);
    for (let i = 0; i < SAMPLES; i++) raw[i] = heightOf(bumps, i * step);
    let foot = 0;
    let top = 0;
    for (let i = 1; i < SAMPLES; i++) {
      if ((raw[i] as number) < (raw[foot] as number)) foot = i;
      if ((raw[i] as number) > (raw[top] as number)) top = i;
    }
    const low = raw[foot] as number;
    const span = (raw[top] as number) - low;
    let sum = 0;
    let steepest = 0;
    for (let i = 0; i <= SAMPLES; i++) {
      this.samples[i] = ((raw[(foot + i) % SAMPLES] as number) - low) / span;
      if (i === 0) continue;
      sum += this.samples[i] as number;
      steepest = Math.max(steepest, (this.samples[i] as number) - (this.samples[i - 1] as number));
    }
    this.mean = sum / SAMPLES;
    this.steepest = steepest / step;
    this.peakSeconds = (((top - foot + SAMPLES) % SAMPLES) * CONTOUR_INTERVAL) / SAMPLES;
    this.fillRise(step);
  }

  /** Height at so many seconds after the foot of a beat of 0.857 s. */
  at(seconds: number): number {
    const u = (seconds * SAMPLES) / CONTOUR_INTERVAL;
    if (u <= 0) return 0;
    if (u >= SAMPLES) return 0;
    const i = Math.floor(u);
    const low = this.samples[i] as number;
    return low + (u - i) * ((this.samples[i + 1] as number) - low);
  }

  /** Seconds after the foot at which a height (0 to 1) is first reached, in a beat of 0.857 s. */
  riseTo(height: number): number {
    if (height >= 1) return this.peakSeconds;
    if (height <= 0) return 0;
    const u = height * RISE_STEPS;
    const i = Math.floor(u);
    const low = this.rise[i] as number;
    return low + (u - i) * ((this.rise[i + 1] as number) - low);
  }

  private fillRise(step: number): void {
    let i = 0;
    for (let k = 0; k <= RISE_STEPS; k++) {
      const height = k / RISE_STEPS;
      while (i < SAMPLES && (this.samples[i + 1] as number) < height) i++;
      const low = this.samples[i] as number;
      const up = (this.samples[i + 1] as number) - low;
      this.rise[k] = step * (up > 0 ? i + Math.max(0, height - low) / up : i);
    }
    this.rise[RISE_STEPS + 1] = this.peakSeconds;
  }
}

/** Sum of the bumps of this beat and of its neighbours. */
function heightOf(bumps: Bumps, seconds: number): number {
  let sum = 0;
  for (const [height, middle, width] of bumps) {
    for (let beat = -2; beat <= 2; beat++) {
      const z = (seconds - middle - beat * CONTOUR_INTERVAL) / width;
      sum += height * exp((-z * z) / 2);
    }
  }
  return sum;
}

/** Asked for at every tick, so without a key that would have to be put together first. */
const MADE: Readonly<Record<ArterySite, Partial<Record<WaveShape, Contour>>>> = { brachial: {}, radial: {} };

/** The contour of a shape at a site. */
export function contourOf(shape: WaveShape, site: ArterySite): Contour {
  const made = MADE[site];
  made[shape] ??= new Contour(CONTOURS[site][shape]);
  return made[shape];
}
