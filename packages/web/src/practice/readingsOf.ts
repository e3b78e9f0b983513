import type { Run } from '@evenfall/clinical';
import type { PracticeDraft } from './keptPractice.js';

/** One reading of the pressure, as the trade writes it, with where it was taken. */
export type Reading = {
  readonly text: string;
  readonly isLeft: boolean;
  readonly isStanding: boolean;
};

/** The readings that were written in this visit, in order. */
export function readingsOf({ round }: Pick<PracticeDraft, 'round'>): readonly Reading[] {
  return round.pressure.values.map(({ run, place }) => ({
    text: readingText(run),
    isLeft: place.side === 'left',
    isStanding: place.posture === 'stand',
  }));
}

/** `124/78`, `118/62/0` with where it was muffled, `122/P` by feel. */
export function readingText({ method, moments }: Pick<Run, 'method' | 'moments'>): string {
  const at = (...what: Run['moments'][number]['what'][]) =>
    moments.findLast((one) => what.includes(one.what))?.mmHg ?? null;
  const first = moments.find(({ what }) => what === 'first sound' || what === 'pulse back')?.mmHg ?? null;
  const rest = [at('muffled'), at('last sound')].filter((mmHg) => mmHg !== null);
  return [first, ...(rest.length === 0 && method === 'palpation' ? ['P'] : rest)].join('/');
}

/** Whether the cuff went up again since the reading that was written last: there is something new to write. */
export function hasNewFall({
  peakSeconds,
  runFrom,
}: Pick<PracticeDraft, 'peakSeconds' | 'runFrom'>): boolean {
  return peakSeconds !== null && (runFrom === null || runFrom === undefined || peakSeconds > runFrom);
}
