import { Biquad } from './biquad.js';
import { AUDIO_FIGURES as F } from './figures.js';
import type { VoiceOptions } from './voiceOptions.js';

/** What the tube and chest piece let through, in place: 30 to 900 Hz with a resonance at 100 Hz. */
export function throughTube(samples: Float64Array, { rate, isLoudspeakerVoice }: VoiceOptions): void {
  const shift = isLoudspeakerVoice ? F.loudspeakerShift.value : 1;
  Biquad.highPass(rate, F.lowHz.value).run(samples);
  Biquad.peak(rate, F.resonanceHz.value * shift, 1, F.resonanceDb.value).run(samples);
  Biquad.lowPass(rate, F.highHz.value * shift).run(samples);
}

/** What the side on the skin adds or takes at the low end, in place. */
export function throughEnd(samples: Float64Array, { rate, end, isLoudspeakerVoice }: VoiceOptions): void {
  const shift = isLoudspeakerVoice ? F.loudspeakerShift.value : 1;
  const db = end === 'bell' ? F.bellDb.value : F.diaphragmDb.value;
  Biquad.lowShelf(rate, F.shelfHz.value * shift, db).run(samples);
}
