/** A sound of a letting down: seconds of the visit, mmHg in the cuff, dB over what a normal ear hears. */
export type SoundDrawn = {
  readonly atSeconds: number;
  readonly cuffMmHg: number;
  readonly phase: 1 | 2 | 3 | 4;
  readonly levelDb: number;
  readonly isAudible: boolean;
};

/** A moment that was marked; `atSeconds` null: written down without a time. */
export type MomentDrawn = {
  readonly what: 'first sound' | 'muffled' | 'last sound' | 'pulse back';
  readonly atSeconds: number | null;
  readonly mmHg: number;
};

/** One letting down of an exercise. Traces have `tracePerSecond` points a second from the beginning of the visit. */
export type ExerciseDrawn = {
  readonly tracePerSecond: number;
  readonly cuffMmHg: Float64Array;
  readonly arterialMmHg: Float64Array;
  readonly sounds: readonly SoundDrawn[];
  readonly marks: readonly MomentDrawn[];
  readonly fall: { readonly peakSeconds: number; readonly peakMmHg: number; readonly endSeconds: number };
  /** What the reading is held against. */
  readonly reference: { readonly systolic: number; readonly diastolic: number };
  readonly gap: { readonly topMmHg: number; readonly bottomMmHg: number } | null;
};

export const PHASES = { 1: 'I', 2: 'II', 3: 'III', 4: 'IV' } as const;

/** A cuff that stands hardly lower than at its peak for so long has not begun to fall: mmHg, seconds. */
const HARDLY_MMHG = 3;
const STANDS_SECONDS = 4;

/** When the cuff began to fall: at its peak, or at the end of a long stand there. */
export function beganAt({ fall, cuffMmHg, tracePerSecond }: ExerciseDrawn): number {
  let i = Math.ceil(fall.peakSeconds * tracePerSecond);
  while (i + 1 < cuffMmHg.length && (cuffMmHg[i + 1] as number) >= fall.peakMmHg - HARDLY_MMHG) i += 1;
  const stoodTo = Math.min(fall.endSeconds, i / tracePerSecond);
  return stoodTo - fall.peakSeconds < STANDS_SECONDS ? fall.peakSeconds : stoodTo;
}

/** When the falling cuff passed a pressure: there a number without a time is drawn. */
export function passedAt({ fall, cuffMmHg, tracePerSecond }: ExerciseDrawn, mmHg: number): number {
  let i = Math.ceil(fall.peakSeconds * tracePerSecond);
  while (i / tracePerSecond < fall.endSeconds && (cuffMmHg[i] ?? 0) > mmHg) i += 1;
  return Math.min(fall.endSeconds, i / tracePerSecond);
}

/** Points of a trace between two instants (s), one of every so many. */
export function tracePoints(trace: Float64Array, perSecond: number, from: number, to: number, every: number) {
  const points: (readonly [number, number])[] = [];
  const last = Math.min(trace.length - 1, Math.ceil(to * perSecond));
  for (let i = Math.max(0, Math.floor(from * perSecond)); i <= last; i += every) {
    points.push([Math.min(to, Math.max(from, i / perSecond)), trace[i] as number]);
  }
  return points;
}
