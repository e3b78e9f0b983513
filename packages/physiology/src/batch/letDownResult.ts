/**
 * What one letting down gives a listener who hears every sound over the threshold and reads at the instant of it.
 * Mutable and meant to be used again and again. Where there was no such sound or pulse the numbers are NaN.
 */
export type LetDownResult = {
  /** First audible sound. */
  firstSeconds: number;
  firstCuffMmHg: number;
  firstGaugeMmHg: number;
  firstBeat: number;
  /** First of two audible sounds on two beats in a row. */
  firstOfTwoSeconds: number;
  firstOfTwoGaugeMmHg: number;
  /** First muffled sound after which every audible one was muffled. */
  muffledSeconds: number;
  muffledGaugeMmHg: number;
  /** Last audible sound. */
  lastSeconds: number;
  lastCuffMmHg: number;
  lastGaugeMmHg: number;
  lastBeat: number;
  /** First pulse felt at the wrist. */
  pulseSeconds: number;
  pulseCuffMmHg: number;
  pulseGaugeMmHg: number;
  /** Audible sounds, and beats while the cuff fell from the peak to the last one that could sound. */
  sounds: number;
  beats: number;
};
