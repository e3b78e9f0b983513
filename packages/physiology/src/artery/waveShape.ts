/** The pulse contours of physiology handbook 3.2. */
export const WAVE_SHAPES = [
  'young',
  'middle',
  'old',
  'collapsing',
  'slow-rising',
  'vasodilated',
  'constricted',
] as const;
export type WaveShape = (typeof WAVE_SHAPES)[number];

export const ARTERY_SITES = ['brachial', 'radial'] as const;
export type ArterySite = (typeof ARTERY_SITES)[number];
