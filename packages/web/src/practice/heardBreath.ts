import type { BreathingKind, Scenario } from '@evenfall/physiology';
import { AUDIO_FIGURES as F } from '@evenfall/physiology/audio';

/** Who is heard across a table. Source: physiology handbook 13 (Kussmaul at 1 m) and 5 (audible wheeze). */
const HEARD_AT_ONE_METRE: readonly BreathingKind[] = ['deep-and-fast', 'wheezing'];

/** Where the chest piece is; at the apex as on the arm: no breath hides what is listened to there. */
export type PieceAt = 'hand' | 'arm' | 'chest';

/**
 * How loud a breath of this depth would be heard were it a usual one, dB of full scale; null: not at all. With the chest
 * piece on the arm nobody's breath is louder than a sound of 0 dB, so that it hides none that the model lets be heard.
 */
export function breathDbfs(
  { breathing: { kind } }: Pick<Scenario, 'breathing'>,
  at: PieceAt,
  depth: number,
): number | null {
  if (at === 'chest') return F.breathDbfs.value;
  if (!HEARD_AT_ONE_METRE.includes(kind)) return null;
  if (at === 'hand') return F.breathAtOneMetreDbfs.value;
  return F.thresholdDbfs.value - 20 * Math.log10(Math.max(1, depth));
}
