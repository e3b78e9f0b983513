import { AUDIO_FIGURES as F } from './figures.js';
import { addTone, harmonicsOf } from './layers.js';
import { gainOfDb } from './level.js';
import { asPlayed, fadeEnd, scaleToPeak } from './samples.js';
import { USUAL_VOICE, type VoiceOptions } from './voiceOptions.js';

/**
 * A soft tap for a pulse under the finger, as samples begun and ended at 0: for whoever wants it heard, since no pulse at a wrist is.
 *
 * @param strength beside the person's usual pulse at an open wrist, 1; a weak one is softer, none is louder than one and a half
 */
export function pulseTap(strength: number, options: Partial<VoiceOptions> = {}): Float32Array {
  const { rate, isLoudspeakerVoice }: VoiceOptions = { ...USUAL_VOICE, ...options };
  const shift = isLoudspeakerVoice ? F.loudspeakerShift.value : 1;
  const [attack, decay] = [F.pulseTapAttackMs.value / 1000, F.pulseTapDecayMs.value / 1000];
  const layer = new Float64Array(Math.ceil((attack + 7 * decay) * rate));
  addTone(layer, rate, F.pulseTapHz.value * shift, harmonicsOf(isLoudspeakerVoice), { attack, decay });
  scaleToPeak(layer, gainOfDb(F.pulseTapDbfs.value) * Math.min(MOST_STRENGTH, Math.max(0, strength)));
  fadeEnd(layer, Math.round(0.01 * rate));
  return asPlayed(layer);
}

const MOST_STRENGTH = 1.5;
