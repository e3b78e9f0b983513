export const LISTENING_ENDS = ['bell', 'diaphragm'] as const;
/** The side of the chest piece that lies on the skin. */
export type ListeningEnd = (typeof LISTENING_ENDS)[number];

/** How sounds are made audible. */
export type VoiceOptions = {
  /** Samples a second, 8,000 to 192,000. */
  readonly rate: number;
  readonly end: ListeningEnd;
  /**
   * For speakers that play nothing low: every centre 2.2 times as high, with second and third harmonics. Not what a
   * stethoscope gives: a reading made so is marked so.
   */
  readonly isLoudspeakerVoice: boolean;
};

export const USUAL_VOICE: VoiceOptions = { rate: 44_100, end: 'bell', isLoudspeakerVoice: false };
