import { type CuffFlagCode, cuffChoice, type Flag } from '@evenfall/clinical';
import type { PressureDraft } from './pressureDraft.js';

/** What is wrong with the cuff that is on, while it has not gone up yet; none where cuff or arm was not said. */
export function cuffFlags({
  place,
  measuring,
}: Pick<PressureDraft, 'place' | 'measuring'>): readonly Flag<CuffFlagCode>[] {
  const isBefore = measuring.at === 'feel' || measuring.at === 'ready';
  if (!isBefore || place?.cuff?.scheme == null || place.armCm === null) return [];
  const { scheme, id } = place.cuff;
  return cuffChoice({ armCm: place.armCm, scheme, atHand: id }).flags;
}
