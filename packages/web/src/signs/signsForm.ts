import type { SignOf } from '@evenfall/clinical';
import type { Say } from '@evenfall/words';
import { withField } from '../app/forms.js';
import type { DraftMeasure } from '../round/draft.js';
import type { Reopened } from '../round/measuring.js';
import type { Kept } from '../store/kept.js';
import { fieldsOfSign } from './fieldsOfSign.js';

/** The name of the form of a round's other signs, in the store. */
export function signsForm(round: string): string {
  return `signs ${round}`;
}

/** Opens a kept sign again: its fields hold what was typed, and which value they will put right. */
export function withMeasureReopened(
  kept: Kept,
  round: string,
  measure: DraftMeasure,
  from: Reopened['from'],
  say: Say,
): Kept {
  const { of } = measure.sign;
  const fields = { ...fieldsOfSign(measure, say), reopened: measure.entry, from };
  return Object.entries(fields).reduce(
    (state, [field, text]) => withField(state, signsForm(round), `${of}.${field}`, text),
    kept,
  );
}

/** Which value of a sign the form puts right; null for a new one. */
export function reopenedIn(text: (field: string) => string, of: SignOf): Reopened | null {
  const entry = text(`${of}.reopened`);
  if (entry === '') return null;
  return { entry, from: text(`${of}.from`) === 'review' ? 'review' : 'value' };
}
