import type { Phase } from '../sound/soundEvent.js';

/** Every sound of one letting down in columns, audible or not, for a listener with habits of its own. Used again and again. */
export class SoundLog {
  count = 0;
  /**
   * For an ear with this threshold (dB): between its first two sounds and its last one those that it surely hears, and not
   * muffled, are not worked out. They stand here with their beat alone, the rest NaN. Null: every sound is worked out.
   */
  earDb: number | null = null;
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
  /** A sound that is surely heard, and not muffled. */
  addSure(beat: number): void {
    this.add(Number.NaN, Number.NaN, Number.NaN, SURE_PHASE, beat);
  }
}

/** Any phase but the muffled one. */
const SURE_PHASE: Phase = 1;
