/** What a reader of taps must know. */
export type TapFlagCode =
  | 'touch-bounces'
  | 'irregular-not-repaired'
  | 'steady-not-sure'
  | 'too-many-missed'
  | 'missed-in-turn'
  | 'beats-put-in'
  | 'rhythm-irregular'
  | 'many-missed'
  | 'rate-impossible';

/** Why something of taps cannot be told. */
export type TapReasonCode =
  | 'too-few'
  | 'tapping-paused'
  | 'too-few-for-statistics'
  | 'too-few-for-range'
  | 'too-few-for-jitter'
  | 'too-few-for-rhythm'
  | 'jitter-cannot-be-told'
  | 'rhythm-not-clear'
  | 'many-missed';
