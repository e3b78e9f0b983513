import { useEffect, useRef, useState } from 'react';
import type { RoomEngine } from './engine.js';

/** Whether the cuff is empty; drawn anew only when that changes. */
export function useIsFlat(engine: RoomEngine): boolean {
  const [isFlat, setFlat] = useState(engine.visit.isFlat);
  const was = useRef(isFlat);
  useEffect(
    () =>
      engine.subscribe(() => {
        if (engine.visit.isFlat === was.current) return;
        was.current = engine.visit.isFlat;
        setFlat(was.current);
      }),
    [engine],
  );
  return isFlat;
}
