import type { OpenActNow } from '@evenfall/record';

/** What an alert says of itself, open or told. */
export type ActNowSaid = Pick<OpenActNow, 'condition' | 'figures' | 'confirmLocally' | 'source'>;

/** Whether what is open is all that stands above, each with the same figures: then it need not be named again. */
export function isAllOpen(above: readonly ActNowSaid[], open: readonly ActNowSaid[]): boolean {
  return (
    above.length === open.length &&
    open.every((one) => above.some((other) => one.condition === other.condition && isSame(one, other)))
  );
}

function isSame(a: ActNowSaid, b: ActNowSaid): boolean {
  const keys = new Set([...Object.keys(a.figures), ...Object.keys(b.figures)]);
  return [...keys].every((key) => a.figures[key] === b.figures[key]);
}
