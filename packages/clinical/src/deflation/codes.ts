/** What a reader of a pressure must know, in the order in which it is told. */
export type RunFlagCode =
  | 'palpated-only'
  | 'started-inside-sounds'
  | 'pulse-not-stopped'
  | 'margin-small'
  | 'possible-gap'
  | 'gap-heard'
  | 're-inflated'
  | 'early-too-fast'
  | 'early-too-slow'
  | 'too-fast'
  | 'too-slow'
  | 'too-fast-per-beat'
  | 'too-soon'
  | 'off-graduation'
  | 'to-zero'
  | 'zero-without-muffled'
  | 'implausible-systolic'
  | 'implausible-diastolic'
  | 'implausible-pulse-pressure'
  | 'range-too-narrow'
  | 'device-with-irregular';

/** Why a part of the answer is null. */
export type RunReasonCode =
  | 'no-diastolic-by-palpation'
  | 'zero-without-muffled'
  | 'read-from-display'
  | 're-inflated'
  | 'no-peak'
  | 'not-palpated'
  | 'not-timed'
  | 'moments-too-close'
  | 'no-pulse'
  | 'silence-not-heard';
