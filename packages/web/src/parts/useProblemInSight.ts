import { type RefObject, useEffect } from 'react';

/** What says why nothing was kept. */
const PROBLEM = '.field-wrong, [role="alert"]';

/**
 * After a refused press its reason is in sight: with the name and the numbers at the top of the page where it stands there,
 * else in the middle.
 *
 * @param presses how often it was pressed
 */
export function useProblemInSight(form: RefObject<HTMLElement | null>, presses: number): void {
  useEffect(() => {
    if (presses === 0) return;
    const problem = form.current?.querySelector(PROBLEM);
    if (problem == null) return;
    const { bottom } = problem.getBoundingClientRect();
    if (bottom + window.scrollY < window.innerHeight / 2) window.scrollTo(0, 0);
    else problem.scrollIntoView({ block: 'center' });
  }, [form, presses]);
}
