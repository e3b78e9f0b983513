import { backgroundThresholdDb, type Scenario } from '@evenfall/physiology';
import { OBSERVER_FIGURES as F } from '../observer/figures.js';

/** How a pressure is taken: by ear, by the pulse that comes back at the wrist, or by ear so slowly that breath by breath is told apart. */
export type Manner = 'by-ear' | 'by-feel' | 'with-the-breath';

/** How somebody who knows this person would take the pressure. Source: physiology handbook 8.6 (faint sounds), 2.5 (paradox). */
export function mannerOf({
  soundDb,
  noiseDbA,
  breathingSwingMmHg,
}: Pick<Scenario, 'soundDb' | 'noiseDbA' | 'breathingSwingMmHg'>): Manner {
  if (soundDb !== null && soundDb - backgroundThresholdDb(noiseDbA) <= F.faintDb.value) return 'by-feel';
  return breathingSwingMmHg !== null && breathingSwingMmHg > F.paradoxMmHg.value
    ? 'with-the-breath'
    : 'by-ear';
}
