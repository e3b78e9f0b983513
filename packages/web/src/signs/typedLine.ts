import { lineOfScore, numberFrom, type Refusal, scoreOfLine } from '@evenfall/clinical';

/** The score of a mark as typed in mm; what is no number stays as typed, to be refused. */
export function scoreTyped(mm: string | null): string | number | null {
  const value = numberFrom(mm);
  return value === null ? mm : scoreOfLine(value);
}

/** A refusal of the score of a mark, in the mm that were typed. */
export function refusedInMm(refusal: Refusal, mm: string | null, field: string): Refusal {
  if (refusal.field !== '/score') return refusal;
  const figures = Object.entries(refusal.figures).map(([name, score]) => [name, lineOfScore(score)]);
  return { ...refusal, field, got: mm, figures: Object.fromEntries(figures) };
}
