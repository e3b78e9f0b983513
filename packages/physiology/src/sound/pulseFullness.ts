import type { WaveShape } from '../artery/waveShape.js';
import { SOUND_FIGURES } from './figures.js';

/**
 * How full a pulse is under the fingers beside a usual one, by its wave; 1 is usual. A picture is drawn by it; whether a beat is felt
 * at all is said by the pressures. Source: physiology handbook 3.2 (constricted with a low output, slow-rising; collapsing, vasodilated).
 */
export function pulseFullness(shape: WaveShape): number {
  switch (shape) {
    case 'slow-rising':
    case 'constricted':
      return SOUND_FIGURES.weakPulseShare.value;
    case 'collapsing':
    case 'vasodilated':
      return SOUND_FIGURES.strongPulseShare.value;
    default:
      return 1;
  }
}
