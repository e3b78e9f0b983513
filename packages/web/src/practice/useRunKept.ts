import { type RefObject, useCallback, useEffect, useRef } from 'react';
import type { RoomEngine } from './engine.js';
import type { PracticeDraft } from './keptPractice.js';
import { type Peak, peakAfter } from './peakAfter.js';
import type { Change } from './usePractice.js';

/** How often what moves is kept, ms. */
const KEEP_EVERY_MS = 1000;

type KeptProps = {
  readonly engine: RoomEngine;
  readonly draft: PracticeDraft;
  readonly change: Change;
  readonly keepQuietly: Change;
  /** The visit is at its end. */
  readonly onEnd: () => void;
};

/** The run at hand as it goes on. What moves is drawn by the engine and kept now and then, so that a reload finds it. */
export function useRunKept({ engine, draft, change, keepQuietly, onEnd }: KeptProps): {
  readonly peak: RefObject<Peak>;
  readonly keepNow: () => void;
} {
  const end = useRef(onEnd);
  end.current = onEnd;
  const peak = useRef<Peak>({
    wentUpSeconds: draft.wentUpSeconds ?? draft.peakSeconds,
    peakSeconds: draft.peakSeconds,
    mmHg: draft.peakMmHg ?? 0,
    lowestMmHg: draft.peakMmHg ?? 0,
  });
  const keptAt = useRef(draft.visit.tick);
  const keepNow = useCallback(() => {
    // A visit that stands still is not written again: another tab may go on with it.
    if (engine.visit.tick === keptAt.current) return;
    keptAt.current = engine.visit.tick;
    keepQuietly((was) =>
      was.exercise === draft.exercise
        ? {
            ...was,
            visit: engine.visit.data(),
            wentUpSeconds: peak.current.wentUpSeconds,
            peakSeconds: peak.current.peakSeconds,
            peakMmHg: peak.current.mmHg,
          }
        : was,
    );
  }, [engine, keepQuietly, draft.exercise]);
  useEffect(() => {
    const stop = engine.subscribe(({ now }) => {
      if (engine.isAtEnd) end.current();
      const next = peakAfter(peak.current, now);
      peak.current = next.peak;
      // Touches are of one run: with the cuff pumped up anew another one begins.
      if (next.isNew) change((one) => (one.marks.length === 0 ? one : { ...one, marks: [] }));
    });
    const timer = window.setInterval(keepNow, KEEP_EVERY_MS);
    window.addEventListener('pagehide', keepNow);
    return () => {
      stop();
      window.clearInterval(timer);
      window.removeEventListener('pagehide', keepNow);
      keepNow();
    };
  }, [engine, keepNow, change]);
  return { peak, keepNow };
}
