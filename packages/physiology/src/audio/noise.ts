import { uniformOf } from '../chance/uniform.js';
import { exp } from '../exact/exponential.js';

const TWO_TO_32 = 2 ** 32;
const TWO_TO_MINUS_31 = 2 ** -31;

/** White noise from -1 to 1, named by key, index and lane; the same on every machine: integers alone. */
export class WhiteNoise {
  private state: number;

  constructor(key: number, index: number, lane: number) {
    this.state = Math.floor(uniformOf(key, index, lane) * TWO_TO_32) | 0;
  }

  next(): number {
    this.state = (this.state + 0x9e3779b9) | 0;
    let x = this.state;
    x = Math.imul(x ^ (x >>> 16), 0x21f0aaad);
    x = Math.imul(x ^ (x >>> 15), 0x735a2d97);
    return (x ^ (x >>> 15)) * TWO_TO_MINUS_31;
  }
}

/** Corners of the filters of pink noise, Hz: two octaves apart, so that together they fall by 3 dB an octave. */
const CORNERS = [20, 80, 320, 1280, 5120];

/** Noise that falls by 3 dB an octave from about 30 Hz to 6 kHz: white noise through five simple filters side by side. */
export class PinkNoise {
  private readonly white: WhiteNoise;
  private readonly keep: Float64Array;
  private readonly gain: Float64Array;
  private readonly held = new Float64Array(CORNERS.length);

  constructor(key: number, index: number, lane: number, rate: number) {
    this.white = new WhiteNoise(key, index, lane);
    this.keep = Float64Array.from(CORNERS, (hz) => exp((-2 * Math.PI * hz) / rate));
    this.gain = Float64Array.from(CORNERS, (hz, i) => (1 - (this.keep[i] as number)) / Math.sqrt(hz));
  }

  next(): number {
    const x = this.white.next();
    let sum = 0;
    for (let i = 0; i < CORNERS.length; i++) {
      const y = (this.keep[i] as number) * (this.held[i] as number) + (this.gain[i] as number) * x;
      this.held[i] = y;
      sum += y;
    }
    return sum;
  }
}
