import { chartedPressure, type RunContent, type StoredEntry } from '@evenfall/record';
import type { Column } from './column.js';
import type { Cell } from './csv.js';
import { numberSaid, posedIn, postureIn } from './said.js';

const RATES = [
  'deflationRateMmHgPerSecond',
  'earlyDeflationRateMmHgPerSecond',
  'dropPerBeatMmHg',
  'marginMmHg',
] as const;

/**
 * The columns of a pressure, in mmHg. `systolic`, `diastolic` and `diastolicUsed` are the charted ones (set by hand if
 * they were); a range belongs to what was computed. `isAveraged` is false for a site other than the upper arm.
 */
export const PRESSURE_COLUMNS: readonly Column[] = [
  ['systolic', ({ entry }) => chartedPressure(entry)?.systolic ?? numberSaid(entry, 'systolic')],
  ['diastolic', ({ entry }) => chartedPressure(entry)?.diastolic ?? numberSaid(entry, 'diastolic')],
  ['diastolicUsed', ({ entry }) => chartedPressure(entry)?.diastolicUsed ?? null],
  ['muffled', fromRun(({ value, override }) => (override === null ? value.muffled : null))],
  ['computedSystolic', fromRun(({ value }) => value.systolic)],
  ['computedDiastolic', fromRun(({ value }) => value.diastolic)],
  ['systolicLow', fromRun((content) => rangeOf(content, 'systolicRange')?.[0] ?? null)],
  ['systolicHigh', fromRun((content) => rangeOf(content, 'systolicRange')?.[1] ?? null)],
  ['diastolicLow', fromRun((content) => rangeOf(content, 'diastolicRange')?.[0] ?? null)],
  ['diastolicHigh', fromRun((content) => rangeOf(content, 'diastolicRange')?.[1] ?? null)],
  ['method', fromRun(({ value }) => value.method)],
  ['isAveraged', fromRun(({ value }) => value.isAveraged)],
  ['cuffSite', fromRun(({ evidence }) => evidence.place.site)],
  ['side', fromRun(({ evidence }) => evidence.place.side)],
  ['posture', ({ entry }) => postureIn(entry)],
  ['armCm', fromRun(({ evidence }) => evidence.place.armCm)],
  ['uprightMinutes', ({ entry }) => posedIn(entry)?.uprightMinutes ?? null],
  ['cuffScheme', fromRun(({ evidence }) => evidence.place.cuff?.scheme ?? null)],
  ['cuff', fromRun(({ evidence }) => evidence.place.cuff?.id ?? null)],
  ['armOverriddenBy', fromRun(({ evidence }) => evidence.place.override?.by ?? null)],
  ['armOverrideReason', fromRun(({ evidence }) => evidence.place.override?.reason ?? null)],
  ['pulseDuringRun', fromRun(({ evidence }) => evidence.run.pulsePerMinute)],
  ['gaugeStepMmHg', fromRun(({ evidence }) => evidence.run.gaugeStepMmHg)],
  ['peakMmHg', fromRun(({ evidence }) => evidence.run.peak?.mmHg ?? null)],
  ['palpatedLostMmHg', fromRun(({ evidence }) => evidence.run.palpated.lostMmHg)],
  ['palpatedBackMmHg', fromRun(({ evidence }) => evidence.run.palpated.backMmHg)],
  ['moments', fromRun(momentsText)],
  ...RATES.map((key): Column => [key, fromRun(({ value }) => value[key])]),
];

function fromRun(cell: (content: RunContent) => Cell): Column[1] {
  return ({ entry }: { readonly entry: StoredEntry }) => (entry.kind === 'run' ? cell(entry.content) : null);
}

/** A pressure set by hand has no range: the one there is belongs to what was computed. */
function rangeOf({ value, override }: RunContent, key: 'systolicRange' | 'diastolicRange') {
  return override === null ? value[key] : null;
}

/** `first sound 148 at 11.2; last sound 92 at 33.6`: mmHg, and seconds where they are known. */
function momentsText({ evidence }: RunContent): string {
  return evidence.run.moments
    .map(({ what, mmHg, atSeconds }) => `${what} ${mmHg}${atSeconds === null ? '' : ` at ${atSeconds}`}`)
    .join('; ');
}
