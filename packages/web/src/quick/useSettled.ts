import { useEffect, useState } from 'react';

/** A text once nothing was typed into it for a while, or at once when asked: half a number is not judged. */
export function useSettled(text: string, waitMs: number): readonly [string, (now: string) => void] {
  const [settled, setSettled] = useState(text);
  useEffect(() => {
    const timer = window.setTimeout(() => setSettled(text), waitMs);
    return () => window.clearTimeout(timer);
  }, [text, waitMs]);
  return [settled, setSettled];
}
