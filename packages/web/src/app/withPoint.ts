import type { Say } from '@evenfall/words';

/** A number as typed, with a point where its language writes a decimal comma (its keyboards have no point); in any other language as it is. */
export function withPoint(typed: string, say: Say): string {
  return hasComma(say) ? typed.replace(/^(-?\d+),(\d+)$/, '$1.$2') : typed;
}

/** The same for a measure with units between its numbers: `68,5 kg`. */
export function withPoints(typed: string, say: Say): string {
  return hasComma(say) ? typed.replace(/(^|[^\d,.])(\d+),(\d+)(?![\d,.])/g, '$1$2.$3') : typed;
}

/** A number as its language types it, with every decimal: what {@link withPoint} reads as the same. */
export function asWritten(value: number, say: Say): string {
  const text = String(value);
  return hasComma(say) ? text.replace('.', ',') : text;
}

function hasComma(say: Say): boolean {
  return say.number(1.5, 1).includes(',');
}
