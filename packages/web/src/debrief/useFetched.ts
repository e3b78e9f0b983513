import type { Answer } from '@evenfall/api';
import { useCallback, useEffect, useState } from 'react';
import { afterAsking } from '../server/load.js';
import { ASKED, type Asked } from '../store/known.js';

/** Something asked of the server for one page alone, when it opens and again when wanted. `ask` must not be made anew each time. */
export function useFetched<T>(ask: () => Promise<Answer<T>>): {
  readonly asked: Asked<T>;
  readonly again: () => Promise<void>;
} {
  const [asked, setAsked] = useState<Asked<T>>(ASKED);
  const again = useCallback(async () => {
    const answer = await ask();
    setAsked((was) => afterAsking(was, answer));
  }, [ask]);
  useEffect(() => void again(), [again]);
  return { asked, again };
}
