import type { Say } from '@evenfall/words';

/** A number as typed, with a point where its language writes a decimal comma (its keyboards have no point); in any other language as it is. */
export function withPoint(typed: string, say: Say): string {
  const hasComma = say.number(1.5, 1).includes(',');
  return hasComma ? typed.replace(/^(-?\d+),(\d+)$/, '$1.$2') : typed;
}
