import { FLAT_MMHG } from '@evenfall/physiology';
import { LET_OUT_MMHG, MEANT_MMHG } from '@evenfall/practice';
import type { RunAt } from './markedRun.js';

/** When the cuff was flat last and when it was highest since, how high, and how low since then; mmHg. */
export type Peak = RunAt & { mmHg: number; lowestMmHg: number };

/** The run at hand once the cuff stands at a pressure. `isNew`: it was pumped up anew, from flat or from all but empty. */
export function peakAfter(
  was: Peak,
  { cuffMmHg, seconds }: { readonly cuffMmHg: number; readonly seconds: number },
): { readonly peak: Peak; readonly isNew: boolean } {
  if (cuffMmHg < FLAT_MMHG) return { peak: { ...was, mmHg: 0, lowestMmHg: 0 }, isNew: false };
  // Of what is let out and pumped up anew another run begins, though the last air had not left.
  const isAnew = was.mmHg >= MEANT_MMHG && was.lowestMmHg < LET_OUT_MMHG && cuffMmHg >= MEANT_MMHG;
  if (was.mmHg === 0 || isAnew)
    return {
      peak: { wentUpSeconds: seconds, peakSeconds: seconds, mmHg: cuffMmHg, lowestMmHg: cuffMmHg },
      isNew: true,
    };
  if (cuffMmHg > was.mmHg)
    return { peak: { ...was, peakSeconds: seconds, mmHg: cuffMmHg, lowestMmHg: cuffMmHg }, isNew: false };
  return { peak: { ...was, lowestMmHg: Math.min(was.lowestMmHg, cuffMmHg) }, isNew: false };
}
