import type { Answer } from '@evenfall/api';
import { useCallback, useEffect, useState } from 'react';
import { afterAsking } from '../server/load.js';
import { ASKED, type Asked } from '../store/known.js';

/**
 * Something asked of the server for one page alone, when it opens and again when wanted.
 *
 * @param ask must not be made anew each time
 * @param isWanted false asks for nothing
 */
export function useFetched<T>(
  ask: () => Promise<Answer<T>>,
  isWanted = true,
): { readonly asked: Asked<T>; readonly again: () => Promise<void> } {
  const [asked, setAsked] = useState<Asked<T>>(ASKED);
  const again = useCallback(async () => {
    const answer = await ask();
    setAsked((was) => afterAsking(was, answer));
  }, [ask]);
  useEffect(() => {
    if (isWanted) void again();
  }, [again, isWanted]);
  return { asked, again };
}
