import type { Phase } from '../sound/soundEvent.js';

/** Every sound of one letting down in columns, audible or not, for a listener with habits of its own. Used again and again. */
export class SoundLog {
  count = 0;
  readonly atSeconds: Float64Array;
  readonly cuffMmHg: Float64Array;
  readonly levelDb: Float64Array;
  readonly phase: Uint8Array;
  readonly beat: Int32Array;

  constructor(capacity = 512) {
    this.atSeconds = new Float64Array(capacity);
    this.cuffMmHg = new Float64Array(capacity);
    this.levelDb = new Float64Array(capacity);
    this.phase = new Uint8Array(capacity);
    this.beat = new Int32Array(capacity);
  }

  add(atSeconds: number, cuffMmHg: number, levelDb: number, phase: Phase, beat: number): void {
    const i = this.count;
    if (i >= this.atSeconds.length) return;
    this.atSeconds[i] = atSeconds;
    this.cuffMmHg[i] = cuffMmHg;
    this.levelDb[i] = levelDb;
    this.phase[i] = phase;
    this.beat[i] = beat;
    this.count = i + 1;
  }
}
